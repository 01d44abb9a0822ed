package ship

import (
	"fmt"
	"math"
	"time"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/result"
	"coredays/model/unit"
)

// Recorder writes the diary of one replication.
type Recorder struct {
	Sails   time.Time
	Entries []result.Entry
}

// activity adds time to the diary. An activity that goes on after an event stays one line.
func (r *Recorder) activity(s *Ship, k activity.Kind, seconds float64) {
	if seconds <= 0 {
		return
	}
	from, to := r.at(s.Clock), r.at(s.Clock+seconds)
	if n := len(r.Entries); n > 0 {
		if last := &r.Entries[n-1]; last.Kind == k && last.To.Equal(from) && last.Note == "" && last.Place == s.whereabouts() {
			last.To = to
			last.Waves = max(last.Waves, unit.Length(s.Sea.Height))
			last.Depth = s.bitDepth()
			return
		}
	}
	r.Entries = append(r.Entries, result.Entry{From: from, To: to, Kind: k, Place: s.whereabouts(), Depth: s.bitDepth(), Bottom: s.holeDepth(), Waves: unit.Length(s.Sea.Height)})
}

// core notes a core with the activity that brought it on deck.
func (r *Recorder) core(s *Ship, t coring.Tool, length, recovered float64) {
	if n := len(r.Entries); n > 0 {
		r.Entries[n-1].Note = fmt.Sprintf("%d%s: %.1f m cut, %.1f up", s.Hole.Cores, t.Letter(), length, recovered)
	}
}

// Remark adds words to what was done last.
func (r *Recorder) Remark(words string) {
	if n := len(r.Entries); n > 0 && words != "" {
		r.Entries[n-1].Note = words
	}
}

// at is a moment of the expedition, to the second.
func (r *Recorder) at(clock float64) time.Time {
	return r.Sails.Add(time.Duration(math.Round(clock)) * time.Second)
}

// whereabouts is where the ship is.
func (s *Ship) whereabouts() result.Place {
	switch {
	case s.Here == nil && s.At == s.Towards:
		return result.Place{Way: s.Voyage.Name(s.At)}
	case s.Here == nil:
		return result.Place{Way: s.Voyage.Name(s.At) + " to " + s.Voyage.Name(s.Towards)}
	case s.Item == nil:
		return result.Place{Site: s.Here.Name}
	}
	return result.Place{Site: s.Here.Name, Hole: s.Item.Name}
}

// holeDepth is the depth of the hole in hand below the sea floor, not-a-number before it is spudded.
func (s *Ship) holeDepth() unit.Depth {
	if s.Item == nil || !s.Hole.Open {
		return unit.Depth(math.NaN())
	}
	return unit.Depth(s.Hole.Depth)
}

// bitDepth is the depth of the bit below the sea floor; above it, negative.
func (s *Ship) bitDepth() unit.Depth {
	if s.Here == nil || s.Bit == 0 {
		return unit.Depth(math.NaN())
	}
	return unit.Depth(s.Bit - s.Here.Floor)
}

// Core is a core as it reached the deck in a hindcast.
type Core struct {
	Hole             string
	Tool             coring.Tool
	OnDeck           float64 // s after the ship came over the site
	Cored, Recovered float64 // m
}

// CoreLog keeps the cores of a replication where somebody asks for them.
type CoreLog struct{ Cores []Core }

// note keeps a core; nobody asks for it where the log is nil.
func (l *CoreLog) note(s *Ship, t coring.Tool, cored, recovered float64) {
	if l != nil {
		l.Cores = append(l.Cores, Core{s.Item.Name, t, s.Clock, cored, recovered})
	}
}
