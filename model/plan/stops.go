package plan

import (
	"coredays/model/geo"
	"coredays/model/spread"
	"coredays/model/unit"
)

// Call is a call on the way to a site: in port, or of a boat. The zero value is none.
type Call struct {
	Name     string
	Position *geo.Position // nil where a boat comes to the ship
	Takes    spread.Quantity
}

// EndsEarly is a rule that ends a hole before its target, such as gas above what is allowed. What calls for it lies in the ground:
// all holes of a site meet it at the same depth or not at all.
type EndsEarly struct {
	Because string
	Chance  float64 // that it is met above the target of the hole
	From    unit.Depth
	Waits   unit.Duration // for results, before the hole is left
	Plugged bool          // with cement, whatever is planned
}

// Closings are all that close a site.
func (s *Site) Closings() []Unusable {
	if !s.Unusable.Every.Given() {
		return s.More
	}
	return append([]Unusable{s.Unusable}, s.More...)
}

// Way is where the ship passes on her way to a site: a call in port, then the waypoints.
func (s *Site) Way() []geo.Position {
	if s.Call.Position == nil {
		return s.Via
	}
	return append([]geo.Position{*s.Call.Position}, s.Via...)
}
