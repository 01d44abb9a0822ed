// Package call is what a call of the program names beside its scenario: files that flags read and write, words, and what is
// wrong with a call.
package call

import (
	"errors"
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/pflag"
)

// FileName is the value of a flag that names a file or a folder.
type FileName struct {
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

var _ pflag.Value = (*FileName)(nil)

// Endings of formats.
var (
	AsPage     = []string{".html", ".htm"}
	AsJSON     = []string{".json"}
	AsMap      = []string{".geojson", ".json"}
	AsTable    = []string{".csv"}
	AsWorkbook = []string{".xlsx"}
)

// known are endings that say a format to whoever opens the file: under them nothing else is written.
var known = []string{".html", ".htm", ".json", ".geojson", ".csv", ".tsv", ".xlsx", ".xls", ".ods", ".pdf", ".doc", ".docx", ".odt", ".svg", ".png",
	".jpg", ".jpeg", ".yaml", ".yml", ".toml", ".zip", ".gz"}

// OutFile is a flag for a file to write.
func OutFile(to *string, fits ...string) *FileName {
	return &FileName{name: to, use: writes, fits: fits}
}

// OutFileOrPrint is a flag for a file to write, or with - for standard output.
func OutFileOrPrint(to *string, fits ...string) *FileName {
	return &FileName{name: to, use: writes, fits: fits, print: true}
}

// OutFolder is a flag for a folder to write into.
func OutFolder(to *string) *FileName { return &FileName{name: to, use: fillsAFold} }

// InFile is a flag for a file to read.
func InFile(to *string) *FileName { return &FileName{name: to} }

func (f *FileName) String() string {
	if f.name == nil { // as pflag makes one to compare with
		return ""
	}
	return *f.name
}

// Type is what wantedOf knows it by.
func (f *FileName) Type() string {
	switch {
	case f.print:
		return "name or -"
	case f.use == writes && len(f.fits) > 0:
		return "name ending in " + f.fits[0]
	}
	return "name"
}

// Set takes any name but none, and for a file to write none with the ending of another format.
func (f *FileName) Set(name string) error {
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
