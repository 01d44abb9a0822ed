package heave

import (
	"fmt"
	"math"
	"sort"

	"coredays/model/unit"
)

const (
	// PeriodFactor is the default peak period over the root of the significant height, in s/sqrt(m).
	// 5.0 is a fully developed wind sea (Pierson-Moskowitz [from memory]) and understates the heave
	// in swell. NDBC buoys 44007, 41009 and 42001 have medians near 5.9 at 1.5-2 m, 5.1 at 3-4 m and
	// 4.8 at 5-6 m (1.4 times their mean period); a swell shelf has 8.6 at 1.5-2 m, 6.5 at 5-6 m and
	// 5.7 for one sea in ten. A drillship works in the open ocean, where limits bind at 3-6 m and
	// both mix: 6 lies between [judgement]. Give your own where swell rules.
	PeriodFactor = 6.0

	// Heading is the default angle of the waves off the bow in radians, 30 degrees: the ship heads
	// into the sea, but wind, current and swell seldom agree [judgement].
	Heading = math.Pi / 6
)

const (
	responseStep  = 0.1 // m of significant height
	responseSteps = 200
)

// Response is a hull's heave against the significant wave height alone, made once and read
// often. Heave is the significant double amplitude.
type Response struct {
	heave [responseSteps + 1]float64 // m, from height 0 in steps of responseStep
}

// NewResponse compiles the heave of a hull in seas whose peak period is factor times the root of
// the significant height (s/sqrt(m)), met at a heading in radians off the bow.
func NewResponse(h Hull, factor, heading float64) (*Response, error) {
	if err := h.Check(); err != nil {
		return nil, err
	}
	if !(factor > 0) || math.IsInf(factor, 0) || math.IsNaN(heading) || math.IsInf(heading, 0) {
		return nil, fmt.Errorf("period factor %g s/sqrt(m) above 0 and a heading are wanted, heading is %g", factor, heading)
	}
	r := new(Response)
	for i := 1; i <= responseSteps; i++ {
		hs := float64(i) * responseStep
		peak := unit.Duration(factor * math.Sqrt(hs))
		r.heave[i] = max(r.heave[i-1], float64(h.Heave(unit.Length(hs), peak, heading))) // a higher sea never heaves less
	}
	return r, nil
}

// Heave is the significant double amplitude of heave in a sea of significant height hs. Above
// 20 m it stays in the proportion of 20 m.
func (r *Response) Heave(hs unit.Length) unit.Length {
	x := float64(hs) / responseStep
	switch {
	case !(x > 0):
		return 0
	case x >= responseSteps:
		return hs * unit.Length(r.heave[responseSteps]/(responseSteps*responseStep))
	}
	i := int(x)
	return unit.Length(r.heave[i] + (x-float64(i))*(r.heave[i+1]-r.heave[i]))
}

// HeightFor is the significant wave height at which the heave reaches a limit: the inverse of
// Heave.
func (r *Response) HeightFor(heave unit.Length) unit.Length {
	limit := float64(heave)
	if !(limit > 0) {
		return 0
	}
	i := sort.SearchFloat64s(r.heave[:], limit)
	if i > responseSteps {
		return heave * unit.Length(responseSteps*responseStep/r.heave[responseSteps])
	}
	low, high := r.heave[i-1], r.heave[i] // low < limit <= high, as heave[0] is 0
	return unit.Length((float64(i-1) + (limit-low)/(high-low)) * responseStep)
}
