package voyage

import (
	"coredays/model/plan"
	"coredays/model/sea"
)

// hulls keeps what is worked out of a ship's hull for all plans that share the ship.
type hulls struct {
	hull     sea.Hull
	heading  float64
	response map[float64]*sea.Response
}

// CompileAll works out plans, those of one ship faster than one by one: the response of a hull to
// waves takes longer than all the rest. The errors are by plan; where there is one, the voyage is nil.
func CompileAll(plans []*plan.Plan) ([]*Voyage, []error) {
	voyages, errs := make([]*Voyage, len(plans)), make([]error, len(plans))
	var known hulls
	for i, p := range plans {
		if ship := &p.Ship; known.response == nil || known.hull != ship.Hull || known.heading != ship.Heading {
			known = hulls{ship.Hull, ship.Heading, map[float64]*sea.Response{}}
		}
		v, err := compile(p, known.response)
		if err == nil {
			voyages[i] = v
		}
		errs[i] = err
	}
	return voyages, errs
}
