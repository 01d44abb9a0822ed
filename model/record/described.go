package record

import (
	"cmp"
	"slices"

	"coredays/model/unit"
)

// Described is an interval of one class of lithology, as it was described in the cores of a hole.
type Described struct {
	Top, Bottom unit.Depth
	Class       string
}

// groundStep is how finely a planner is told the ground, m: of 25 and 50 m, both tried on all legs, the one that told more.
const groundStep unit.Depth = 50

// longestGap is the longest stretch without a description that is taken to be as what lies above it, in steps. Cores that
// recovered little leave such gaps [judgement].
const longestGap = 3

// Ground is what was described in the holes of a site from the sea floor down, step by step the class that most metres were
// described as, joined where it goes on. Stretches that nobody described have an empty class. It is nil for a site of which
// nothing is described.
func (s *Site) Ground() (layers []Described) {
	steps := make([]map[string]unit.Depth, int(s.Deepest()/groundStep)+1)
	for _, h := range s.Holes {
		for _, d := range h.Described {
			for i := max(0, int(d.Top/groundStep)); i < len(steps) && unit.Depth(i)*groundStep < d.Bottom; i++ {
				if steps[i] == nil {
					steps[i] = map[string]unit.Depth{}
				}
				steps[i][d.Class] += min(d.Bottom, unit.Depth(i+1)*groundStep) - max(d.Top, unit.Depth(i)*groundStep)
			}
		}
	}
	class, since, known := "", 0, false
	for i, metres := range steps {
		switch since++; {
		case len(metres) > 0:
			class, since, known = most(metres), 0, true
		case since > longestGap:
			class = ""
		}
		if n := len(layers); n == 0 || layers[n-1].Class != class {
			layers = append(layers, Described{Top: unit.Depth(i) * groundStep, Class: class})
		}
		layers[len(layers)-1].Bottom = unit.Depth(i+1) * groundStep
	}
	if !known {
		return nil
	}
	return layers
}

// most is the class with most metres, of equal ones the first by name.
func most(metres map[string]unit.Depth) string {
	classes := make([]string, 0, len(metres))
	for class := range metres {
		classes = append(classes, class)
	}
	return slices.MinFunc(classes, func(a, b string) int {
		return cmp.Or(cmp.Compare(metres[b], metres[a]), cmp.Compare(a, b))
	})
}
