package voyage

import (
	"reflect"

	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/sea/heave"
	"coredays/model/spread"
)

// shared is what is worked out once for all plans of one ship: the response of her hull to waves, which
// takes longer than all the rest, and the tables of quantities.
type shared struct {
	hull       heave.Hull
	heading    float64
	response   map[float64]*heave.Response // by period factor
	quantities map[shapeKey]spread.Drawn
}

// shapeKey says quantities apart whose shapes can be compared.
type shapeKey struct {
	shape               spread.Shape
	shares              spread.Shares
	persistence, common float64
}

func newShared(ship *rig.Ship) *shared {
	return &shared{ship.Hull, ship.Heading, map[float64]*heave.Response{}, map[shapeKey]spread.Drawn{}}
}

// compiled tabulates a quantity, once.
func (s *shared) compiled(q spread.Quantity) spread.Drawn {
	if !reflect.ValueOf(q.Shape).Comparable() {
		return q.Compile()
	}
	key := shapeKey{q.Shape, q.Shares, q.Persistence, q.Common}
	d, known := s.quantities[key]
	if !known {
		d = q.Compile()
		s.quantities[key] = d
	}
	return d
}

// CompileAll works out plans, those of one ship faster than one by one. The errors are by plan; where
// there is one, the voyage is nil.
func CompileAll(plans []*plan.Plan) ([]*Voyage, []error) {
	voyages, errs := make([]*Voyage, len(plans)), make([]error, len(plans))
	var known *shared
	for i, p := range plans {
		if known == nil || known.hull != p.Ship.Hull || known.heading != p.Ship.Heading {
			known = newShared(&p.Ship)
		}
		v, err := compile(p, known)
		if err == nil {
			voyages[i] = v
		}
		errs[i] = err
	}
	return voyages, errs
}
