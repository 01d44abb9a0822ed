package records

import (
	"compress/gzip"
	"fmt"
	"io"
	"strings"

	"coredays/model/record"
	"coredays/model/unit"
	"coredays/scenario/document"
)

// describedColumns must be in a table of lithologies.
var describedColumns = []string{"leg", "hole", "top_m", "bottom_m", "lithology"}

// DescribedHole names a hole of a table of lithologies: its leg, and its site and letter in one.
type DescribedHole struct{ Leg, Hole string }

// ReadDescribed reads a table of the lithologies described in holes, by hole, in the order of the file. Rows that can't be
// read are left out and listed.
func ReadDescribed(name string, r io.Reader) (map[DescribedHole][]record.Described, []record.LeftOut, error) {
	t, err := openTable(name, r, describedColumns)
	if err != nil {
		return nil, nil, err
	}
	holes := map[DescribedHole][]record.Described{}
	for t.next() {
		hole := DescribedHole{t.word("leg"), plainSite(t.word("hole"))}
		d := record.Described{Top: unit.Depth(t.number("top_m", 0, deepestHole)), Bottom: unit.Depth(t.number("bottom_m", 0, deepestHole)), Class: t.word("lithology")}
		if len(t.wrong) == 0 && d.Bottom <= d.Top {
			t.fault("bottom_m", "a depth below top_m")
		}
		if t.keep() {
			holes[hole] = append(holes[hole], d)
		}
	}
	return holes, sortedOut(t.out), t.someRows(name)
}

// DescribedIn reads the file of such a table, as it is or compressed by gzip.
func DescribedIn(file string) (map[DescribedHole][]record.Described, []record.LeftOut, error) {
	r, err := document.OpenFile(file)
	if err != nil {
		return nil, nil, fmt.Errorf("the table of lithologies can't be read: %w", err)
	}
	defer r.Close()
	if !strings.HasSuffix(file, ".gz") {
		return ReadDescribed(file, r)
	}
	unpacked, err := gzip.NewReader(r)
	if err != nil {
		return nil, nil, fmt.Errorf("the table of lithologies can't be read: %w", err)
	}
	return ReadDescribed(file, unpacked)
}

// plainSite is the name of a site or hole without the letter that some tables put before the number.
func plainSite(name string) string { return strings.TrimPrefix(name, "U") }

// Describe says of the holes of sites what was described in them, and at how many sites something was.
func Describe(sites []record.Site, holes map[DescribedHole][]record.Described) (described int) {
	for i := range sites {
		s, any := &sites[i], false
		for j := range s.Holes {
			h := &s.Holes[j]
			h.Described = holes[DescribedHole{s.Leg, plainSite(s.Name) + h.Name}]
			any = any || len(h.Described) > 0
		}
		if any {
			described++
		}
	}
	return described
}
