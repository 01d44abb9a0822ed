package ship

import (
	"slices"

	"coredays/model/activity"
)

// A look-ahead begins in the midst of an operation. The ship is put where she was when that began, and does it again:
// what the log has of it takes the time that it took, whatever is drawn, and what the log has in hand goes on from
// there. So no operation needs a second form that begins half way.

// Past is what the log has of the operation in hand.
type Past struct {
	Steps   []PastStep
	At      int     // the next of them
	Credit  float64 // s since it began, where the log does not say on what they were spent
	ToGo    float64 // m still to sail; below 0 where that is not stated
	Lasts   float64 // s that what is in hand still lasts by the crew's own estimate; 0 where they did not say
	Trouble Trouble // that is in hand beside it
	Short   bool    // what is in hand was drawn shorter than it has lasted by now
	Watched bool    // note what does not agree
	Amiss   bool    // the operation does other things than the log has
}

// PastStep is one thing done. Those before the last are over.
type PastStep struct {
	Kind   activity.Kind
	Worked float64 // s
	Idle   float64 // s of waiting and repairs
}

// Over reports whether all that the log has of the operation has been done again.
func (p *Past) Over() bool { return p.At >= len(p.Steps) && p.Credit <= 0 }

// relives takes an activity for what the log has of it, and says how long it still lasts. What the log does not have
// of the operation, though it has what comes after, did not happen. What it has besides took its time.
func (s *Ship) relives(k activity.Kind, takes float64) (left float64) {
	p := &s.Past
	if p.Credit > 0 {
		part := min(takes, p.Credit)
		p.Credit -= part
		s.spend(k, part)
		if p.Over() {
			s.EndsTrouble()
		}
		s.catchesUp()
		return takes - part
	}
	if seldomWritten(k) && !slices.ContainsFunc(p.Steps[p.At:], func(x PastStep) bool { return x.Kind == k }) {
		return 0
	}
	for i := p.At; i < len(p.Steps); i++ {
		if p.Steps[i].Kind != k {
			p.Amiss = p.Amiss || p.Watched && !byTheWay(p.Steps[i].Kind)
			continue
		}
		worked := p.Steps[i].Worked
		for p.At <= i {
			s.passes()
		}
		if !p.Over() {
			return 0
		}
		begunAgain := p.Trouble.Began && k.Of().Stop.BeginsAgain(p.Trouble.Kind == activity.WaitOnWeather)
		waits := p.Trouble.Began && p.Trouble.Kind == activity.WaitOnWeather
		stopped := s.EndsTrouble()
		if waits {
			s.waitsOn(k)
		}
		switch {
		case p.Lasts > 0 && !stopped:
			return p.Lasts
		case begunAgain:
			return takes
		}
		p.Short = worked > takes
		return max(0, takes-worked)
	}
	p.Amiss = p.Watched
	return 0
}

// byTheWay tells whether an activity may come in the midst of an operation without being part of it.
func byTheWay(k activity.Kind) bool {
	switch k {
	case activity.BenchWait, activity.CatwalkWait, activity.FailedStart, activity.WaterCore, activity.MudlineReset, activity.DrillOver, activity.Sweep:
		return true
	}
	return k.Of().Class == activity.Repair || k.Of().Class == activity.Waiting
}

// seldomWritten tells whether a log leaves an activity to the trip around it.
func seldomWritten(k activity.Kind) bool { return k == activity.WashDown || k == activity.WashBarrel }

// passes lets the time of the next step pass.
func (s *Ship) passes() {
	x := s.Past.Steps[s.Past.At]
	s.Past.At++
	s.spend(x.Kind, x.Worked)
	s.spend(activity.WaitOnWeather, x.Idle)
	s.catchesUp()
}

// catchesUp lets happen what was due meanwhile, once the past is over.
func (s *Ship) catchesUp() {
	for s.Past.Over() && s.Agenda.Next <= s.Clock {
		s.happen()
	}
}

// PassesAll lets what is left of the past pass, where the operation in hand turned out to be another.
func (s *Ship) PassesAll() {
	for s.Past.At < len(s.Past.Steps) {
		s.passes()
	}
	if left := s.Past.Credit; left > 0 {
		s.Past.Credit, s.Past.Short = 0, true
		s.spend(activity.CutCore, left)
		s.catchesUp()
	}
}

// Sailed is how much of a passage is behind the ship by the log, at the speed that she makes.
func (s *Ship) Sailed(k activity.Kind, distance, speed float64) (left float64) {
	if s.Past.At >= len(s.Past.Steps) || s.Past.Steps[s.Past.At].Kind != k {
		return distance
	}
	if k == activity.Passage {
		speed *= s.Voyage.InWaves(s.Sea.Height)
	}
	way := s.Past.Steps[s.Past.At].Worked * speed
	s.passes()
	if left := s.Past.ToGo; left >= 0 && s.Past.Over() {
		return left
	}
	return max(0, distance-way)
}
