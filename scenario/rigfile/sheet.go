package rigfile

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"path/filepath"
	"slices"
	"strings"

	"github.com/xuri/excelize/v2"

	"coredays/model/plaintext"
)

// sheet is a table as its cells say it. Rows are numbered as people see them, from 1.
type sheet struct {
	file  string
	cells []row
	comma bool // commas divide the columns, so none can stand in a number
}

type row struct {
	number int
	cells  []string
}

// sheetOf takes a file for what its name and its first bytes say. A workbook gives its first sheet that has cells.
func sheetOf(name string, data []byte) (*sheet, error) {
	if bytes.HasPrefix(data, []byte("PK\x03\x04")) || strings.EqualFold(filepath.Ext(name), ".xlsx") {
		return workbook(name, data)
	}
	text, err := plaintext.Of(data)
	if err != nil {
		if odd, is := errors.AsType[*plaintext.Odd](err); is && odd.Line > 0 {
			return nil, fmt.Errorf("%s:%d: %w", name, odd.Line, err)
		}
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	s := &sheet{file: name}
	reader := csv.NewReader(bytes.NewReader(text))
	reader.Comma = divider(text)
	reader.Comment, reader.LazyQuotes, reader.FieldsPerRecord, reader.TrimLeadingSpace = '#', true, -1, reader.Comma != '\t'
	s.comma = reader.Comma == ','
	for {
		cells, err := reader.Read()
		if err == io.EOF {
			return s, nil
		}
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		line, _ := reader.FieldPos(0)
		s.add(line, cells)
	}
}

// add keeps a row that is not empty.
func (s *sheet) add(number int, cells []string) {
	for i := range cells {
		cells[i] = plaintext.Unguarded(strings.TrimSpace(cells[i]))
	}
	if slices.ContainsFunc(cells, func(c string) bool { return c != "" }) {
		s.cells = append(s.cells, row{number, cells})
	}
}

// mostUnzipped bounds what a workbook unfolds to.
const mostUnzipped = 256 << 20

func workbook(name string, data []byte) (*sheet, error) {
	book, err := excelize.OpenReader(bytes.NewReader(data), excelize.Options{UnzipSizeLimit: mostUnzipped, RawCellValue: false})
	if err != nil {
		return nil, fmt.Errorf("%s: a workbook is wanted, and this can't be read as one: save the table as CSV", name)
	}
	defer book.Close()
	for _, title := range book.GetSheetList() {
		rows, err := book.GetRows(title)
		if err != nil || len(rows) < 2 {
			continue
		}
		s := &sheet{file: name}
		for i, cells := range rows {
			s.add(i+1, cells)
		}
		return s, nil
	}
	return nil, fmt.Errorf("%s: no sheet of the workbook has a table", name)
}

// divider is what stands most often between the columns of the first lines.
func divider(text []byte) rune {
	var count [3]int
	lines := 0
	for line := range bytes.Lines(text) {
		if bytes.HasPrefix(line, []byte("#")) {
			continue
		}
		for i, d := range dividers {
			count[i] += bytes.Count(line, []byte(string(d)))
		}
		if lines++; lines == 20 {
			break
		}
	}
	switch {
	case count[1] >= lines: // with semicolons or tabs on every line commas stand in numbers and words
		return ';'
	case count[2] >= lines:
		return '\t'
	}
	return ','
}

var dividers = [...]rune{',', ';', '\t'}
