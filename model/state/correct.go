package state

import (
	"fmt"
	"math"
	"slices"
	"time"

	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/unit"
)

// Correction is what the crew puts right of a state. Fields that are not stated, by a zero text or moment, or not a
// number, stay as the log has them.
type Correction struct {
	At         time.Time
	Site, Hole string
	Depth      float64 // m below the sea floor
	Bit        float64 // m below the sea surface
	Assembly   string  // as the program names it, or none
	BitHours   float64
	Funnel     *bool
	Over       float64 // h that what is in hand, or trouble, still lasts by the crew's own estimate
	Waves      float64 // m
	ToGo       float64 // nautical miles to where she is bound, under way
	HomeBy     time.Time
	OpenHours  float64 // that the hole in hand has stood open
	Assemblies float64 // lost in holes so far
	Pipe       float64 // m, that stayed in holes with them
	Approvals  []Approval
	Holes      []HoleCorrection
}

// HoleCorrection is what is put right of one hole or task.
type HoleCorrection struct {
	Site, Hole     string
	Status         string // done, dropped, to come
	Depth, Refused float64
	Rank           int // as amended; 0 for that of the scenario
}

// NoCorrection has nothing stated.
func NoCorrection() Correction {
	n := math.NaN()
	return Correction{Depth: n, Bit: n, BitHours: n, Over: n, Waves: n, ToGo: n, OpenHours: n, Assemblies: n, Pipe: n}
}

// Apply puts a state right. What contradicts the log, by more than a joint or 2 h, is refused; the faults name the
// field.
func (c *Correction) Apply(p *plan.Plan, s *State) (faults []string) {
	fault := func(format string, values ...any) { faults = append(faults, fmt.Sprintf(format, values...)) }
	if !c.At.IsZero() && c.At.Sub(s.At).Abs() > slack {
		fault("at: %s is more than 2 h from the moment of the log, %s", c.At.UTC().Format(minutes), s.At.UTC().Format(minutes))
	}
	now := &s.Now
	if c.Site != "" {
		at := slices.IndexFunc(p.Sites, func(x plan.Site) bool { return x.Name == c.Site })
		switch {
		case at < 0:
			fault("site: the scenario has no site %s", c.Site)
		case now.Site != None && now.Site != at:
			fault("site: %s, and by the log the ship is at %s", c.Site, p.Sites[now.Site].Name)
		}
	}
	if c.Hole != "" {
		switch {
		case now.Item == None:
			fault("hole: %s, and by the log none is in hand", c.Hole)
		case name(p, s, now.Item) != c.Hole:
			fault("hole: %s, and by the log hole %s is in hand", c.Hole, name(p, s, now.Item))
		}
	}
	moved := false
	if !math.IsNaN(c.Depth) && now.Item != None {
		if off := math.Abs(c.Depth - float64(now.Hole.Depth)); off > joint {
			fault("depth_m: %g m, and by the log hole %s is %g m deep: more than a joint apart", c.Depth, name(p, s, now.Item), float64(now.Hole.Depth))
		} else if off > 0.5 {
			bottom := now.Site != None && float64(now.Bit) > float64(p.Sites[now.Site].WaterDepth)+float64(now.Hole.Depth)-0.2
			now.Hole.Depth, moved = unit.Depth(c.Depth), true
			if bottom {
				now.Bit = unit.Length(p.Sites[now.Site].WaterDepth) + unit.Length(c.Depth)
			}
			s.Items[now.Item].Depth = max(s.Items[now.Item].Depth, unit.Depth(c.Depth))
		}
	}
	if !math.IsNaN(c.Bit) && math.Abs(c.Bit-float64(now.Bit)) > 1 {
		now.Bit, moved = unit.Length(c.Bit), true
		now.Longest = max(now.Longest, now.Bit)
	}
	switch c.Assembly {
	case "":
	case "none":
		moved = moved || now.Assembly != coring.NoBHA
		now.Assembly = coring.NoBHA
	default:
		known := false
		for a := coring.NoBHA; int(a) < len(assemblies()); a++ {
			if a != coring.NoBHA && a.String() == c.Assembly {
				moved, known = moved || now.Assembly != a, true
				now.Assembly = a
			}
		}
		if !known {
			fault("assembly: %q, wanted none, %s", c.Assembly, assemblyNames())
		}
	}
	if !math.IsNaN(c.BitHours) {
		now.Rotated = unit.Duration(c.BitHours) * unit.Hour
	}
	faults = append(faults, c.opened(p, s)...)
	if !math.IsNaN(c.Assemblies) {
		s.Gone.Assemblies = int(c.Assemblies)
	}
	if !math.IsNaN(c.Pipe) && math.Abs(c.Pipe-float64(s.Gone.Pipe)) > sameDepth {
		s.Gone.Pipe = unit.Length(c.Pipe)
	}
	if c.Funnel != nil {
		now.Hole.Funnel = *c.Funnel
	}
	if !math.IsNaN(c.Over) {
		s.Over = unit.Duration(c.Over) * unit.Hour
	}
	if !math.IsNaN(c.Waves) {
		s.Waves = unit.Length(c.Waves)
	}
	switch {
	case math.IsNaN(c.ToGo):
	case now.Site != None:
		fault("to_go_nmi: by the log the ship is not under way but at site %s", p.Sites[now.Site].Name)
	default:
		s.ToGo, s.Way = true, unit.Length(c.ToGo)*unit.NauticalMile
	}
	if !c.HomeBy.IsZero() {
		s.Home = c.HomeBy
	}
	for i := range c.Holes {
		faults = append(faults, c.Holes[i].apply(p, s)...)
	}
	if moved {
		s.Steps = nil
		s.Notes = append(s.Notes, "depth, bit or assembly are put right by the state file: what is in hand begins anew")
	}
	return faults
}

// opened puts right since when the hole in hand stands open: no longer than the log has it begun.
func (c *Correction) opened(p *plan.Plan, s *State) (faults []string) {
	if math.IsNaN(c.OpenHours) {
		return nil
	}
	if s.Now.Item == None || !s.Now.Hole.Open {
		return []string{fmt.Sprintf("open_h: %g h, and by the log no hole stands open", c.OpenHours)}
	}
	x := &s.Items[s.Now.Item]
	opened := s.At.Add(-time.Duration(c.OpenHours * float64(time.Hour)))
	if existing := p.Sites[x.Site].Items[x.Number].Hole.Existing > 0; !existing && opened.Before(x.Began.Add(-slack)) {
		return []string{fmt.Sprintf("open_h: %g h, and by the log hole %s was begun %.1f h ago", c.OpenHours, name(p, s, s.Now.Item), s.At.Sub(x.Began).Hours())}
	}
	const tenth = 6 * time.Minute // of an hour, to which the file states it
	if math.Abs(float64(opened.Sub(s.OpenedAt()))) > float64(tenth)/2+float64(time.Second) {
		s.Now.Hole.Opened = opened
		for i := range s.Steps {
			if b := &s.Steps[i].Before; b.Item == s.Now.Item && b.Hole.Open {
				b.Hole.Opened = opened
			}
		}
	}
	return nil
}

// OpenedAt is when the hole in hand was opened: where the log does not tell, when it was begun.
func (s *State) OpenedAt() time.Time {
	if opened := s.Now.Hole.Opened; !opened.IsZero() {
		return opened
	}
	return s.Items[s.Now.Item].Began
}

// apply puts one hole right.
func (h *HoleCorrection) apply(p *plan.Plan, s *State) (faults []string) {
	n := slices.IndexFunc(s.Items, func(x Item) bool {
		return p.Sites[x.Site].Name == h.Site && p.Sites[x.Site].Items[x.Number].Name == h.Hole
	})
	if n < 0 {
		return []string{fmt.Sprintf("holes: the scenario has no hole %s of site %s", h.Hole, h.Site)}
	}
	x := &s.Items[n]
	if !math.IsNaN(h.Depth) && n != s.Now.Item {
		if off := math.Abs(h.Depth - float64(x.Depth)); x.State == Done && off > joint && x.Depth > 0 {
			faults = append(faults, fmt.Sprintf("holes: hole %s of site %s is %g m deep, and by the log %g m: more than a joint apart", h.Hole, h.Site, h.Depth, float64(x.Depth)))
		} else {
			x.Depth = unit.Depth(h.Depth)
		}
	}
	if !math.IsNaN(h.Refused) {
		x.Refused = unit.Depth(h.Refused)
	}
	switch h.Status {
	case "", x.State.String():
	case "dropped", "to come":
		if x.State == InHand || x.State == Done {
			return append(faults, fmt.Sprintf("holes: hole %s of site %s is %s, and by the log it is %s", h.Hole, h.Site, h.Status, x.State))
		}
		x.State = map[string]Progress{"dropped": Dropped, "to come": ToCome}[h.Status]
	case "done":
		if x.State == InHand {
			return append(faults, fmt.Sprintf("holes: hole %s of site %s is done, and by the log it is in hand", h.Hole, h.Site))
		}
		x.State = Done
		if x.Began.IsZero() {
			x.Began, x.Ended = s.At, s.At
		}
	default:
		faults = append(faults, fmt.Sprintf("holes: hole %s of site %s: status %q, wanted done, dropped or to come", h.Hole, h.Site, h.Status))
	}
	return faults
}

func name(p *plan.Plan, s *State, item int) string {
	x := &s.Items[item]
	return p.Sites[x.Site].Items[x.Number].Name
}

// assemblies are all there are.
func assemblies() (list []coring.Assembly) {
	seen := map[coring.Assembly]bool{coring.NoBHA: true}
	list = append(list, coring.NoBHA)
	for t := range coring.Tools {
		if a := t.Assembly(); !seen[a] {
			seen[a], list = true, append(list, a)
		}
	}
	return list
}

func assemblyNames() (text string) {
	for i, a := range assemblies()[1:] {
		if i > 0 {
			text += " or "
		}
		text += a.String()
	}
	return text
}
