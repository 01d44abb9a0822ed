package ship

import (
	"coredays/model/coring"
	"coredays/model/plan"
)

// Cased is how far the casing of the hole in hand is.
type Cased struct {
	Strings int     // that stand
	Shoe    float64 // depth of the deepest shoe, m below sea floor
	Hard    float64 // when its cement bears being drilled out, s after sailing
	Plug    bool    // cement and shoe are to be drilled out
}

// DueCasing is the string that comes next, nil where all stand.
func (s *Ship) DueCasing() *plan.Casing {
	if strings := s.Planned().Casing; s.Hole.Cased.Strings < len(strings) {
		return &strings[s.Hole.Cased.Strings]
	}
	return nil
}

// casingToRun reports whether a string is due and the hole for it is there.
func (s *Ship) casingToRun() bool {
	c := s.DueCasing()
	return c != nil && !s.Hole.Cased.Plug && (c.By != plan.InADrilledHole || s.Hole.Open && s.Hole.Depth >= float64(c.To)-Shortest)
}

// DrilledFor is the depth down to which the hole is drilled without coring: for the next string, and once all stand for the
// first core.
func (s *Ship) DrilledFor() float64 {
	switch c := s.DueCasing(); {
	case c == nil:
		return float64(s.Planned().DrillAheadTo)
	case c.By == plan.InADrilledHole:
		return float64(c.To)
	}
	return 0
}

// CasedIsAll: a hole that is only cased is not gone back to.
func (s *Ship) CasedIsAll() bool {
	return s.Hole.Cased.Strings > 0 && !s.InHole() && s.DueCasing() == nil && !s.WorkLeft()
}

func (s *Ship) CasingWantsOut() bool {
	return s.casingToRun() && s.InHole() && s.BHA != coring.CasingString
}

// CasingHangs reports whether casing hangs below the ship.
func (s *Ship) CasingHangs() bool { return s.BHA == coring.CasingString }
