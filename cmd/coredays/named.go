package main

import (
	"errors"
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/pflag"
)

// fileName is the value of a flag that names a file or a folder.
type fileName struct {
	name  *string
	use   use
	fits  []string // endings of its format; none for any
	print bool     // "-" is standard output
}

// use is what is done with a file.
type use int

// The uses.
const (
	reads      use = iota
	writes         // one file
	fillsAFold     // a folder, with files
)

var (
	_ pflag.Value = (*fileName)(nil)

	asPage     = []string{".html", ".htm"}
	asJSON     = []string{".json"}
	asMap      = []string{".geojson", ".json"}
	asTable    = []string{".csv"}
	asWorkbook = []string{".xlsx"}
)

// known are endings that say a format to whoever opens the file: under them nothing else is written.
var known = []string{".html", ".htm", ".json", ".geojson", ".csv", ".tsv", ".xlsx", ".xls", ".ods", ".pdf", ".doc", ".docx", ".odt", ".svg", ".png",
	".jpg", ".jpeg", ".yaml", ".yml", ".toml", ".zip", ".gz"}

// outFile is a flag for a file to write.
func outFile(to *string, fits ...string) *fileName {
	return &fileName{name: to, use: writes, fits: fits}
}

// outFolder is a flag for a folder to write into.
func outFolder(to *string) *fileName { return &fileName{name: to, use: fillsAFold} }

// inFile is a flag for a file to read.
func inFile(to *string) *fileName { return &fileName{name: to} }

func (f *fileName) String() string {
	if f.name == nil { // as pflag makes one to compare with
		return ""
	}
	return *f.name
}

// Type is what wantedOf knows it by.
func (f *fileName) Type() string {
	switch {
	case f.print:
		return "name or -"
	case f.use == writes && len(f.fits) > 0:
		return "name ending in " + f.fits[0]
	}
	return "name"
}

// Set takes any name but none, and for a file to write none with the ending of another format.
func (f *fileName) Set(name string) error {
	ending := strings.ToLower(filepath.Ext(name))
	switch {
	case name == "":
		return errors.New("no name")
	case name == "-" && !f.print:
		return errors.New("not to standard output")
	case f.use == writes && slices.Contains(known, ending) && !slices.Contains(f.fits, ending):
		return fmt.Errorf("%s is another format", ending)
	}
	*f.name = name
	return nil
}
