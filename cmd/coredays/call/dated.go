package call

import (
	"errors"
	"time"

	"github.com/spf13/pflag"

	"coredays/output/words"
)

// Dated is the value of a flag for the date that a page carries, in words once it is set. A page has none of its own
// accord, so that the same call gives the same bytes.
type Dated string

var _ pflag.Value = (*Dated)(nil)

// AddFlag adds it.
func (d *Dated) AddFlag(flags *pflag.FlagSet) {
	flags.Var(d, "date", "with --report: the date that the page carries, such as `2026-11-26`; none if not given")
}

// String is the date in words.
func (d *Dated) String() string { return string(*d) }

// Type is what it takes.
func (*Dated) Type() string { return "date" }

// Set takes a date by year, month and day.
func (d *Dated) Set(text string) error {
	at, err := time.Parse(time.DateOnly, text)
	if err != nil {
		return errors.New("no date")
	}
	*d = Dated(words.Date(at))
	return nil
}

// Without reports a date that no page would carry.
func (d *Dated) Without(page string) error {
	if *d != "" && page == "" {
		return errors.New("--date is for the page of --report; give that too")
	}
	return nil
}
