package plaintext

import "bytes"

const saveAsCSV = "save the table as CSV in UTF-8"

// signatures are how files begin that people take for their text; file(1) 5.44 says each of them by it.
var signatures = []struct {
	begins string
	Odd
}{
	{"PK\x03\x04", Odd{What: "is a workbook, or another ZIP archive", Cure: saveAsCSV}},
	{"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1", Odd{What: "is a workbook or document of older office programs", Cure: saveAsCSV}},
	{"%PDF-", Odd{What: "is a PDF document", Cure: "copy the table out of it and " + saveAsUTF8}},
	{"\x1f\x8b", Odd{What: "is compressed (gzip)", Cure: "unpack it first"}},
	{"CDF\x01", Odd{What: "is a NetCDF file", Cure: saveAsCSV}},
	{"CDF\x02", Odd{What: "is a NetCDF file", Cure: saveAsCSV}},
	{"\x89HDF\r\n\x1a\n", Odd{What: "is an HDF5 or NetCDF-4 file", Cure: saveAsCSV}},
	{"\xff\xfe\x00\x00", Odd{What: "is in UTF-32", Cure: saveAsUTF8}},
	{"\x00\x00\xfe\xff", Odd{What: "is in UTF-32", Cure: saveAsUTF8}},
	{"\xff\xfe", Odd{What: "is in UTF-16", Cure: saveAsUTF8}},
	{"\xfe\xff", Odd{What: "is in UTF-16", Cure: saveAsUTF8}},
}

// known says files by how they begin.
func known(data []byte) *Odd {
	for _, s := range signatures {
		if bytes.HasPrefix(data, []byte(s.begins)) {
			return &s.Odd
		}
	}
	return nil
}
