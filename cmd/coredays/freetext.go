package main

import "errors"

// freeText is the value of a flag that takes any words but none: what is left empty by a slip of a script is not
// taken for what was not given.
type freeText string

func (w *freeText) String() string { return string(*w) }

// Type is what wantedOf knows it by.
func (w *freeText) Type() string { return "words" }

// Set takes words.
func (w *freeText) Set(text string) error {
	if text == "" {
		return errors.New("nothing is given")
	}
	*w = freeText(text)
	return nil
}
