package records

import (
	"io"
	"slices"

	"coredays/model/coring"
	"coredays/model/geo"
	"coredays/model/record"
	"coredays/model/unit"
)

// holeColumns must be in a table of holes; those of the metres by tool may be empty.
var holeColumns = []string{"program", "leg", "site", "hole", "hole_order", "holes_at_site", "latitude", "longitude", "water_depth_m",
	"penetration_m", "cored_m", "n_cores", "n_apc", "n_hlapc", "n_xcb", "n_rcb", "n_other", "cored_apc_m", "cored_xcb_m", "cored_rcb_m",
	"cored_other_m", "start", "end"}

// firstColumn may be there: whether a site is the first of its leg, for tables that do not have all sites of a leg.
const firstColumn = "first_of_leg"

// Limits beyond which a cell is a slip: deeper than any ocean and any hole, longer than any visit.
const (
	deepestWater = 11_000.0 // m
	deepestHole  = 5_000.0  // m below the sea floor; the deepest on record is 3.3 km, from memory
	mostOnRecord = 2_000.0  // cores of a hole, holes of a site
	longestHole  = 200      // days on a hole
)

// notCoring are expeditions of the compiled records that were engineering trials or transits.
var notCoring = map[string]bool{"378S": true, "384P": true, "384T": true, "384A": true, "387P": true, "387T": true}

// ReadHoles reads a table of holes and groups them by site. Rows that can't be read, and the other
// rows of their sites, are left out and listed.
func ReadHoles(name string, r io.Reader) ([]record.Site, []record.LeftOut, error) {
	t, err := openTable(name, r, holeColumns)
	if err != nil {
		return nil, nil, err
	}
	var rows []record.Row
	torn := map[[3]string]bool{}
	for t.next() {
		row := t.holeRow()
		if t.keep() {
			rows = append(rows, row)
			continue
		}
		torn[[3]string{row.Program, row.Leg, row.Site}] = true
	}
	sites, out := record.Group(rows, torn)
	return sites, sortedOut(append(t.out, out...)), t.someRows(name)
}

func (t *recordTable) holeRow() record.Row {
	row := record.Row{Program: t.word("program"), Leg: t.word("leg"), Site: t.word("site"), Of: t.count("holes_at_site", 1, mostOnRecord)}
	row.Coring = !notCoring[row.Leg]
	if _, stated := t.column[firstColumn]; stated && t.has(firstColumn) {
		t.oneOf(firstColumn, []string{"yes", "no"})
		row.Later = t.text(firstColumn) == "no"
		row.Partial = true
	}
	row.Hole = record.Hole{
		Name: t.word("hole"), Order: t.count("hole_order", 1, mostOnRecord), Position: t.position(), Row: t.line,
		Water: unit.Length(t.number("water_depth_m", 1, deepestWater)), Depth: unit.Depth(t.number("penetration_m", 0, deepestHole)),
		Cored: unit.Length(t.maybe("cored_m", 0, deepestHole)), Start: t.moment("start"), End: t.moment("end"),
	}
	t.tools(&row.Hole)
	t.catch(&row.Hole)
	if days := row.Hole.Days() / unit.Day; len(t.wrong) == 0 && (days <= 0 || days > longestHole) {
		t.fault("end", "a time after the start and at most 200 days later")
	}
	return row
}

// position reads signed degrees, or degrees with hemispheres.
func (t *recordTable) position() geo.Position {
	p, err := geo.ParsePosition(t.figures("latitude") + " " + t.figures("longitude"))
	if err != nil {
		t.wrong = append(t.wrong, "latitude and longitude "+t.text("latitude")+" "+t.text("longitude")+": the position "+err.Error())
	}
	return p
}

// countOf and metresOf are the columns of cores and metres of a tool, empty where the table has none: no source states
// the metres of half-length cores, and a tool newer than the records has no columns at all.
func countOf(t coring.Tool) string  { return known("n_" + t.Key()) }
func metresOf(t coring.Tool) string { return known("cored_" + t.Key() + "_m") }

func known(column string) string {
	if slices.Contains(holeColumns, column) {
		return column
	}
	return ""
}

// tools reads cores and metres by tool.
func (t *recordTable) tools(h *record.Hole) {
	if all := t.maybeCount("n_cores", mostOnRecord); all > 0 && !t.has("n_apc") && !t.has("n_xcb") && !t.has("n_rcb") {
		t.wrong = append(t.wrong, "the tools of the cores are not stated")
		return
	}
	unmeasured := false
	for tool := range coring.Tools {
		if column := countOf(tool); column != "" {
			h.Cores[tool] = t.maybeCount(column, mostOnRecord)
		}
		metres := metresOf(tool)
		unmeasured = unmeasured || metres == "" && h.Cores[tool] > 0
		if metres != "" && t.has(metres) {
			h.ByTool = true
			h.Metres[tool] = unit.Length(t.number(metres, 0, deepestHole))
		}
	}
	h.Other = t.maybeCount("n_other", mostOnRecord)
	h.OtherMetres = unit.Length(t.maybe("cored_other_m", 0, deepestHole))
	h.ByTool = h.ByTool && !unmeasured
}
