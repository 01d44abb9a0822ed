package scenario

import (
	"fmt"
	"strings"
	"unicode/utf8"
)

// How long texts may be, in letters. Charts and tables have room for few: what does not fit is cut there,
// but nobody means a name of a page's length.
const (
	mostName  = 80
	mostTitle = 200
	mostWords = 2000 // of a source, or a path
)

// wantedText is for names, which may look like numbers.
const wantedText = `a text; put what looks like a number in quotes, such as "1208"`

// name is a text that must be there, on one line.
func (c *reader) name(path string, t text) string { return c.called(path, t, mostName) }

// called is a text of so many letters at most.
func (c *reader) called(path string, t text, most int) string {
	value := strings.TrimSpace(t.value)
	letter, place := unprintable(value)
	switch {
	case !t.given:
		c.fault(path, "", "a name")
	case t.bare:
		c.fault(path, t.value, wantedText)
	case value == "":
		c.fault(path, t.value, "a name that is not empty")
	case utf8.RuneCountInString(value) > most:
		c.fault(path, t.value, fmt.Sprintf("at most %d letters; this has %d", most, utf8.RuneCountInString(value)))
	case place > 0:
		c.fault(path, t.value, fmt.Sprintf("letters that can be printed; letter %d is the control character %U", place, letter))
	}
	return value
}

// words is a text that may be left out. Its lines are made one.
func (c *reader) words(path string, t text, missing string) string {
	if !t.given {
		return missing
	}
	t.value = strings.NewReplacer("\r\n", " ", "\n", " ", "\t", " ").Replace(t.value)
	return c.called(path, t, mostWords)
}

// title is the name of the expedition, which may be longer than other names.
func (c *reader) title(path string, t text, missing string) string {
	if !t.given {
		return missing
	}
	return c.called(path, t, mostTitle)
}
