package rates

import (
	"fmt"
	"math"
	"time"

	"coredays/model/rig"
	"coredays/model/rigchannel"
	"coredays/model/riglog"
)

// A trip goes on as long as no connection takes longer; fewer stands than three in a row are no trip [judgement].
const (
	longestPause = 600.0 // s
	fewestStands = 3
)

// recordings takes in stands and connections from the rig's channels. A recording does not say where the sea floor is, so
// trips count as those in the water.
func (g *gatherer) recordings(list []riglog.Recording) {
	for i := range list {
		r := &list[i]
		f, err := rigchannel.Look(r, g.median(rig.StandLength))
		if err != nil {
			g.left = append(g.left, riglog.Note{File: r.File, Why: err.Error()})
			continue
		}
		g.trips(r, f.Stands)
		joints, err := rigchannel.Look(r, g.median(rig.JointLength))
		if err != nil {
			continue
		}
		for _, c := range joints.Connections {
			g.add(rig.Connection, sample{value: c.Took(), from: moment(r, c.From), to: moment(r, c.To), exposure: 1}, "times")
		}
	}
}

// trips makes a rate of each run of stands: from the start of its first to the start of its last, connections included.
func (g *gatherer) trips(r *riglog.Recording, stands []rigchannel.Stand) {
	for i := 0; i < len(stands); {
		j := i + 1
		for j < len(stands) && stands[j].From-stands[j-1].To <= longestPause && (stands[j].Moved > 0) == (stands[i].Moved > 0) {
			j++
		}
		if n := float64(j - i - 1); j-i >= fewestStands {
			g.add(rig.Tripping, sample{value: n / (stands[j-1].From - stands[i].From), exposure: n, from: moment(r, stands[i].From), to: moment(r, stands[j-1].To)}, "stands")
		}
		i = j
	}
}

// moment is a time of a recording.
func moment(r *riglog.Recording, at float64) time.Time {
	if r.Start.IsZero() {
		return time.Time{}
	}
	return r.Start.Add(time.Duration(at * float64(time.Second)))
}

// latestOnDeck is how long after the line was brought in its core is noted on deck at the latest, and longestRound how long
// before that the line may have gone out [judgement].
const (
	latestOnDeck = 90 * time.Minute
	longestRound = 4 * time.Hour
)

// lineRuns takes in the speed of the coring line. Which barrel hung on it the core table tells: that of the next core on deck.
func (g *gatherer) lineRuns(list []riglog.Recording, cores []riglog.Core) {
	for i := range list {
		r := &list[i]
		runs := rigchannel.WireRuns(r)
		unknown := 0
		for _, run := range runs {
			c := nextOnDeck(cores, moment(r, run.To), run.Metres > 0)
			if r.Start.IsZero() || c == nil {
				unknown++
				continue
			}
			wire := types[c.Type].Of().Wire
			g.add(wire, sample{site: c.Leg + "/" + c.Site, hole: c.Hole, from: moment(r, run.From), to: moment(r, run.To), value: run.Speed(), exposure: 1,
				along: math.Abs(run.Metres)}, "times")
		}
		if unknown > 0 {
			g.left = append(g.left, riglog.Note{File: r.File, Why: fmt.Sprintf("%d runs of the line of which no core table tells the tool", unknown)})
		}
	}
}

// nextOnDeck is the core for which a run of the line that ended at a time was made, nil where there is none.
func nextOnDeck(cores []riglog.Core, end time.Time, out bool) (next *riglog.Core) {
	latest := end.Add(latestOnDeck)
	if out {
		latest = end.Add(longestRound)
	}
	for i := range cores {
		c := &cores[i]
		if _, cored := types[c.Type]; !cored || c.OnDeck.Before(end) || c.OnDeck.After(latest) {
			continue
		}
		if next == nil || c.OnDeck.Before(next.OnDeck) {
			next = c
		}
	}
	return next
}
