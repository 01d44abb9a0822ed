package main

import "errors"

// words is the value of a flag that takes any words but none: what is left empty by a slip of a script is not
// taken for what was not given.
type words string

func (w *words) String() string { return string(*w) }

// Type is what wantedOf knows it by.
func (w *words) Type() string { return "words" }

// Set takes words.
func (w *words) Set(text string) error {
	if text == "" {
		return errors.New("nothing is given")
	}
	*w = words(text)
	return nil
}
