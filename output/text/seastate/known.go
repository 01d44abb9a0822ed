package seastate

import (
	"fmt"
	"time"

	"coredays/model/places"
	"coredays/model/sea"
	"coredays/output/text"
	"coredays/output/words"
)

// known prints cyclones and ice of a place by month.
func (p *printer) known(s *sea.Study) error {
	if s.Known == nil {
		return nil
	}
	if quiet(s.Known) {
		p.Heading("Cyclones and ice")
		p.Say("None on record in any month, in cells of %g and %g degrees: %s; ice: %s. The long swell that a distant storm leaves is not in it.",
			places.CycloneGrid.Degrees, places.IceGrid.Degrees, places.CycloneSource, places.IceSource)
		return nil
	}
	p.Heading("Cyclones and ice by month")
	columns := []text.Column{text.WordColumn("month", 8), text.NumberColumn("storms of\ngale force"), text.NumberColumn("days with\none (%)"), text.NumberColumn("each closes\nfor (h)"), text.WordColumn("sea ice", 30), text.NumberColumn("closed\n(%)")}
	var rows [][]string
	for m := time.January; m <= time.December; m++ {
		c := s.Known.Cyclones[m-1]
		lasts := ""
		if c.Storms > 0 {
			lasts = hoursCell(c.Lasts().Hours())
		}
		rows = append(rows, []string{monthName(int(m)), words.Fixed(c.Storms, 2), percentCell(c.Days), lasts, iceWords[s.Known.Ice[m-1]], percentCell(s.Known.Closed(m))})
	}
	if err := p.Table(columns, rows); err != nil {
		return err
	}
	p.Say("%s", fmt.Sprintf("Storms whose centre comes within %.0f km; each closes the site from %.0f h before until %.0f h after, for the flight from it (judgement). "+
		"Closed: what places: built in draws, in the mean, beside the waves. Not in it: the long swell that a distant storm leaves. Sources: %s; ice: %s.",
		float64(places.CycloneReach/1000), places.Before.Hours(), places.After.Hours(), places.CycloneSource, places.IceSource))
	return nil
}

// quiet says that no month has a cyclone or ice.
func quiet(y *places.Year) bool {
	for m := range y.Ice {
		if y.Cyclones[m].Storms > 0 || y.Ice[m] != places.NoIce {
			return false
		}
	}
	return true
}

var iceWords = [...]string{"none", "at the edge or in some years", "as a rule"}
