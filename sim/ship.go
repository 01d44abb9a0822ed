package sim

import (
	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/voyage"
	"coredays/sim/random"
	"coredays/sim/statistics"
)

// ship is the state of one replication: all that decides what is done next, and what has been
// done. Copying it (see copyFrom) forks the expedition.
type ship struct {
	random.Draws
	v *voyage.Voyage
	// constrained makes the limits of the expedition hold: leave in time, caps, ranks, alternates.
	constrained   bool
	unconstrained *ship // goes on without a deadline from where a limit of the expedition first binds
	forked        bool
	rewind        bool // a limit bound in the midst of a script: the unconstrained ship must sail from the start
	// everything makes alternates and conditional items part of the programme.
	everything  bool
	crew        *CrewEstimates
	plannedTime float64 // estimated s of the items finished so far
	actualTime  float64 // s that they took
	timeUp      bool    // no more is begun: the ship goes home

	clock    float64 // s after sailing
	past     past    // of the operation in hand, by the log; over where none is given
	choice   Choice  // made once that is done
	agenda   agenda
	sea      weather
	forecast forecast
	ended    ending

	at         voyage.Place
	here       *voyage.Site // nil at sea or in port
	positioned bool
	closed     bool         // the site can't be used now
	closing    int          // of the site, by its number: what closes it next or does so now
	shut       bool         // a cyclone or ice of the known place closes it now
	offset     bool         // the ship must move before the next hole is begun
	handled    float64      // s of work that brings other work since that was done last
	otherLeft  float64      // s of other work that has are recovered and is not done
	triedOut   bool         // rig and tools, at the first site
	towards    voyage.Place // where she goes when nothing is left to do here
	inPort     float64      // s in port before sailing
	home       bool         // reached the last port
	stuck      bool         // never got there

	bha      coring.Assembly
	rotating float64 // s of rotating with the bit in use
	bitLife  float64 // s; 0 for a bit that does not wear
	bit      float64 // depth of the bit below the sea surface, m; 0 with all pipe on deck
	drifted  float64 // longest string strapped and drifted so far, m

	lineWork    float64 // J since the last slip and cut
	lastService float64 // s after sailing

	layerDepth float64 // depth of the layers in this hole over that of the survey
	shift      float64 // of the depths of this hole against its neighbours, m

	item     *voyage.Item // in hand; nil when the next is to be chosen
	task     task
	lastItem int // number + 1 of the item finished last at this site; 0 for none
	hole     hole
	gone     gone
	deck     deck
	sites    []siteRecord
	items    []itemRecord
	tools    [coring.Tools]toolRecord
	consumed statistics.Consumed
	bits     []uint64 // recovered half-metres of every site
	coverage coverage
	depths   depths
	slices   statistics.Slicing

	spent [activity.Kinds]float64 // s by kind of activity
	cores *coreLog                // nil where nobody asks for the cores one by one
	diary *recorder

	halt  <-chan struct{} // ends the replication; nil for never
	ticks uint32          // activities so far, of all replications: many short ones are long too
}

// ending says why a script of activities was abandoned. It sticks: every further activity of the
// script falls through, and the outer loop makes the ship safe and picks what comes next.
type ending int

const (
	goingOn    ending = iota
	stormClear        // the sea asks for the bit to be clear of the sea floor
	stormPipe         // the sea asks for all pipe to be recovered
	noTime            // time is up while waiting on weather, or the sea never lets the work go on
	stringLost        // the string was severed: the assembly and the hole are gone
)

// siteRecord is what is known of a site.
type siteRecord struct {
	state            progress
	arrived, left    float64 // s after sailing
	waited           float64 // s waiting on weather while there
	cored, recovered float64 // m
	cores            int
	floorKnown       bool    // the mudline has been found
	surveyed         bool    // the sea floor was looked at
	closings         int     // times that were drawn at which it closes
	breakdowns       int     // times that were drawn at which the rig breaks down there
	toBreakdown      float64 // s on station until the next one; 0 until it is drawn
}

// itemRecord is what is known of a hole or task.
type itemRecord struct {
	state      progress
	began      float64 // s after sailing
	took       float64 // s
	leaving    float64 // s of these from when the last item of a site was done until the ship was under way
	depth      float64 // deepest, m below sea floor
	refused    float64 // where a piston corer was refused, m below sea floor; 0 if it was not
	covered    float64 // share of the site's section recovered when it was finished
	cored      float64 // m
	recovered  float64 // m
	attempts   int     // times it was lost
	holes      int     // times it was spudded
	incomplete bool    // ended before its target
	marks      int     // depths of the chart that it came to
}

// progress is how far a site or an item is.
type progress int

const (
	ahead progress = iota
	underWay
	done
	dropped
	notCalled // wanted only as another hole turns out, and it turned out otherwise
)

// toolRecord counts what a coring tool did.
type toolRecord struct {
	cores            int
	cored, recovered float64 // m
}

// copyFrom makes the ship a copy of another that goes its own way from here.
func (s *ship) copyFrom(o *ship) {
	series, sites, items, bits, draws, depths := s.sea.series, s.sites, s.items, s.bits, s.Draws, s.depths
	*s = *o
	s.Draws = draws
	s.Draws.CopyFrom(&o.Draws)
	s.sea.series = series
	s.sea.copyFrom(&o.sea)
	s.sites = append(sites[:0], o.sites...)
	s.items = append(items[:0], o.items...)
	s.bits = append(bits[:0], o.bits...)
	s.depths = depths
	s.depths.copyFrom(&o.depths)
}
