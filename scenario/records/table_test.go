package records

import (
	"encoding/hex"
	"fmt"
	"strings"
	"testing"
	"unicode/utf16"
)

// tables are all readers of tables, each with its heading and a good row.
var tables = []struct {
	name, head, row string
	read            func(text string) (rows int, faults string)
}{
	{"holes", holesHead, holeRow(nil), func(text string) (int, string) {
		sites, out, err := ReadHoles("holes.csv", strings.NewReader(text))
		if err != nil {
			return 0, err.Error()
		}
		return len(sites), strings.Trim(fmt.Sprint(out), "[]")
	}},
	{"cores", strings.Join(coreColumns, ","), "X,1,S,A,1,H,9.5,9.0,2030-01-01T10:00", func(text string) (int, string) {
		holes, out, err := ReadCores("cores.csv", strings.NewReader(text))
		if err != nil {
			return 0, err.Error()
		}
		return len(holes), strings.Trim(fmt.Sprint(out), "[]")
	}},
}

func TestTablesAreReadAsProgramsExportThem(t *testing.T) {
	for _, table := range tables {
		for name, change := range map[string]func(string) string{
			"as it is":                    func(s string) string { return s },
			"a byte order mark":           func(s string) string { return "\ufeff" + s },
			"a remark after a mark":       func(s string) string { return "\ufeff# kept by hand; Bouée\n" + s },
			"semicolons, decimal commas":  func(s string) string { return strings.NewReplacer(",", ";", ".", ",").Replace(s) },
			"tabs":                        func(s string) string { return strings.ReplaceAll(s, ",", "\t") },
			"carriage returns":            func(s string) string { return strings.ReplaceAll(s, "\n", "\r\n") },
			"nothing but carriage return": func(s string) string { return strings.ReplaceAll(s, "\n", "\r") },
			"units in brackets":           func(s string) string { return strings.NewReplacer("_mbsf", " [mbsf]", "_m,", " (m),").Replace(s) },
			"the zone in the heading": func(s string) string {
				return strings.NewReplacer("from,", "From (UTC),", "start,end", "start_utc,End [UTC]", "_on_deck", "_on_deck_utc").Replace(s)
			},
			"capitals":    func(s string) string { return strings.ToUpper(s[:strings.Index(s, "\n")]) + s[strings.Index(s, "\n"):] },
			"empty lines": func(s string) string { return "\n\n" + strings.ReplaceAll(s, "\n", "\n\n") },
			"cells that are quoted": func(s string) string {
				return `"` + strings.NewReplacer(",", `","`, "\n", "\"\n\"").Replace(strings.TrimSpace(s)) + "\"\n"
			},
		} {
			if rows, faults := table.read(change(table.head + "\n" + table.row + "\n")); rows != 1 || faults != "" {
				t.Errorf("%s with %s: %d rows, %s", table.name, name, rows, faults)
			}
		}
	}
}

// inUTF16 is a text as some spreadsheets save it when asked for Unicode.
func inUTF16(text string) string {
	data := []byte("\xff\xfe")
	for _, u := range utf16.Encode([]rune(text)) {
		data = append(data, byte(u), byte(u>>8))
	}
	return string(data)
}

func TestATableThatIsNoneSaysWhatItIs(t *testing.T) {
	for _, table := range tables {
		whole := table.head + "\n" + table.row + "\n"
		for name, c := range map[string]struct{ text, want string }{
			"UTF-16":        {inUTF16(whole), ": text in UTF-8 is wanted, and this is in UTF-16: save it as UTF-8"},
			"Latin-1":       {whole + "# Bou\xe9e\n", ":3: text in UTF-8 is wanted, and this has the byte 0xE9 on this line"},
			"a workbook":    {"PK\x03\x04\x14\x00" + whole, ": text in UTF-8 is wanted, and this is a workbook"},
			"a NUL":         {whole + "\x00" + table.row, ":3: text in UTF-8 is wanted, and this has a NUL byte on this line"},
			"nothing":       {"", "(this file is empty)"},
			"a mark":        {"\ufeff", "(this file is empty)"},
			"remarks alone": {"# one\n# two\n", "(this file is empty)"},
			"heading alone": {table.head + "\n", ": there is no line below the heading"},
			"no heading":    {table.row + "\n", ":1: the heading has no column "},
		} {
			if rows, faults := table.read(c.text); rows != 0 || !strings.Contains(faults, c.want) {
				t.Errorf("%s of %s: %d rows, %q, want %q", table.name, name, rows, faults, c.want)
			}
		}
	}
}

func TestAHeadingInAnotherUnitOrTwiceIsRefused(t *testing.T) {
	for _, table := range tables {
		for column, others := range map[string][]string{
			"depth_mbsf":    {"depth_ft", "depth_mbrf", "Depth (m)", "depth"},
			"water_depth_m": {"water_depth_ft", "Water depth [fathoms]", "water_depth"},
			"penetration_m": {"penetration_ft"},
			"recovered_m":   {"recovered_cm", "recovered (%)"},
			"cored_m":       {"cored_ft"},
			"start":         {"start_local", "start (EST)"},
			"from":          {"from_local"},
			"time_on_deck":  {"time_on_deck_local"},
		} {
			columns := "," + table.head + ","
			if !strings.Contains(columns, ","+column+",") {
				continue
			}
			for _, other := range others {
				head := strings.Trim(strings.Replace(columns, ","+column+",", ","+other+",", 1), ",")
				rows, faults := table.read(head + "\n" + table.row + "\n")
				want := fmt.Sprintf(":1: a column %s, in %s; there is %s, which is not taken for it", column, unitOf(column), plainTitle(other))
				if rows != 0 || !strings.Contains(faults, want) {
					t.Errorf("%s headed %s: %d rows, %q, want %q", table.name, other, rows, faults, want)
				}
			}
			rows, faults := table.read(table.head + ",note," + strings.ToUpper(column) + "\n" + table.row + ",,1\n")
			if want := fmt.Sprintf(":1: one column %s; columns ", column); rows != 0 || !strings.Contains(faults, want) {
				t.Errorf("%s with %s twice: %d rows, %q, want %q", table.name, column, rows, faults, want)
			}
		}
	}
}

func TestNoMessageRepeatsAFileThatIsNotTheTable(t *testing.T) {
	const secret = "root:x:0:0:root:/root:/bin/bash"
	for _, table := range tables {
		for _, text := range []string{secret + "\n", "password," + secret + "\n1,2\n", "\x00" + secret, secret + "\xe9", inUTF16(secret), `"` + secret} {
			if _, faults := table.read(text); faults == "" || strings.Contains(faults, "root") {
				t.Errorf("%s: %s answers %q", table.name, hex.EncodeToString([]byte(text[:4])), faults)
			}
		}
	}
}

func TestDecimalsOfATableAreAllOfOneKind(t *testing.T) {
	depths := func(text string) string {
		table, err := openTable("depths.csv", strings.NewReader(text), []string{"hole", "depth_mbsf"})
		if err != nil {
			t.Fatal(err)
		}
		for table.next() {
			table.number("depth_mbsf", 0, deepestHole)
			table.keep()
		}
		return fmt.Sprint(table.out)
	}
	const head = "hole;depth_mbsf\nA;9.5\n"
	for text, want := range map[string]string{
		head + "A;1,234\n": `{3 depth_mbsf "1,234": wanted a number with '.' before its decimals, as on line 2`,
		strings.ReplaceAll(head, ".", ",") + "A;1.234\n": `wanted a number with ',' before its decimals, as on line 2`,
		"hole,depth_mbsf\nA,\"9,5\"\n":                   `depth_mbsf "9,5": wanted a number`,
	} {
		if got := depths(text); !strings.Contains(got, want) {
			t.Errorf("%q: got %s", text, got)
		}
	}
}

func TestPositionsMayHaveDecimalCommas(t *testing.T) {
	text := strings.ReplaceAll(holesHead, ",", ";") + "\n" + strings.NewReplacer(",", ";", ".", ",").Replace(holeRow(map[string]string{"latitude": "-48.25", "longitude": "158.75"})) + "\n"
	sites, out, err := ReadHoles("holes.csv", strings.NewReader(text))
	if err != nil || len(out) > 0 {
		t.Fatal(out, err)
	}
	if p := sites[0].Holes[0].Position; p.Latitude != -48.25 || p.Longitude != 158.75 {
		t.Errorf("read as %v", p)
	}
}

func TestATimeOfAnotherFormIsToldByItsKind(t *testing.T) {
	for cell, want := range map[string]string{
		"31/05/2031 07:00":     "a date with the day or the month first",
		"48000.25":             "a number of days, as spreadsheets keep dates",
		"2031-05-02 07:00 EST": "a time with its zone in letters",
	} {
		_, out := readRows(t, holeRow(map[string]string{"start": cell}))
		if len(out) != 1 || !strings.Contains(out[0].Why, fmt.Sprintf("start %q: wanted a time in UTC, such as 2027-03-18T03:00 (this is %s", cell, want)) {
			t.Errorf("%q: %v", cell, out)
		}
	}
}

func TestACellGuardedAgainstSpreadsheetsIsReadAsItsText(t *testing.T) {
	sites, out := readRows(t, holeRow(map[string]string{"site": "'=1+1", "hole": "'@A"}))
	if len(out) > 0 || sites[0].Name != "=1+1" || sites[0].Holes[0].Name != "@A" {
		t.Errorf("%+v, %v", sites, out)
	}
}
