// Package spreadsheet reads tables in the state in which spreadsheets save them: a workbook, or text divided by commas,
// semicolons or tabs; with a byte order mark, hard blanks, guarded cells and blank rows.
package spreadsheet

import (
	"bytes"
	"encoding/csv"
	"errors"
	"io"
	"path/filepath"
	"strings"

	"github.com/xuri/excelize/v2"

	"coredays/model/plaintext"
)

// Table is the rows of a file that are not empty.
type Table struct {
	Rows         []Row
	CommaDivides bool // the columns, so that none can stand before decimals
}

// Row is a line of trimmed cells, numbered as people see it, from 1.
type Row struct {
	Number int
	Cells  []string
}

// Cell is that of a column; rows may end early.
func (r Row) Cell(column int) string {
	if column < 0 || column >= len(r.Cells) {
		return ""
	}
	return r.Cells[column]
}

// What a workbook may lack.
var (
	ErrNoWorkbook = errors.New("no workbook")
	ErrNoTable    = errors.New("no sheet of the workbook has a table")
)

// Read takes a file for what its name or its first bytes say. Lines that begin with # are comments. An error is a
// *plaintext.Odd where the file is no text.
func Read(name string, data []byte) (*Table, error) {
	if bytes.HasPrefix(data, []byte("PK\x03\x04")) || strings.EqualFold(filepath.Ext(name), ".xlsx") {
		return workbook(data)
	}
	text, err := plaintext.Of(data)
	if err != nil {
		return nil, err
	}
	reader := csv.NewReader(bytes.NewReader(text))
	reader.Comma = divider(text)
	reader.Comment, reader.LazyQuotes, reader.FieldsPerRecord, reader.TrimLeadingSpace = '#', true, -1, reader.Comma != '\t'
	t := &Table{CommaDivides: reader.Comma == ','}
	for {
		cells, err := reader.Read()
		if err == io.EOF {
			return t, nil
		}
		if err != nil {
			return nil, err
		}
		line, _ := reader.FieldPos(0)
		t.add(line, cells)
	}
}

// add keeps a row that is not empty.
func (t *Table) add(number int, cells []string) {
	empty := true
	for i, cell := range cells {
		cells[i] = plaintext.Unguarded(strings.TrimSpace(strings.ReplaceAll(cell, "\u00a0", " ")))
		empty = empty && cells[i] == ""
	}
	if !empty {
		t.Rows = append(t.Rows, Row{number, cells})
	}
}

// mostUnpacked bounds what a workbook unfolds to: far more than any table here, less than what a bomb has.
const mostUnpacked = 256 << 20

// workbook is the first sheet that has a row.
func workbook(data []byte) (*Table, error) {
	book, err := excelize.OpenReader(bytes.NewReader(data), excelize.Options{UnzipSizeLimit: mostUnpacked})
	if err != nil {
		return nil, ErrNoWorkbook
	}
	defer book.Close()
	for _, title := range book.GetSheetList() {
		rows, err := book.GetRows(title)
		if err != nil {
			continue
		}
		t := &Table{}
		for i, cells := range rows {
			t.add(i+1, cells)
		}
		if len(t.Rows) > 0 {
			return t, nil
		}
	}
	return nil, ErrNoTable
}

// looked is how many lines are looked at for what divides the columns.
const looked = 20

// divider is a semicolon or a tab where more than half of the first lines have one, since commas may then stand in
// numbers and words.
func divider(text []byte) rune {
	lines := 0
	with := map[byte]int{}
	for line := range bytes.Lines(text) {
		if bytes.HasPrefix(line, []byte("#")) || len(bytes.TrimSpace(line)) == 0 {
			continue
		}
		for _, d := range []byte(";\t") {
			if bytes.IndexByte(line, d) >= 0 {
				with[d]++
			}
		}
		if lines++; lines == looked {
			break
		}
	}
	for _, d := range []byte(";\t") {
		if 2*with[d] > lines {
			return rune(d)
		}
	}
	return ','
}
