package rates

import (
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
