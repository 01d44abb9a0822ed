package lookahead

import (
	"coredays/model/activity"
	"coredays/model/learn"
	"coredays/model/rig"
	"coredays/model/riglog"
	"coredays/model/voyage"
)

// passages takes in the speed of passages that are over.
func (l *learner) passages(papers *riglog.Papers) {
	v := l.v
	var worked float64
	at, sailed := voyage.FromPort, false
	for i := range papers.Lines {
		line := &papers.Lines[i]
		if !line.From.Before(l.x.State.At) {
			return
		}
		if line.Site == "" {
			for _, k := range line.Doing {
				if k == activity.Passage {
					worked += line.Hours() * 3600 / float64(len(line.Doing))
					sailed = true
				}
			}
			continue
		}
		place := l.place(line.Site, line.Hole)
		if place.Site < 0 {
			continue
		}
		to := voyage.SitePlace(place.Site)
		if sailed && to != at && worked > leastPassage {
			leg := v.Leg(at, to)
			speed := leg.Distance / worked
			if leg.Waves != nil {
				speed /= v.InWaves(leg.Waves.Height(line.From.YearDay(), 0))
			}
			l.add(voyage.Quantity(rig.SailingSpeed), learn.Observation{At: learn.Place{Site: elsewhere - 1 - i, Hole: elsewhere}, Value: speed, Error: passageOff * speed})
		}
		at, worked, sailed = to, 0, false
	}
}
