package scenario

import (
	"slices"
	"strings"

	"coredays/scenario/document"
	"coredays/scenario/fault"
)

// measuredBy are words of the trade for what is measured, by the word that the name of a tool string has for it.
var measuredBy = map[string]string{"density": "density", "porosity": "density", "gamma": "density", "resistivity": "resistivity",
	"sonic": "sonic", "velocity": "sonic", "image": "image", "seismic": "seismic", "check shots": "seismic"}

// standardSuite is the word for all tool strings but those that shoot, in the ship's order.
const standardSuite = "standard suite"

// listedStrings are the names of the ship's tool strings.
func (r siteReader) listedStrings() (list []string) {
	for _, s := range r.ship.Strings {
		list = append(list, s.Name)
	}
	return list
}

// logging reads which tool strings are run, in order: by name, or by what is measured. Two things that one string measures are
// one run of it.
func (r siteReader) logging(path string, given []document.Text) (all []int) {
	known := r.listedStrings()
	for i, t := range given {
		meant := r.meant(t.Value)
		named := slices.Contains(known, t.Value)
		switch {
		case len(meant) == 0 && measuredBy[t.Value] != "":
			r.Fault(document.At(path, i), t.Value, "a tool string of the ship that measures it: she has "+strings.Join(known, ", "))
		case len(meant) == 0:
			wanted, _ := fault.Suggest(t.Value, known, "tool string")
			r.Fault(document.At(path, i), t.Value, wanted)
		case named && slices.Contains(all, meant[0]):
			r.Fault(document.At(path, i), t.Value, "each tool string once")
		}
		for _, s := range meant {
			if !slices.Contains(all, s) {
				all = append(all, s)
			}
		}
	}
	return all
}

// meant are the tool strings that a word means: the one that has it for its name, all of the standard suite, or the first that
// measures what it says.
func (r siteReader) meant(word string) (all []int) {
	for i, s := range r.ship.Strings {
		switch {
		case s.Name == word:
			return []int{i}
		case word == standardSuite && !s.Seismic:
			all = append(all, i)
		}
	}
	for i, s := range r.ship.Strings {
		if is := measuredBy[word]; is != "" && len(all) == 0 && slices.Contains(strings.Split(s.Name, "-"), is) {
			all = append(all, i)
		}
	}
	return all
}
