package share

import (
	"cmp"
	"errors"
	"fmt"
	"slices"
	"strings"
)

// All are the shares of one piece of work, each once, the first first.
type All []*Opened

// OpenAll opens the files of all shares of one piece of work, in whatever order they are given.
func OpenAll(paths []string) (all All, err error) {
	defer func() {
		if err != nil {
			all.Close()
		}
	}()
	for _, path := range paths {
		o, err := Open(path)
		if err != nil {
			return all, err
		}
		all = append(all, o)
		if what := all[0].Head.Unlike(&o.Head); what != "" {
			return all, fmt.Errorf("%s is of other work than %s: %s", path, paths[0], what)
		}
	}
	slices.SortStableFunc(all, func(a, b *Opened) int { return cmp.Compare(a.Head.Which.Number, b.Head.Which.Number) })
	return all, all.complete()
}

// complete says which shares are missing, and which are there twice.
func (all All) complete() error {
	if len(all) == 0 {
		return errors.New("there is no part")
	}
	of := all[0].Head.Which.Of
	if of < 1 {
		return fmt.Errorf("%s is no share but a search on its way from round to round: give it to --round", all[0].Path)
	}
	there := make([]*Opened, of+1)
	var wrong []error
	for _, o := range all {
		n := o.Head.Which.Number
		if there[n] != nil {
			wrong = append(wrong, fmt.Errorf("share %s is there twice: %s and %s", o.Head.Which, there[n].Path, o.Path))
		}
		there[n] = o
	}
	var missing []string
	for n := 1; n <= of; n++ {
		if there[n] == nil {
			missing = append(missing, Which{n, of}.String())
		}
	}
	if len(missing) > 0 {
		wrong = append(wrong, fmt.Errorf("missing: share %s; sail what is missing and merge again", strings.Join(missing, ", ")))
	}
	return errors.Join(wrong...)
}

// Close ends the reading of all.
func (all All) Close() {
	for _, o := range all {
		o.Close() // it was only read
	}
}
