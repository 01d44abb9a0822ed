package state

import (
	"slices"
	"time"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/riglog"
)

// where is the place of a line in the plan.
func (r *reader) where(l *riglog.Line) (site, item int, ok bool) {
	if l.Site == "" {
		if l.Hole != "" {
			r.fault(l, "hole %s has no site", l.Hole)
			return None, None, false
		}
		return None, None, true
	}
	site = slices.IndexFunc(r.plan.Sites, func(s plan.Site) bool { return s.Name == l.Site })
	if site < 0 {
		r.once(l, "the scenario has no site %s: write the site as the scenario does, or add it there", l.Site)
		return None, None, false
	}
	if l.Hole == "" {
		return site, None, true
	}
	item = slices.IndexFunc(r.plan.Sites[site].Items, func(i plan.Item) bool { return i.Name == l.Hole })
	if item < 0 {
		r.once(l, "site %s has no hole or task %s in the scenario: add it there, since it was done", l.Site, l.Hole)
		return None, None, false
	}
	return site, r.first[site] + item, true
}

// at brings the ship to the place of a line.
func (r *reader) at(l *riglog.Line, site, item int, doing []activity.Kind) {
	s := &r.st.Now
	sailing := slices.Contains(doing, activity.Passage) || slices.Contains(doing, activity.HangingPassage) || slices.Contains(doing, activity.Approach) || slices.Contains(doing, activity.Pilotage)
	switch {
	case site == None && sailing:
		r.leaveSite(l)
		return
	case site == None:
		return // such as weather written down without its place
	case sailing && s.Site == site && !slices.Contains(doing, activity.HangingPassage):
		r.fault(l, "the ship is under way (%q) and at site %s at once", l.What, l.Site)
		return
	}
	if site != s.Site {
		if s.Site != None {
			r.fault(l, "the ship is at site %s, and on the line before at site %s: how she came there is not in the log", l.Site, r.plan.Sites[s.Site].Name)
		}
		r.leaveSite(l)
		s.Site, s.LastSite = site, site
		x := &r.st.Sites[site]
		if x.State == ToCome {
			x.Arrived = l.From
		}
		x.State = InHand
	}
	if item == s.Item || item == None && idle(doing[0]) {
		return
	}
	r.leaveItem(l.From)
	if item == None {
		return
	}
	s.Item = item
	x := &r.st.Items[item]
	if x.State == Done {
		r.note("hole %s of site %s was gone back to at %s", r.item(item).Name, l.Site, l.From.Format(minutes))
	} else {
		x.Began = l.From
	}
	x.State = InHand
	s.Hole, s.TaskDone, s.Clear = Hole{}, 0, s.Bit == 0
}

func (r *reader) leaveSite(l *riglog.Line) {
	s := &r.st.Now
	r.leaveItem(l.From)
	if s.Site != None {
		x := &r.st.Sites[s.Site]
		x.Left, x.State = l.From, Done
		s.Site = None
	}
	s.OnStation = false
}

// leaveItem closes the hole or task in hand.
func (r *reader) leaveItem(at time.Time) {
	s := &r.st.Now
	if s.Item == None {
		return
	}
	x := &r.st.Items[s.Item]
	x.State, x.Ended = Done, at
	if h := r.item(s.Item).Hole; h != nil {
		x.Incomplete = s.Hole.Logged < len(h.Logging)
	}
	if s.Hole.Released {
		s.Assembly = coring.NoBHA
	}
	s.Item, s.Hole = None, Hole{}
}
