package voyage

import (
	"math"
	"strings"

	"coredays/model/activity"
	"coredays/model/places"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/sea"
	"coredays/model/sea/heave"
	"coredays/model/unit"
)

// waves compiles the sea at a site: the heights by day of the year and how they go on in time.
// Sites with the same record share its course, as sites with a climate share theirs.
func (c *compiler) waves(s *plan.Site) (*sea.Table, int, error) {
	if s.Likeness == nil {
		table, err := sea.NewTable(s.Climate)
		return table, 0, err
	}
	course, found := c.courses[s.Likeness]
	if !found {
		course = len(c.v.Courses)
		c.v.Courses = append(c.v.Courses, s.Likeness.Course)
		if c.courses == nil {
			c.courses = map[*sea.Likeness]int{}
		}
		c.courses[s.Likeness] = course
	}
	return s.Likeness.Table, course, nil
}

// periodFactor is the peak period over the root of the height at a site: of its record, where that
// says periods, for a swell heaves the ship more than a wind sea of the same height.
func periodFactor(s *plan.Site) float64 {
	if s.Likeness != nil && s.Likeness.Record.PeriodFactor > 0 {
		return s.Likeness.Record.PeriodFactor
	}
	return heave.PeriodFactor
}

// Sea asks for the sea at a site, with the limits of the work there. Years and seed are left to
// the caller.
func (v *Voyage) Sea(site int) sea.Question {
	s := &v.Sites[site]
	q := sea.Question{Place: s.Name, Source: s.Climate.Source, Notes: s.Climate.Cautions, Course: v.Courses[s.Course], Table: s.Waves, Likeness: s.Likeness}
	if s.Likeness != nil {
		q.Notes = s.Likeness.Notes
	}
	q.Limits, q.Coring = s.Most.named()
	if s.Places != plan.PlacesOff {
		q.Known = places.YearAt(s.Position)
	}
	return q
}

// named lists the limits that there are, and which of them stops coring first; -1 for none.
func (l *Limits) named() (list []sea.Limit, coring int) {
	coring = -1
	for class := activity.AnySea + 1; class < activity.FreeTask; class++ {
		if most := l[class]; !math.IsInf(most, 1) {
			if (class == activity.PistonCoring || class == activity.RotaryCoring) && (coring < 0 || most < float64(list[coring].Most)) {
				coring = len(list)
			}
			list = append(list, sea.Limit{Name: strings.ReplaceAll(class.Key(), "_", " "), Most: unit.Length(most)})
		}
	}
	return list, coring
}

// InWaves is the share of her calm speed that a ship makes in waves of a significant height, m.
func (v *Voyage) InWaves(height float64) float64 {
	above := max(0, height-v.Quantities[rig.SlowdownFrom].Median)
	return max(slowest, 1-v.Quantities[rig.SlowdownPerMetre].Median*above)
}

// slowest is the least share of her speed at which a ship still makes way in a high sea: gales
// of the handbook's passages left 2 to 4 of 11 knots.
const slowest = 0.25
