package sim

import (
	"context"
	"fmt"
	"math"
	"time"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/result"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/model/workers"
)

// recorder writes the diary of one replication.
type recorder struct {
	sails   time.Time
	entries []result.Entry
}

// Diary sails one replication again and writes down all of it: bound by the rules of the
// expedition, or the whole programme without a deadline. It is nil where the context ends before the expedition.
func Diary(ctx context.Context, v *voyage.Voyage, seed uint64, replication int, bound bool) *result.Diary {
	s := newShip(v).until(ctx)
	s.crew = EstimateByCrew(v)
	s.diary = &recorder{sails: v.Plan.Sails}
	s.begins(seed, replication)
	s.constrained = bound
	if !workers.UnlessDropped(s.sails) {
		return nil
	}
	return &result.Diary{Title: v.Plan.Title, Seed: seed, Replication: replication, Bound: bound, Days: unit.Duration(s.clock), Entries: s.diary.entries}
}

// activity adds time to the diary. An activity that goes on after an event stays one line.
func (r *recorder) activity(s *ship, k activity.Kind, seconds float64) {
	if seconds <= 0 {
		return
	}
	from, to := r.at(s.clock), r.at(s.clock+seconds)
	if n := len(r.entries); n > 0 {
		if last := &r.entries[n-1]; last.Kind == k && last.To.Equal(from) && last.Note == "" && last.Place == s.whereabouts() {
			last.To = to
			last.Waves = max(last.Waves, unit.Length(s.sea.height))
			last.Depth = s.bitDepth()
			return
		}
	}
	r.entries = append(r.entries, result.Entry{From: from, To: to, Kind: k, Place: s.whereabouts(), Depth: s.bitDepth(), Bottom: s.holeDepth(), Waves: unit.Length(s.sea.height)})
}

// core notes a core with the activity that brought it on deck.
func (r *recorder) core(s *ship, t coring.Tool, length, recovered float64) {
	if n := len(r.entries); n > 0 {
		r.entries[n-1].Note = fmt.Sprintf("%d%s: %.1f m cut, %.1f up", s.hole.cores, t.Letter(), length, recovered)
	}
}

// remark adds words to what was done last.
func (r *recorder) remark(words string) {
	if n := len(r.entries); n > 0 && words != "" {
		r.entries[n-1].Note = words
	}
}

// at is a moment of the expedition, to the second.
func (r *recorder) at(clock float64) time.Time {
	return r.sails.Add(time.Duration(math.Round(clock)) * time.Second)
}

// whereabouts is where the ship is.
func (s *ship) whereabouts() result.Place {
	switch {
	case s.here == nil && s.at == s.towards:
		return result.Place{Way: s.v.Name(s.at)}
	case s.here == nil:
		return result.Place{Way: s.v.Name(s.at) + " to " + s.v.Name(s.towards)}
	case s.item == nil:
		return result.Place{Site: s.here.Name}
	}
	return result.Place{Site: s.here.Name, Hole: s.item.Name}
}

// holeDepth is the depth of the hole in hand below the sea floor, not-a-number before it is spudded.
func (s *ship) holeDepth() unit.Depth {
	if s.item == nil || !s.hole.open {
		return unit.Depth(math.NaN())
	}
	return unit.Depth(s.hole.depth)
}

// bitDepth is the depth of the bit below the sea floor; above it, negative.
func (s *ship) bitDepth() unit.Depth {
	if s.here == nil || s.bit == 0 {
		return unit.Depth(math.NaN())
	}
	return unit.Depth(s.bit - s.here.Floor)
}

// Core is a core as it reached the deck in a hindcast.
type Core struct {
	Hole             string
	Tool             coring.Tool
	OnDeck           float64 // s after the ship came over the site
	Cored, Recovered float64 // m
}

// coreLog keeps the cores of a replication where somebody asks for them.
type coreLog struct{ cores []Core }

// note keeps a core; nobody asks for it where the log is nil.
func (l *coreLog) note(s *ship, t coring.Tool, cored, recovered float64) {
	if l != nil {
		l.cores = append(l.cores, Core{s.item.Name, t, s.clock, cored, recovered})
	}
}
