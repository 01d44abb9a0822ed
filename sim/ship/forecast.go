package ship

import (
	"coredays/model/chance"
	"coredays/model/sea"
)

// lookAhead is how far ahead a forecast is used, s: three days.
const lookAhead = 72 * 3600

const (
	IssueEvery    = 12 * 3600 // s between forecasts: twice a day [common practice]
	ForecastEvery = 3 * 3600  // s between the times that a forecast gives
	ForecastTimes = (lookAhead+IssueEvery)/ForecastEvery + 1
)

// forecast is what the crew was forecast last: the best estimate of the sea here at times to come.
// They have no better knowledge of the future than this.
type forecast struct {
	issue  int // number of the issue, counted from sailing; -1 before the first
	at     int // place for which it was read
	Height [ForecastTimes]float64
	skill  skill
}

// skill is the correlation of stated and true for each lead that a forecast gives.
type skill struct {
	of   sea.Forecast
	lead [ForecastTimes]float64
}

// skills works the correlations out once for a channel of forecasts.
func (f *forecast) skills(channel sea.Forecast) *skill {
	if f.skill.of != channel {
		f.skill.of = channel
		for i := range f.skill.lead {
			f.skill.lead[i] = channel.Correlation(seconds(float64(i * ForecastEvery)))
		}
	}
	return &f.skill
}

// theForecast is the purpose of the errors of forecasts.
var theForecast = chance.KeyOf("forecast")

// IssuedForecast reads the latest forecast for the place where the ship is.
func (s *Ship) IssuedForecast() *forecast {
	f := &s.Forecast
	issue := int(s.Clock / IssueEvery)
	if f.issue == issue && f.at == int(s.At) && !s.Sea.Calm {
		return f
	}
	f.issue, f.at = issue, int(s.At)
	noise := s.Stream.For(theForecast).Normal(issue + s.Sea.Ahead*int(SeaStep)/IssueEvery) // one error for all that an issue says
	skill := f.skills(s.Voyage.Forecast)
	for i := range f.Height {
		step := int(float64(issue*IssueEvery+i*ForecastEvery) / SeaStep)
		r := skill.lead[i]
		issued := sea.Issued(s.Sea.Score(step), noise, r)
		f.Height[i] = s.Sea.At(step, r*issued)
	}
	return f
}

// until is the index of the first stated time after a moment.
func (f *forecast) until(clock float64) int {
	return max(0, int((clock-float64(f.issue*IssueEvery))/ForecastEvery)+1)
}

// ForecastWait is how long the forecast says that the sea will stay above a height, s, as far as the
// crew looks ahead.
func (s *Ship) ForecastWait(most float64) float64 {
	f := s.IssuedForecast()
	for i := f.until(s.Clock); i < ForecastTimes; i++ {
		if f.Height[i] <= most {
			return float64(f.issue*IssueEvery+i*ForecastEvery) - s.Clock
		}
	}
	return lookAhead
}

// ForecastMaximum is the highest sea that the forecast has for so many seconds from now on, m.
func (s *Ship) ForecastMaximum(during float64) float64 {
	f := s.IssuedForecast()
	most, first := s.Sea.Height, f.until(s.Clock)
	for i := first; i < ForecastTimes && float64(i-first)*ForecastEvery <= during; i++ {
		most = max(most, f.Height[i])
	}
	return most
}

// ForecastAbove is the time to come for which the forecast has a sea above a height, s.
func (s *Ship) ForecastAbove(most float64) (above float64) {
	f := s.IssuedForecast()
	for i := f.until(s.Clock); i < ForecastTimes; i++ {
		if f.Height[i] > most {
			above += ForecastEvery
		}
	}
	return above
}
