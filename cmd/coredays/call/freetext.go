package call

import "errors"

// FreeText is the value of a flag that takes any words but none: what is left empty by a slip of a script is not
// taken for what was not given.
type FreeText string

func (w *FreeText) String() string { return string(*w) }

// Type is what wantedOf knows it by.
func (w *FreeText) Type() string { return "words" }

// Set takes words.
func (w *FreeText) Set(text string) error {
	if text == "" {
		return errors.New("nothing is given")
	}
	*w = FreeText(text)
	return nil
}
