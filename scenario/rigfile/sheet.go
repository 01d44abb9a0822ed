package rigfile

import (
	"errors"
	"fmt"

	"coredays/model/plaintext"
	"coredays/scenario/spreadsheet"
)

// sheet is the table of a file.
type sheet struct {
	file string
	*spreadsheet.Table
}

// sheetOf reads a table; an error says in which file, and where.
func sheetOf(name string, data []byte) (*sheet, error) {
	t, err := spreadsheet.Read(name, data)
	if odd, is := errors.AsType[*plaintext.Odd](err); is && odd.Line > 0 {
		return nil, fmt.Errorf("%s:%d: %w", name, odd.Line, err)
	}
	if errors.Is(err, spreadsheet.ErrNoWorkbook) {
		return nil, fmt.Errorf("%s: a workbook is wanted, and this can't be read as one: save the table as CSV", name)
	}
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	return &sheet{name, t}, nil
}
