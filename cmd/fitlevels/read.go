package main

import (
	"io"
	"time"
)

// Core is one row of the core record.
type Core struct {
	Leg, Site, Hole string  // Site and Hole carry their leg, so that each is unique
	Water           float64 // m
	Number          int
	Tool            string    // H piston, X extended barrel, R rotary; other letters are other tools, digits drilled intervals
	Top, Cored      float64   // m below sea floor; m
	Recovered       float64   // m, NaN when the record is blank
	OnDeck          time.Time // zero when the record is blank; rounded to about 5 minutes in the source
	Record          []string  // the row as written, for extracts
}

// Bottom is the depth below the sea floor reached by the core, in metres.
func (c Core) Bottom() float64 { return c.Top + c.Cored }

// Hole is one row of the hole record.
type Hole struct {
	Leg, Site, Name string
	Order           int     // place of the hole in the order drilled at its site, from 1
	Holes           int     // at the site
	Water           float64 // m
	Penetration     float64 // m below sea floor, NaN when blank
	Cores           float64 // NaN when blank
	Start, End      time.Time
	Record          []string // the row as written, for extracts
}

// First and Last report whether the trip in or the trip out falls to the hole.
func (h Hole) First() bool { return h.Order == 1 }

// Last reports whether the ship left the site after the hole.
func (h Hole) Last() bool { return h.Order == h.Holes }

// notCoring lists expeditions that were engineering or transit voyages (source note of the compiled table).
var notCoring = map[string]bool{"378S": true, "384P": true, "384T": true, "384A": true, "387P": true, "387T": true}

func readCores(r io.Reader) (cores []Core, head, faults []string, err error) {
	s, err := openSheet("cores", r, "leg", "site", "hole", "water_depth_m", "core", "type",
		"top_depth_mbsf", "cored_m", "recovered_m", "time_on_deck")
	if err != nil {
		return nil, nil, nil, err
	}
	for s.next() {
		c := Core{Leg: s.text("leg"), Tool: s.text("type"), Water: s.number("water_depth_m"),
			Number: int(s.number("core")), Top: s.number("top_depth_mbsf"), Cored: s.number("cored_m"),
			Recovered: s.known("recovered_m"), OnDeck: s.moment("time_on_deck"), Record: s.record}
		c.Site = c.Leg + "-" + s.text("site")
		c.Hole = c.Site + s.text("hole")
		if !s.rowBad {
			cores = append(cores, c)
		}
	}
	return cores, s.head(), s.faults, nil
}

func readHoles(r io.Reader) (holes []Hole, head, faults []string, err error) {
	s, err := openSheet("holes", r, "leg", "site", "hole", "hole_order", "holes_at_site", "water_depth_m",
		"penetration_m", "n_cores", "start", "end")
	if err != nil {
		return nil, nil, nil, err
	}
	for s.next() {
		h := Hole{Leg: s.text("leg"), Order: int(s.number("hole_order")), Holes: int(s.number("holes_at_site")),
			Water: s.known("water_depth_m"), Penetration: s.known("penetration_m"), Cores: s.known("n_cores"),
			Start: s.moment("start"), End: s.moment("end"), Record: s.record}
		h.Site = h.Leg + "-" + s.text("site")
		h.Name = h.Site + s.text("hole")
		if !s.rowBad && !notCoring[h.Leg] {
			holes = append(holes, h)
		}
	}
	return holes, s.head(), s.faults, nil
}
