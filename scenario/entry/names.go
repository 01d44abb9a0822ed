package entry

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"coredays/scenario/document"
	"coredays/scenario/fault"
)

// How long texts may be, in letters. Charts and tables have room for few: what does not fit is cut there,
// but nobody means a name of a page's length.
const (
	MostName  = 80
	MostTitle = 200
	MostWords = 2000 // of a source, or a path
)

// wantedText is for names, which may look like numbers.
const wantedText = `a text; put what looks like a number in quotes, such as "1208"`

// Name is a text that must be there, on one line.
func (c *Reader) Name(path string, t document.Text) string { return c.Called(path, t, MostName) }

// Called is a text of so many letters at most.
func (c *Reader) Called(path string, t document.Text, most int) string {
	value := strings.TrimSpace(t.Value)
	letter, place := fault.Unprintable(value)
	switch {
	case !t.Given:
		c.Fault(path, "", "a name")
	case t.Bare:
		c.Fault(path, t.Value, wantedText)
	case value == "":
		c.Fault(path, t.Value, "a name that is not empty")
	case utf8.RuneCountInString(value) > most:
		c.Fault(path, t.Value, fmt.Sprintf("at most %d letters; this has %d", most, utf8.RuneCountInString(value)))
	case place > 0:
		c.Fault(path, t.Value, fmt.Sprintf("letters that can be printed; letter %d is the control character %U", place, letter))
	}
	return value
}

// Words is a text that may be left out. Its lines are made one.
func (c *Reader) Words(path string, t document.Text, missing string) string {
	if !t.Given {
		return missing
	}
	t.Value = strings.NewReplacer("\r\n", " ", "\n", " ", "\t", " ").Replace(t.Value)
	return c.Called(path, t, MostWords)
}

// Title is the name of the expedition, which may be longer than other names.
func (c *Reader) Title(path string, t document.Text, missing string) string {
	if !t.Given {
		return missing
	}
	return c.Called(path, t, MostTitle)
}
