package sitetable

import (
	"bytes"
	"encoding/csv"
	"io"
	"path/filepath"
	"strings"

	"github.com/xuri/excelize/v2"

	"coredays/model/plaintext"
	"coredays/scenario"
)

// row is a line of cells.
type row struct {
	line  int
	cells []string
}

// cell is that of a column; rows may end early.
func (r row) cell(column int) string {
	if column < 0 || column >= len(r.cells) {
		return ""
	}
	return plaintext.Unguarded(strings.TrimSpace(strings.ReplaceAll(r.cells[column], "\u00a0", " ")))
}

func (r row) empty() bool {
	for i := range r.cells {
		if r.cell(i) != "" {
			return false
		}
	}
	return true
}

// rows are those of a file that are not empty, and whether a comma may stand before decimals.
func rows(name string, data []byte) (list []row, commas bool, err error) {
	switch strings.ToLower(filepath.Ext(name)) {
	case ".xlsx", ".xlsm":
		list, err = workbookRows(name, data)
		return list, true, err
	}
	text, err := plaintext.Of(data)
	if err != nil {
		return nil, false, scenario.Faults{{File: name, Wanted: err.Error()}}
	}
	reader := csv.NewReader(bytes.NewReader(text))
	reader.Comma, reader.FieldsPerRecord, reader.LazyQuotes = divider(text), -1, true
	for {
		cells, err := reader.Read()
		if err == io.EOF {
			return list, reader.Comma != ',', nil
		}
		if err != nil {
			return nil, false, scenario.Faults{{File: name, Wanted: "a table of sites (" + err.Error() + ")"}}
		}
		line, _ := reader.FieldPos(0)
		if r := (row{line, cells}); !r.empty() {
			list = append(list, r)
		}
	}
}

// mostUnpacked is far more than any table of sites, and less than what a bomb unpacks to.
const mostUnpacked = 64 << 20

// workbookRows are those of the first sheet that has any.
func workbookRows(name string, data []byte) (list []row, err error) {
	book, err := excelize.OpenReader(bytes.NewReader(data), excelize.Options{UnzipSizeLimit: mostUnpacked})
	if err != nil {
		return nil, scenario.Faults{{File: name, Wanted: "a workbook (" + err.Error() + ")"}}
	}
	defer book.Close()
	for _, sheet := range book.GetSheetList() {
		all, err := book.GetRows(sheet)
		if err != nil {
			return nil, scenario.Faults{{File: name, Wanted: "a sheet that can be read (" + err.Error() + ")"}}
		}
		for i, cells := range all {
			if r := (row{i + 1, cells}); !r.empty() {
				list = append(list, r)
			}
		}
		if len(list) > 0 {
			break
		}
	}
	return list, nil
}

// divider is what divides the cells: a semicolon or a tab where most lines have one, since commas may then stand
// before decimals.
func divider(text []byte) rune {
	lines := 0
	with := map[byte]int{}
	for line := range bytes.Lines(text) {
		if len(bytes.TrimSpace(line)) == 0 {
			continue
		}
		lines++
		for _, d := range []byte(";\t") {
			if bytes.IndexByte(line, d) >= 0 {
				with[d]++
			}
		}
	}
	for _, d := range []byte(";\t") {
		if 2*with[d] > lines {
			return rune(d)
		}
	}
	return ','
}
