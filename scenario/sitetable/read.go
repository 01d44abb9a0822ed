package sitetable

import (
	"fmt"
	"math"
	"regexp"
	"strings"

	"coredays/model/geo"
	"coredays/model/places"
	"coredays/model/unit"
	"coredays/scenario/fault"
	"coredays/scenario/spreadsheet"
)

// Site is a row of the table.
type Site struct {
	Name      string
	Position  geo.Position
	Depth     unit.Length // of water
	Filled    bool        // the depth is that of the place, since the table has none
	Target    unit.Depth  // 0 for none
	Alternate bool
}

// mostRows is what an expedition can mean; a scenario has no more sites.
const mostRows = 100

// Read reads the sites of a table, by the extension of its name. The error is scenario.Faults: all rows' at once.
func Read(name string, data []byte) ([]Site, error) {
	table, err := tableIn(name, data)
	if err != nil {
		return nil, err
	}
	list := table.Rows
	c, below, found := heading(list)
	if !found {
		return nil, fault.List{{File: name, Wanted: "a heading with the columns name, latitude and longitude (or position), and where known water depth, target, priority, each with its unit"}}
	}
	r := reader{name: name, columns: c, commas: !table.CommaDivides, known: map[string]int{}}
	for _, title := range c.twice {
		r.faults = append(r.faults, fault.Fault{File: name, Line: list[below-1].Number, Value: title, Wanted: "one column for it; another one says the same"})
	}
	if len(list)-below > mostRows {
		r.faults = append(r.faults, fault.Fault{File: name, Value: fmt.Sprintf("%d rows", len(list)-below), Wanted: fmt.Sprintf("at most %d sites", mostRows)})
		return nil, r.faults
	}
	for _, row := range list[below:] {
		r.read(row)
	}
	if len(list) == below {
		r.faults = append(r.faults, fault.Fault{File: name, Wanted: "a row for each site below the heading"})
	}
	if len(r.faults) > 0 {
		return nil, r.faults
	}
	return r.sites, nil
}

// reader reads row by row.
type reader struct {
	name    string
	columns columns
	commas  bool // may stand before decimals
	row     spreadsheet.Row
	known   map[string]int // lines of the names
	sites   []Site
	faults  fault.List
}

func (r *reader) fault(column, value, wanted string) {
	r.faults = append(r.faults, fault.Fault{File: r.name, Line: r.row.Number, Path: column, Value: value, Wanted: wanted})
}

func (r *reader) read(row spreadsheet.Row) {
	r.row = row
	s := Site{Name: row.Cell(r.columns.name)}
	if line, twice := r.known[s.Name]; s.Name == "" {
		r.fault("name", "", "a name")
	} else if twice {
		r.fault("name", s.Name, fmt.Sprintf("a name that no other site has; line %d has it", line))
	}
	r.known[s.Name] = row.Number
	var placed bool
	s.Position, placed = r.position()
	s.Depth = r.depth()
	if s.Depth == 0 && placed && row.Cell(r.columns.depth) == "" {
		s.Filled = true
		s.Depth = unit.Length(math.Round(float64(-places.ReliefAt(s.Position).Mean)/10) * 10)
		if s.Depth < leastDepth {
			r.fault("water depth", "", fmt.Sprintf("a depth: none is given, and the mean of the cell is %.0f m above the sea (%s)", -float64(s.Depth), places.ReliefSource))
		}
	}
	s.Target = unit.Depth(r.length("target", r.columns.target, r.columns.targetUnit, 0, 9000))
	s.Alternate = r.priority()
	r.sites = append(r.sites, s)
}

// leastDepth and mostDepth are those that a scenario takes.
const leastDepth, mostDepth = 10, 11_000

func (r *reader) depth() unit.Length {
	return unit.Length(r.length("water depth", r.columns.depth, r.columns.depthUnit, leastDepth, mostDepth))
}

// length reads a length with the unit of its cell or of the heading; an empty cell is 0.
func (r *reader) length(column string, at int, heading string, least, most float64) float64 {
	text := r.row.Cell(at)
	if text == "" || strings.Trim(text, "-–") == "" {
		return 0
	}
	plain := r.decimals(text)
	if strings.HasSuffix(plain, "mbsf") {
		plain = strings.TrimSuffix(plain, "bsf")
	}
	value, err := unit.OfLength.Parse(plain)
	if err != nil && heading != "" {
		value, err = unit.OfLength.Parse(plain + " " + heading)
	}
	switch {
	case err != nil:
		r.fault(column, text, fmt.Sprintf("a length with its unit in the heading or the cell, such as \"3420 m\" (this %v)", err))
	case value < least || value > most:
		r.fault(column, text, fmt.Sprintf("from %g m to %g m, counted downwards without a sign", least, most))
	default:
		return value
	}
	return 0
}

// decimalComma is a number with a comma before its decimals.
var decimalComma = regexp.MustCompile(`(\d),(\d)`)

// decimals makes the decimal comma a point where commas do not divide the columns.
func (r *reader) decimals(text string) string {
	if r.commas && !strings.Contains(text, ".") {
		return decimalComma.ReplaceAllString(text, "$1.$2")
	}
	return text
}

// position puts the pieces together.
func (r *reader) position() (geo.Position, bool) {
	text := ""
	if c := r.columns; c.position >= 0 {
		text = r.decimals(r.row.Cell(c.position))
	} else {
		text = r.coordinate(c.latitude, "N", "S") + " " + r.coordinate(c.longitude, "E", "W")
	}
	p, err := geo.ParsePosition(text)
	if err != nil {
		r.fault("position", strings.TrimSpace(text), geo.Wanted+" (this "+err.Error()+")")
		return geo.Position{}, false
	}
	return p, true
}

// coordinate is a latitude or a longitude with its hemisphere behind it.
func (r *reader) coordinate(c coordinate, positive, negative string) string {
	parts := []string{}
	for _, at := range []int{c.whole, c.degrees, c.minutes, c.seconds} {
		if part := r.decimals(r.row.Cell(at)); part != "" {
			parts = append(parts, part)
		}
	}
	text, side := strings.Join(parts, " "), strings.ToUpper(r.row.Cell(c.side))
	if text == "" {
		return ""
	}
	if before := strings.ToUpper(text[:1]); before == positive || before == negative { // "S 48 37.2"
		text, side = strings.TrimSpace(text[1:]), before
	}
	if upper := strings.ToUpper(text); strings.HasSuffix(upper, positive) || strings.HasSuffix(upper, negative) {
		return text
	}
	text = strings.Replace(text, "−", "-", 1)
	unsigned, minus := strings.CutPrefix(text, "-")
	switch {
	case side == "" && c.sided != "" && !minus:
		side = c.sided
	case side == "" && minus:
		side = negative
	case side == "":
		side = positive
	case minus:
		return text + side // a sign and a hemisphere: the parser says what is wrong
	}
	return strings.TrimPrefix(unsigned, "+") + side
}

// priority says an alternate.
func (r *reader) priority() bool {
	text := r.row.Cell(r.columns.priority)
	switch strings.ToLower(text) {
	case "", "primary", "1", "p":
		return false
	case "alternate", "2", "a", "alt":
		return true
	}
	r.fault("priority", text, "primary or alternate (or 1 or 2)")
	return false
}
