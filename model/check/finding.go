package check

import (
	"math"
	"slices"

	"coredays/model/rig"
)

// Verdict is what a finding amounts to.
type Verdict int

// The verdicts, in the order of their weight.
const (
	Pass Verdict = iota
	Caution
	Stop
)

func (v Verdict) String() string { return [...]string{"pass", "caution", "stop"}[v] }

// Finding is one thing that was looked at.
type Finding struct {
	Site, Hole string // empty for what concerns the expedition, or the whole site
	What       string
	Kind       string // What without the particulars of a site or hole; empty where What has none
	Verdict    Verdict
	Value      float64 // in Unit; NaN for none
	Limit      float64 // in Unit; NaN for none
	Least      bool    // the limit is the least that the value may be, rather than the most
	Unit       string  // empty for counts
	Source     string  // of the limit
	// Borne is set where ship and string bear or reach something: a load, a length of pipe.
	Borne bool
	// Chance that it goes well all the same, where that is known: what is unlikely is no reason to stop.
	Chance *float64
	Path   string // of what is at fault in the scenario, such as "sites[0].holes[1].core[0].to"
	Where  string // file and line of it, or the setting; empty where it is not stated
	Cure   string // what could be done about it; empty where that is plain
}

// none is the value of a finding that has no figure.
var none = math.NaN()

// Worst is the gravest verdict.
func Worst(findings []Finding) (worst Verdict) {
	for _, f := range findings {
		worst = max(worst, f.Verdict)
	}
	return worst
}

// Of lists the findings with a verdict.
func Of(findings []Finding, v Verdict) []Finding {
	return slices.DeleteFunc(slices.Clone(findings), func(f Finding) bool { return f.Verdict != v })
}

// atMost judges a value that may not be above a limit.
func atMost(value, limit float64) Verdict {
	if value > limit {
		return Stop
	}
	return Pass
}

// atLeast judges a value that may not be below a limit.
func atLeast(value, limit float64) Verdict {
	if value < limit {
		return Stop
	}
	return Pass
}

// remembered keeps what rests on a figure from memory from stopping a plan.
func remembered(v Verdict, sources ...string) Verdict {
	if slices.ContainsFunc(sources, rig.FromMemory) {
		return min(v, Caution)
	}
	return v
}

// never is a chance below which nobody would count on it: what comes true so seldom is stopped, judgement.
const never = 0.001

// likely judges a chance that something goes well: well from one chance on, stopped where it never does.
func likely(chance, well float64) Verdict {
	switch {
	case chance < never:
		return Stop
	case chance < well:
		return Caution
	}
	return Pass
}

// between judges a value that is well up to one limit and stopped beyond another.
func between(value, well, most float64) Verdict {
	switch {
	case value > most:
		return Stop
	case value > well:
		return Caution
	}
	return Pass
}
