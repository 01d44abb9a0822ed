package plaintext

import (
	"archive/zip"
	"bytes"
	"compress/gzip"
	"errors"
	"strings"
	"testing"
	"unicode/utf16"
)

// inTwoBytes is a text in UTF-16, without a mark of the order.
func inTwoBytes(text string, littleEndian bool) (data []byte) {
	for _, u := range utf16.Encode([]rune(text)) {
		pair := []byte{byte(u >> 8), byte(u)}
		if littleEndian {
			pair[0], pair[1] = pair[1], pair[0]
		}
		data = append(data, pair...)
	}
	return data
}

// zipped and squeezed are made by the standard library's own writers of those formats.
func zipped(t *testing.T) []byte {
	var b bytes.Buffer
	z := zip.NewWriter(&b)
	w, err := z.Create("xl/workbook.xml")
	if err != nil {
		t.Fatal(err)
	}
	w.Write([]byte("<workbook/>"))
	if err := z.Close(); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func squeezed() []byte {
	var b bytes.Buffer
	z := gzip.NewWriter(&b)
	z.Write([]byte("time,hs\n"))
	z.Close()
	return b.Bytes()
}

func TestWhatIsNoTextIsToldWithItsLineAndCure(t *testing.T) {
	const text = "time,hs\n2031-05-02T07:00,2.5\n"
	for name, c := range map[string]struct {
		data []byte
		line int
		want string
	}{
		"a workbook":                    {zipped(t), 0, "this is a workbook, or another ZIP archive: save the table as CSV in UTF-8"},
		"an old workbook":               {[]byte("\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1\x00\x00"), 0, "older office programs: save the table as CSV"},
		"compressed":                    {squeezed(), 0, "this is compressed (gzip): unpack it first"},
		"NetCDF":                        {[]byte("CDF\x01\x00\x00\x00\x00"), 0, "this is a NetCDF file"},
		"HDF5":                          {[]byte("\x89HDF\r\n\x1a\n\x00"), 0, "this is an HDF5 or NetCDF-4 file"},
		"PDF":                           {[]byte("%PDF-1.7\n"), 0, "this is a PDF document"},
		"UTF-16, little end first":      {append([]byte("\xff\xfe"), inTwoBytes(text, true)...), 0, "this is in UTF-16: save it as UTF-8"},
		"UTF-16, big end first":         {append([]byte("\xfe\xff"), inTwoBytes(text, false)...), 0, "this is in UTF-16: save it as UTF-8"},
		"UTF-16 without its mark":       {inTwoBytes(text, true), 0, "this is in UTF-16: save it as UTF-8"},
		"UTF-16 without mark, big ends": {inTwoBytes(text, false), 0, "this is in UTF-16: save it as UTF-8"},
		"UTF-32":                        {[]byte("\xff\xfe\x00\x00t\x00\x00\x00"), 0, "this is in UTF-32"},
		"a NUL":                         {[]byte(text + "2031-05-02T08:00,\x002\n"), 3, "this has a NUL byte on this line"},
		"only NUL":                      {make([]byte, 1000), 1, "this has a NUL byte on this line"},
		"Latin-1":                       {[]byte("# Bou\xe9e\ntime,hs\n"), 1, "this has the byte 0xE9 on this line, as text in Latin-1 or Windows-1252 has: save it as UTF-8"},
		"Latin-1 further down":          {[]byte(text + "# 5 \xb0C\n"), 3, "the byte 0xB0 on this line"},
		"Latin-1 below good UTF-8":      {[]byte("# Bouée, 5 °C \ufffd\n\n# Bou\xe9e"), 3, "the byte 0xE9 on this line"},
	} {
		_, err := Of(c.data)
		odd, is := errors.AsType[*Odd](err)
		if !is || odd.Line != c.line || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: got %v (%+v), want line %d: %s", name, err, odd, c.line, c.want)
		}
	}
}

func TestTextIsTakenAsItStands(t *testing.T) {
	for data, want := range map[string]string{
		"":                              "",
		"time,hs\n":                     "time,hs\n",
		"\ufefftime,hs\r\n2,3":          "time,hs\r\n2,3",
		"\ufeff# Bouée de 5 °C\ntime\n": "# Bouée de 5 °C\ntime\n",
		"time,hs\r2,3\r":                "time,hs\n2,3\n",
		"P":                             "P",
	} {
		if got, err := Of([]byte(data)); err != nil || string(got) != want {
			t.Errorf("%q is taken as %q, %v; want %q", data, got, err, want)
		}
	}
}

func FuzzOf(f *testing.F) {
	for _, text := range []string{"\ufeffa\rb", "\xff\xfea\x00", "a\x00", "\xe9", "é"} {
		f.Add([]byte(text))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		text, err := Of(data)
		if err != nil {
			return
		}
		if again, err := Of(text); !bytes.HasPrefix(text, mark) && (err != nil || !bytes.Equal(again, text)) {
			t.Errorf("%q is taken as %q, and that as %q, %v", data, text, again, err)
		}
	})
}
