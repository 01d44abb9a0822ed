package rates

import (
	"regexp"
	"strings"

	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/model/riglog"
	"coredays/model/spread"
	"coredays/model/unit"
)

// Learn says what the papers of a rig tell of her rates, which are those of ship before. water has the depths of water
// at sites where the papers do not state them.
func Learn(ship [rig.Rates]spread.Quantity, p *riglog.Papers, water map[string]float64) *Result {
	g := &gatherer{ship: ship, off: rounding(p.Lines), used: map[*riglog.Line]bool{}}
	r := &Result{Files: p.Files, Cores: len(p.Cores), Days: riglog.Balance(p.Lines), Unmapped: riglog.Unmapped(p.Lines)}
	works := worksOf(p.Lines)
	g.read(works, func(w *work) (bool, bool) { return rotary(w, p) })
	g.recordings(p.Recordings)
	cores := watered(p.Cores, water)
	g.lineRuns(p.Recordings, cores)
	cycles, _ := cyclesOf(cores, p.Lines)
	r.Cycles = g.cyclesByTool(cycles)
	wires := g.wires(cycles, r.Cycles)
	g.paces(cycles)
	for of := range rig.Rates {
		g.axis[of] = "observation, in the order of time"
	}
	for _, of := range []rig.Rate{rig.PistonDurationFactor, rig.ExtendedDurationFactor, rig.Bench} {
		g.axis[of] = "way of the barrel (m)"
	}
	for _, of := range []rig.Rate{rig.Tripping, rig.TrippingInHole} {
		g.axis[of] = "depth of the bit (m)"
	}
	r.Rates = append(g.learn(), wires...)
	for of := range rig.Rates {
		if _, known := r.Find(of); !known && g.why[of] != "" {
			q := ship[of]
			r.Rates = append(r.Rates, Rate{Of: of, Ship: tripleOf(&q), Use: tripleOf(&q), Log: Triple{riglog.Unknown(), riglog.Unknown(), riglog.Unknown()}, Shares: q.Shares, Persists: q.Persistence, Why: g.why[of]})
		}
	}
	inOrder(r.Rates)
	r.Events = events(works, cycles)
	r.account(p, g)
	return r
}

// account adds up the hours, and lists what was left out.
func (r *Result) account(p *riglog.Papers, g *gatherer) {
	for i := range p.Lines {
		l := &p.Lines[i]
		if g.used[l] {
			r.Used += l.Hours()
		}
		r.From, r.To = earlier(r.From, l.From), later(r.To, l.To)
	}
	for i := range r.Days {
		r.Total += r.Days[i].Hours()
	}
	for i := range p.Cores {
		if at := p.Cores[i].OnDeck; !at.IsZero() {
			r.From, r.To = earlier(r.From, at), later(r.To, at)
		}
	}
	for i := range p.Recordings {
		if x := &p.Recordings[i]; !x.Start.IsZero() {
			r.From, r.To = earlier(r.From, x.Start), later(r.To, moment(x, x.Time[len(x.Time)-1]))
		}
	}
	for _, n := range p.Notes {
		if n.Lost {
			r.LeftOut = append(r.LeftOut, n)
		}
	}
	r.LeftOut = append(r.LeftOut, g.left...)
}

// watered fills in depths of water that the table does not state.
func watered(cores []riglog.Core, water map[string]float64) []riglog.Core {
	out := append([]riglog.Core(nil), cores...)
	for i := range out {
		if depth, known := water[out[i].Site]; known && out[i].Water != out[i].Water {
			out[i].Water = unit.Length(depth)
		}
	}
	return out
}

// Words by which a log says which assembly was made up, and the notes of cores such as "12R: …".
var (
	ofRotary = regexp.MustCompile(`(?i)\b(rcb|rotary)\b`)
	ofPiston = regexp.MustCompile(`(?i)\b(apc|xcb|hlapc|piston)\b`)
	coreNote = regexp.MustCompile(`^\d+([HFXR])\b`)
)

// rotary tells whether an assembly is the rotary one: by the words of the line, else by the next cores of the hole in
// the log, else by the core table; known is false where nothing tells.
func rotary(w *work, p *riglog.Papers) (is, known bool) {
	words := w.lines[0].What + " " + w.lines[0].Note
	switch r, o := ofRotary.MatchString(words), ofPiston.MatchString(words); {
	case r && !o:
		return true, true
	case o && !r:
		return false, true
	}
	for i := range p.Lines {
		l := &p.Lines[i]
		if l.From.Before(w.from) || l.Site != w.site || l.Hole != w.hole {
			continue
		}
		if m := coreNote.FindStringSubmatch(l.Note); m != nil {
			return m[1] == "R", true
		}
	}
	for i := range p.Cores {
		c := &p.Cores[i]
		if tool, cored := types[strings.ToUpper(c.Type)]; cored && c.Site == w.site && c.Hole == w.hole && !c.OnDeck.Before(w.from) {
			return tool == coring.RCB, true
		}
	}
	return false, false
}
