package spreadsheet_test

import (
	"errors"
	"testing"

	"github.com/google/go-cmp/cmp"

	"coredays/scenario/spreadsheet"
)

func TestTablesAreReadAsTheyAreSaved(t *testing.T) {
	for name, c := range map[string]struct {
		text   string
		rows   []spreadsheet.Row
		commas bool
	}{
		"commas":     {"a,b\n1,2\n", []spreadsheet.Row{{1, []string{"a", "b"}}, {2, []string{"1", "2"}}}, true},
		"semicolons": {"a;b\n1,5;2\n", []spreadsheet.Row{{1, []string{"a", "b"}}, {2, []string{"1,5", "2"}}}, false},
		"tabs":       {"a\tb\n\t2\n", []spreadsheet.Row{{1, []string{"a", "b"}}, {2, []string{"", "2"}}}, false},
		"mark":       {"\ufeffa,b\n", []spreadsheet.Row{{1, []string{"a", "b"}}}, true},
		"blanks":     {"a,b\n,\n\n 1\u00a0, 2\n", []spreadsheet.Row{{1, []string{"a", "b"}}, {4, []string{"1", "2"}}}, true},
		"comments":   {"# by;hand;a;b\na,b\n", []spreadsheet.Row{{2, []string{"a", "b"}}}, true},
		"one word":   {"a;b,c,d\ne,f,g\nh,i,j\n", []spreadsheet.Row{{1, []string{"a;b", "c", "d"}}, {2, []string{"e", "f", "g"}}, {3, []string{"h", "i", "j"}}}, true},
	} {
		got, err := spreadsheet.Read("table.csv", []byte(c.text))
		if err != nil {
			t.Fatal(name, err)
		}
		if d := cmp.Diff(&spreadsheet.Table{Rows: c.rows, CommaDivides: c.commas}, got); d != "" {
			t.Errorf("%s (-want +got):\n%s", name, d)
		}
	}
}

func TestWhatIsNoWorkbookIsRefused(t *testing.T) {
	if _, err := spreadsheet.Read("table.xlsx", []byte("a,b\n")); !errors.Is(err, spreadsheet.ErrNoWorkbook) {
		t.Errorf("got %v", err)
	}
}
