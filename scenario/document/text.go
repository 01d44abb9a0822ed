package document

// Text is a single value as it stands in a file.
type Text struct {
	Value string
	Given bool
	Bare  bool // a number or a date rather than a text: 12, not "12 m"
}
