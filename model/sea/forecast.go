package sea

import (
	"fmt"
	"math"

	"coredays/model/unit"
)

// Forecast is how well the crew is given what the sea will be. What they are given is a noisy
// channel of the truth on the scale of the score, so that it is right on average about how often
// the sea is high, and wrong about when.
type Forecast struct {
	Horizon unit.Duration // a lead time for which the skill is known
	Skill   float64       // correlation of stated and true score at the horizon, 0 to 1
}

// FiveDays is the default forecast: correlation 0.8 of score at 5 days, which gives 0.99 at one
// day, 0.92 at three, 0.65 at seven and 0.03 at twenty [from memory, after verifications of
// centres' wave forecasts against buoys; no table was at hand].
func FiveDays() Forecast { return Forecast{Horizon: 5 * unit.Day, Skill: 0.8} }

// Check says what keeps a forecast from being used.
func (f Forecast) Check() error {
	if !(f.Horizon > 0) {
		return fmt.Errorf("forecast horizon of %g h, wanted above 0", f.Horizon.Hours())
	}
	if !(f.Skill >= 0 && f.Skill <= 1) {
		return fmt.Errorf("forecast skill of %g, wanted 0 to 1", f.Skill)
	}
	return nil
}

// Correlation is that of stated and true score at a lead time: 1 at no lead, Skill at the horizon,
// and Skill^((lead/horizon)^2) between and beyond [our form: flat at first, as errors of an
// analysis are small, and gone well beyond the horizon].
func (f Forecast) Correlation(lead unit.Duration) float64 {
	if lead <= 0 {
		return 1
	}
	x := float64(lead / f.Horizon)
	return math.Pow(f.Skill, x*x)
}

// Issued is the score that the crew is given for a time so far ahead, given the true score then and
// the noise, a standard normal independent of the truth. It is standard normal itself: with
// perfect skill the truth, without skill a draw from the climate. To make a whole forecast read
// as smoothly as the sea does, use one noise for all its leads, and another for the next issue.
// The best estimate of the truth is Correlation times what is given.
func (f Forecast) Issued(truth, noise float64, lead unit.Duration) float64 {
	return Issued(truth, noise, f.Correlation(lead))
}

// Issued is the score that the crew is given where stated and true scores have a correlation; see
// Forecast.Issued.
func Issued(truth, noise, correlation float64) float64 {
	return correlation*truth + math.Sqrt(1-correlation*correlation)*noise
}
