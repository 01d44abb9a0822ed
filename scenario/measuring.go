package scenario

import (
	"fmt"

	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/scenario/document"
	"coredays/scenario/entry"
)

// cores reads the numbers of cores.
func (r siteReader) cores(path string, given []document.Text) (all []int) {
	if len(given) == 0 {
		r.Fault(path, "", `the numbers of the cores, such as "[4, 7, 10]"`)
	}
	for i, t := range entry.Few(r.Reader, path, given, entry.MostStops) {
		n := int(r.Number(document.At(path, i), t, entry.CountMeasure))
		if len(all) > 0 && n > 0 && n <= all[len(all)-1] {
			r.Fault(document.At(path, i), t.Value, fmt.Sprintf("a number above %d", all[len(all)-1]))
		}
		all = append(all, n)
	}
	return all
}

// shortCore is the least that cores of a hole advance on average, m: half-length corers stroke 4.7 m, and
// some strokes are incomplete [judgement].
const shortCore = 3

// reached refuses numbers of cores that a hole does not come to.
func (r siteReader) reached(path string, given []document.Text, h *plan.Hole) {
	length := bottomOf(h) - h.DrillAheadTo
	most := int(float64(length)/shortCore) + 1
	for i, n := range h.Temperature {
		if length > 0 && n > most {
			r.Fault(document.At(path, i), given[i].Value, fmt.Sprintf("a core that the hole comes to: at %d m a core there are %d down to %s", shortCore, most, exactly(bottomOf(h))))
		}
	}
}

// measurements reads what is measured in a hole beside logging.
func (r siteReader) measurements(path string, f itemFile, h *plan.Hole) {
	piston := pistonCored(h)
	if h.Oriented && !piston {
		r.Fault(document.Join(path, "oriented"), f.Oriented.Value, "a stage with a piston corer: only its cores are oriented")
	}
	if f.Temperature != nil {
		inner := document.Join(path, "temperature")
		if f.Temperature.Tool.Given {
			r.Choice(document.Join(inner, "tool"), f.Temperature.Tool, "shoe")
		}
		if !piston {
			r.Fault(inner, "", "a stage with a piston corer, which carries the temperature shoe")
		}
		h.Temperature = r.cores(document.Join(inner, "on_cores"), f.Temperature.OnCores)
		r.reached(document.Join(inner, "on_cores"), f.Temperature.OnCores, h)
	}
	if f.Penetrometer != nil {
		r.penetrometer(document.Join(path, "penetrometer.at"), f.Penetrometer.At, h)
	}
}

// penetrometer reads the depths of penetrometer runs.
func (r siteReader) penetrometer(path string, given []document.Text, h *plan.Hole) {
	if len(given) == 0 {
		r.Fault(path, "", `depths, such as "[40 mbsf, 80 mbsf]"`)
	}
	last := unit.Depth(0)
	for i, t := range entry.Few(r.Reader, path, given, entry.MostStops) {
		depth := unit.Depth(r.Number(document.At(path, i), t, entry.DepthMeasure))
		switch {
		case depth > bottomOf(h):
			r.Fault(document.At(path, i), t.Value, "no deeper than the hole, "+exactly(bottomOf(h)))
		case depth > 0 && depth <= last:
			r.Fault(document.At(path, i), t.Value, "deeper than the run before, "+exactly(last))
		}
		last = max(last, depth)
		h.Penetrometer = append(h.Penetrometer, depth)
	}
}
