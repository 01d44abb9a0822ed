package state

import (
	"time"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/unit"
)

// Cased is how far the casing of a hole is.
type Cased struct {
	Strings  int  // that stand
	Plug     bool // cement and shoe are to be drilled out
	Cemented time.Time
}

// casing is the string in hand, nil where the plan has none left.
func (r *reader) casing() *plan.Casing {
	s := &r.st.Now
	if s.Item == None || r.item(s.Item).Hole == nil {
		return nil
	}
	if all := r.item(s.Item).Hole.Casing; s.Hole.Cased.Strings < len(all) {
		return &all[s.Hole.Cased.Strings]
	}
	return nil
}

// didCasing changes the ship by what was done about casing.
func (r *reader) didCasing(k activity.Kind, to time.Time, next activity.Kind) {
	s := &r.st.Now
	floor := unit.Length(r.plan.Sites[s.Site].WaterDepth)
	string := r.casing()
	switch k {
	case activity.MakeUpCasing:
		if string != nil && next != activity.MakeUpCasing {
			s.TryOut = s.TryOut || !s.TriedOut
			s.Assembly, s.Rotated, s.TriedOut = coring.CasingString, 0, true
			s.Bit = unit.Length(string.To)
		}
	case activity.LandCasing:
		if string == nil {
			return
		}
		s.Hole.Open, s.Hole.Funnel, s.Hole.Opened = true, true, to
		s.Hole.Depth = max(s.Hole.Depth, string.To)
		x := &r.st.Items[s.Item]
		x.Depth = max(x.Depth, s.Hole.Depth)
		if string.By != plan.InADrilledHole {
			x.Spudded++
			r.st.Sites[x.Site].FloorKnown = true
		}
		if next == activity.CementCasing {
			return // it stands once that is done
		}
		r.stands(floor, string.Cemented, to)
	case activity.CementCasing:
		r.stands(floor, true, to)
	case activity.DrillShoe:
		s.Hole.Cased.Plug = false
	}
}

// stands: a string was let go of.
func (r *reader) stands(floor unit.Length, plug bool, to time.Time) {
	s := &r.st.Now
	s.Hole.Cased = Cased{Strings: s.Hole.Cased.Strings + 1, Plug: plug, Cemented: to}
	s.Assembly, s.Bit = coring.RunningTool, floor
}
