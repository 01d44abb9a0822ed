package ship

import (
	"math"
	"time"

	"coredays/model/chance"
	"coredays/model/sea"
	"coredays/model/voyage"
	"coredays/model/workers"
	"coredays/sim/random"
	"coredays/sim/statistics"
)

// New readies a ship for replications of a voyage.
func New(v *voyage.Voyage) *Ship {
	s := &Ship{Voyage: v, Draws: random.New(v)}
	var words int
	s.coverage, words = newCoverage(v)
	s.Sea.Series = make([]sea.Series, len(v.Courses))
	s.Sites = make([]SiteRecord, len(v.Sites))
	s.Items = make([]ItemRecord, v.Items)
	s.bits = make([]uint64, words)
	s.Depths, s.Slices = newDepths(v), statistics.NewSlices(v)
	return s
}

// InPortAgain puts the ship at the start of one replication, in port, ready to sail.
func (s *Ship) InPortAgain(seed uint64, replication int) {
	*s = Ship{Voyage: s.Voyage, coverage: s.coverage, Crew: s.Crew, Diary: s.Diary, Halt: s.Halt, ticks: s.ticks,
		Sea: Weather{Series: s.Sea.Series}, Sites: s.Sites, Items: s.Items, Draws: s.Draws, bits: s.bits,
		Depths: s.Depths, Slices: s.Slices, Forecast: forecast{issue: -1, skill: s.Forecast.skill}}
	clear(s.Sites)
	clear(s.Items)
	clear(s.bits)
	s.Depths.reset()
	if s.Voyage.Plan.Begun {
		s.Drifted, s.TriedOut = math.Inf(1), true
	}
	s.Draws.Begins(chance.Replication(seed, replication))
	s.Sea.FirstAt = secondsIntoYear(s.Voyage.Plan.Sails)
	s.Sea.Begin(s.Voyage, s.Stream)
	s.At, s.Towards = voyage.FromPort, voyage.FromPort
	s.InPort = s.Draw(s.Voyage.InPort)
	s.Agenda = newAgenda()
	s.Sea.Waves = s.Voyage.Leg(voyage.FromPort, voyage.SitePlace(s.Voyage.Plan.Order[0])).Waves
	s.SeaChanges()
}

// secondsIntoYear is how far into its year a moment is, s.
func secondsIntoYear(t time.Time) float64 {
	t = t.UTC()
	return t.Sub(time.Date(t.Year(), 1, 1, 0, 0, 0, 0, time.UTC)).Seconds()
}

// lookUp is how many activities pass between two looks at the context.
const lookUp = 4096

// mayBeHalted looks at the context now and then, and drops the replication where it has ended: one may take long, and
// whoever pressed Ctrl-C waits.
func (s *Ship) mayBeHalted() {
	if s.ticks++; s.ticks%lookUp != 0 {
		return
	}
	select {
	case <-s.Halt: // none where nobody asked: that blocks for ever, and the default is taken
		workers.Drop()
	default:
	}
}
