package scenario

import (
	"fmt"
	"slices"

	"coredays/model/plan"
	"coredays/model/unit"
)

// listedStrings are the names of the ship's tool strings.
func (r siteReader) listedStrings() (list []string) {
	for _, s := range r.ship.Strings {
		list = append(list, s.Name)
	}
	return list
}

// logging reads which tool strings are run, in order.
func (r siteReader) logging(path string, given []text) (all []int) {
	known := r.listedStrings()
	for i, t := range given {
		s := slices.Index(known, t.value)
		switch {
		case s < 0:
			wanted, _ := suggest(t.value, known, "tool string")
			r.fault(at(path, i), t.value, wanted)
		case slices.Contains(all, s):
			r.fault(at(path, i), t.value, "each tool string once")
		default:
			all = append(all, s)
		}
	}
	return all
}

// cores reads the numbers of cores.
func (r siteReader) cores(path string, given []text) (all []int) {
	if len(given) == 0 {
		r.fault(path, "", `the numbers of the cores, such as "[4, 7, 10]"`)
	}
	for i, t := range few(r.reader, path, given, mostStops) {
		n := int(r.number(at(path, i), t, countMeasure))
		if len(all) > 0 && n > 0 && n <= all[len(all)-1] {
			r.fault(at(path, i), t.value, fmt.Sprintf("a number above %d", all[len(all)-1]))
		}
		all = append(all, n)
	}
	return all
}

// shortCore is the least that cores of a hole advance on average, m: half-length corers stroke 4.7 m, and
// some strokes are incomplete [judgement].
const shortCore = 3

// reached refuses numbers of cores that a hole does not come to.
func (r siteReader) reached(path string, given []text, h *plan.Hole) {
	length := bottomOf(h) - h.DrillAheadTo
	most := int(float64(length)/shortCore) + 1
	for i, n := range h.Temperature {
		if length > 0 && n > most {
			r.fault(at(path, i), given[i].value, fmt.Sprintf("a core that the hole comes to: at %d m a core there are %d down to %s", shortCore, most, exactly(bottomOf(h))))
		}
	}
}

// measurements reads what is measured in a hole beside logging.
func (r siteReader) measurements(path string, f itemFile, h *plan.Hole) {
	piston := pistonCored(h)
	if h.Oriented && !piston {
		r.fault(join(path, "oriented"), f.Oriented.value, "a stage with a piston corer: only its cores are oriented")
	}
	if f.Temperature != nil {
		inner := join(path, "temperature")
		if f.Temperature.Tool.given {
			r.choice(join(inner, "tool"), f.Temperature.Tool, "shoe")
		}
		if !piston {
			r.fault(inner, "", "a stage with a piston corer, which carries the temperature shoe")
		}
		h.Temperature = r.cores(join(inner, "on_cores"), f.Temperature.OnCores)
		r.reached(join(inner, "on_cores"), f.Temperature.OnCores, h)
	}
	if f.Penetrometer != nil {
		r.penetrometer(join(path, "penetrometer.at"), f.Penetrometer.At, h)
	}
}

// penetrometer reads the depths of penetrometer runs.
func (r siteReader) penetrometer(path string, given []text, h *plan.Hole) {
	if len(given) == 0 {
		r.fault(path, "", `depths, such as "[40 mbsf, 80 mbsf]"`)
	}
	last := unit.Depth(0)
	for i, t := range few(r.reader, path, given, mostStops) {
		depth := unit.Depth(r.number(at(path, i), t, depthMeasure))
		switch {
		case depth > bottomOf(h):
			r.fault(at(path, i), t.value, "no deeper than the hole, "+exactly(bottomOf(h)))
		case depth > 0 && depth <= last:
			r.fault(at(path, i), t.value, "deeper than the run before, "+exactly(last))
		}
		last = max(last, depth)
		h.Penetrometer = append(h.Penetrometer, depth)
	}
}
