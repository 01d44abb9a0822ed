package sitetable

import (
	"errors"

	"coredays/model/plaintext"
	"coredays/scenario/fault"
	"coredays/scenario/spreadsheet"
)

// tableIn reads the table of a file.
func tableIn(name string, data []byte) (*spreadsheet.Table, error) {
	t, err := spreadsheet.Read(name, data)
	if err == nil {
		return t, nil
	}
	f := fault.Fault{File: name, Wanted: "a table of sites (" + err.Error() + ")"}
	if errors.Is(err, spreadsheet.ErrNoWorkbook) {
		f.Wanted = "a workbook that can be read, or the table saved as CSV"
	}
	if odd, is := errors.AsType[*plaintext.Odd](err); is {
		f.Line, f.Wanted = odd.Line, err.Error()
	}
	return nil, fault.List{f}
}
