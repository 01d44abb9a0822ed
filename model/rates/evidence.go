package rates

import (
	"coredays/model/learn"
	"coredays/model/rig"
	"coredays/model/riglog"
	"coredays/model/spread"
)

// Observed is one observation of a rate, at a hole of a site.
type Observed struct {
	Of         rig.Rate
	Site, Hole string
	learn.Observation
}

// mostBounds is how many of the observations that are only bounds are taken of each rate, the last ones: each costs
// time, and says little beside values.
const mostBounds = 12

// Observe gives what the papers of a rig tell of her rates, observation by observation, for those who condition a
// plan's own spreads on it. Figures without a spread learn nothing and are left out.
func Observe(ship [rig.Rates]spread.Quantity, p *riglog.Papers, water map[string]float64) (list []Observed) {
	g := &gatherer{ship: ship, off: rounding(p.Lines), used: map[*riglog.Line]bool{}}
	g.read(worksOf(p.Lines), func(w *work) (bool, bool) { return rotary(w, p) })
	cycles, _ := cyclesOf(watered(p.Cores, water), p.Lines)
	g.paces(cycles)
	for of := range rig.Rates {
		if g.ship[of].IsFixed() {
			continue
		}
		bounds := 0
		samples := g.steadied(of, g.samples[of])
		for i := len(samples) - 1; i >= 0; i-- {
			x := &samples[i]
			if x.bound != learn.Exactly {
				if bounds++; bounds > mostBounds {
					continue
				}
			}
			site := x.site
			if len(p.Cores) > 0 && paced[of] || of == rig.Bench {
				site = afterLeg(site)
			}
			list = append(list, Observed{of, site, x.hole, learn.Observation{Run: x.run, Value: x.value, Bound: x.bound, Error: x.err}})
		}
	}
	return list
}

// afterLeg is the site's own name in "leg/site".
func afterLeg(name string) string {
	for i := len(name) - 1; i >= 0; i-- {
		if name[i] == '/' {
			return name[i+1:]
		}
	}
	return name
}
