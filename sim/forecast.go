package sim

import (
	"coredays/model/chance"
	"coredays/model/sea"
)

// lookAhead is how far ahead a forecast is used, s: three days.
const lookAhead = 72 * 3600

const (
	issueEvery    = 12 * 3600 // s between forecasts: twice a day [common practice]
	forecastEvery = 3 * 3600  // s between the times that a forecast gives
	forecastTimes = (lookAhead+issueEvery)/forecastEvery + 1
)

// forecast is what the crew was forecast last: the best estimate of the sea here at times to come.
// They have no better knowledge of the future than this.
type forecast struct {
	issue  int // number of the issue, counted from sailing; -1 before the first
	at     int // place for which it was read
	height [forecastTimes]float64
	skill  skill
}

// skill is the correlation of stated and true for each lead that a forecast gives.
type skill struct {
	of   sea.Forecast
	lead [forecastTimes]float64
}

// skills works the correlations out once for a channel of forecasts.
func (f *forecast) skills(channel sea.Forecast) *skill {
	if f.skill.of != channel {
		f.skill.of = channel
		for i := range f.skill.lead {
			f.skill.lead[i] = channel.Correlation(seconds(float64(i * forecastEvery)))
		}
	}
	return &f.skill
}

// theForecast is the purpose of the errors of forecasts.
var theForecast = chance.KeyOf("forecast")

// issuedForecast reads the latest forecast for the place where the ship is.
func (s *ship) issuedForecast() *forecast {
	f := &s.forecast
	issue := int(s.clock / issueEvery)
	if f.issue == issue && f.at == int(s.at) && !s.sea.calm {
		return f
	}
	f.issue, f.at = issue, int(s.at)
	noise := s.Stream.For(theForecast).Normal(issue + s.sea.ahead*int(seaStep)/issueEvery) // one error for all that an issue says
	skill := f.skills(s.v.Forecast)
	for i := range f.height {
		step := int(float64(issue*issueEvery+i*forecastEvery) / seaStep)
		r := skill.lead[i]
		issued := sea.Issued(s.sea.score(step), noise, r)
		f.height[i] = s.sea.at(step, r*issued)
	}
	return f
}

// until is the index of the first stated time after a moment.
func (f *forecast) until(clock float64) int {
	return max(0, int((clock-float64(f.issue*issueEvery))/forecastEvery)+1)
}

// forecastWait is how long the forecast says that the sea will stay above a height, s, as far as the
// crew looks ahead.
func (s *ship) forecastWait(most float64) float64 {
	f := s.issuedForecast()
	for i := f.until(s.clock); i < forecastTimes; i++ {
		if f.height[i] <= most {
			return float64(f.issue*issueEvery+i*forecastEvery) - s.clock
		}
	}
	return lookAhead
}

// forecastMaximum is the highest sea that the forecast has for so many seconds from now on, m.
func (s *ship) forecastMaximum(during float64) float64 {
	f := s.issuedForecast()
	most, first := s.sea.height, f.until(s.clock)
	for i := first; i < forecastTimes && float64(i-first)*forecastEvery <= during; i++ {
		most = max(most, f.height[i])
	}
	return most
}

// forecastAbove is the time to come for which the forecast has a sea above a height, s.
func (s *ship) forecastAbove(most float64) (above float64) {
	f := s.issuedForecast()
	for i := f.until(s.clock); i < forecastTimes; i++ {
		if f.height[i] > most {
			above += forecastEvery
		}
	}
	return above
}
