package output_test

import (
	"os"
	"slices"
	"strings"
	"testing"

	"coredays/output/outputtest"
	"coredays/output/sheet"
)

// A table that is not in the list could be written over a file that is read.
func TestEveryTableIsInTheListOfTables(t *testing.T) {
	r := outputtest.ReportOn(outputtest.Ordinary())
	r.Orders = outputtest.ThreeOrders()
	folder := t.TempDir()
	if err := sheet.CSV(t.Context(), folder, r); err != nil {
		t.Fatal(err)
	}
	files, err := os.ReadDir(folder)
	if err != nil || len(files) < 15 {
		t.Fatal(len(files), err)
	}
	for _, f := range files {
		if !slices.Contains(sheet.Tables, strings.TrimSuffix(f.Name(), ".csv")) {
			t.Errorf("%s is not in the list", f.Name())
		}
	}
}
