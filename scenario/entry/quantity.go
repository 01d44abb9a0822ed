package entry

import (
	"coredays/model/spread"
	"coredays/model/unit"
	"coredays/scenario/document"
)

// Quantity reads a quantity with its spread. What the file does not say of levels, persistence
// and common factor stays as in base.
func (c *Reader) Quantity(path string, s *document.Spread, m Measure, base spread.Quantity) spread.Quantity {
	if s == nil {
		c.Fault(path, "", m.Wanted()+", or a spread")
		return base
	}
	q := base
	if base.Shares == (spread.Shares{}) {
		q.Shares = spread.All(spread.Run)
	}
	q.Shape, q.Text = c.shape(path, s, m)
	q.Source = c.Words(document.Join(path, "source"), s.Source, c.Source(path))
	c.levels(path, s, &q)
	if m.single && q.Shape != nil && !q.IsFixed() {
		c.Fault(path, "", "one value without spread")
	}
	return q
}

// levels reads at which levels a spread lives.
func (c *Reader) levels(path string, s *document.Spread, q *spread.Quantity) {
	if s.Varies != nil {
		q.Shares = c.shares(document.Join(path, "varies"), *s.Varies)
		q.Persistence = 0
	}
	if s.Persistence.Given {
		q.Persistence = c.Number(document.Join(path, "persistence"), s.Persistence, persistMeasure)
	}
	if s.Common.Given {
		q.Common = c.Number(document.Join(path, "common"), s.Common, commonMeasure)
	}
}

// shares reads a level or the shares of several.
func (c *Reader) shares(path string, v document.Levels) spread.Shares {
	if v.Level.Given {
		level, err := spread.ParseLevel(v.Level.Value)
		if err != nil {
			c.Fault(path, v.Level.Value, "expedition, site, hole or run, or shares of these such as {expedition: 0.3, hole: 0.7}")
		}
		return spread.All(level)
	}
	var shares spread.Shares
	sum, read := 0.0, true
	for level, t := range [spread.Levels]document.Text{v.Expedition, v.Site, v.Hole, v.Run} {
		inner := document.Join(path, spread.Level(level).String())
		before := len(c.Faults)
		shares[level] = c.Maybe(inner, t, ShareMeasure)
		sum, read = sum+shares[level], read && len(c.Faults) == before
	}
	if off := sum - 1; read && (off < -1e-6 || off > 1e-6) {
		c.Fault(path, unit.OfShare.TellApart(sum, 1, "%"), "shares that add up to 100 %")
	}
	return shares
}

// Sourced asks a quantity of a ship or lithology for its source, and a spread for its level.
func (c *Reader) Sourced(path string, s *document.Spread) {
	if s == nil {
		return
	}
	if !s.Source.Given {
		c.Fault(document.Join(path, "source"), "", "where the value comes from")
	}
	if s.Varies == nil && !s.Value.Given {
		c.Fault(document.Join(path, "varies"), "", "the level at which the spread lives: expedition, site, hole or run, or shares")
	}
}
