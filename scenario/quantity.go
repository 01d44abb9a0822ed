package scenario

import (
	"coredays/model/spread"
	"coredays/model/unit"
)

// quantity reads a quantity with its spread. What the file does not say of levels, persistence
// and common factor stays as in base.
func (c *reader) quantity(path string, s *spreadFile, m measure, base spread.Quantity) spread.Quantity {
	if s == nil {
		c.fault(path, "", m.wanted()+", or a spread")
		return base
	}
	q := base
	if base.Shares == (spread.Shares{}) {
		q.Shares = spread.All(spread.Run)
	}
	q.Shape, q.Text = c.shape(path, s, m)
	q.Source = c.words(join(path, "source"), s.Source, c.source(path))
	c.levels(path, s, &q)
	if m.single && q.Shape != nil && !q.IsFixed() {
		c.fault(path, "", "one value without spread")
	}
	return q
}

// levels reads at which levels a spread lives.
func (c *reader) levels(path string, s *spreadFile, q *spread.Quantity) {
	if s.Varies != nil {
		q.Shares = c.shares(join(path, "varies"), *s.Varies)
		q.Persistence = 0
	}
	if s.Persistence.given {
		q.Persistence = c.number(join(path, "persistence"), s.Persistence, persistMeasure)
	}
	if s.Common.given {
		q.Common = c.number(join(path, "common"), s.Common, commonMeasure)
	}
}

// shares reads a level or the shares of several.
func (c *reader) shares(path string, v variesFile) spread.Shares {
	if v.level.given {
		level, err := spread.ParseLevel(v.level.value)
		if err != nil {
			c.fault(path, v.level.value, "expedition, site, hole or run, or shares of these such as {expedition: 0.3, hole: 0.7}")
		}
		return spread.All(level)
	}
	var shares spread.Shares
	sum, read := 0.0, true
	for level, t := range [spread.Levels]text{v.Expedition, v.Site, v.Hole, v.Run} {
		inner := join(path, spread.Level(level).String())
		before := len(c.faults)
		shares[level] = c.maybe(inner, t, shareMeasure)
		sum, read = sum+shares[level], read && len(c.faults) == before
	}
	if off := sum - 1; read && (off < -1e-6 || off > 1e-6) {
		c.fault(path, unit.OfShare.TellApart(sum, 1, "%"), "shares that add up to 100 %")
	}
	return shares
}

// sourced asks a quantity of a ship or lithology for its source, and a spread for its level.
func (c *reader) sourced(path string, s *spreadFile) {
	if s == nil {
		return
	}
	if !s.Source.given {
		c.fault(join(path, "source"), "", "where the value comes from")
	}
	if s.Varies == nil && !s.Value.given {
		c.fault(join(path, "varies"), "", "the level at which the spread lives: expedition, site, hole or run, or shares")
	}
}
