package scenario

// text is a single value as it stands in a file.
type text struct {
	value string
	given bool
	bare  bool // a number or a date rather than a text: 12, not "12 m"
}
