package basis

import (
	"fmt"
	"strings"

	"coredays/model/drillstring"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/model/voyage"
)

// Of lists the numbers of a voyage by group, in the order of the files.
func Of(v *voyage.Voyage) []Entry {
	b := &book{v: v, plan: v.Plan}
	b.expedition()
	b.rates()
	b.ship()
	b.string()
	for n := range v.Sites {
		b.site(&v.Sites[n], n)
	}
	return b.entries
}

// book collects the entries.
type book struct {
	v       *voyage.Voyage
	plan    *plan.Plan
	entries []Entry
}

func (b *book) add(e Entry) { b.entries = append(b.entries, e) }

// drawn adds an entry that the voyage draws.
func (b *book) drawn(e Entry, q voyage.Quantity) {
	e.Quantity = q
	b.add(e)
}

// at says who gave the number at a path of the scenario and where: the file and line before a source
// of its own.
func (b *book) at(path string, otherwise From, source string) (From, string) {
	where, stated := b.plan.Where[path]
	switch {
	case !stated && strings.HasPrefix(source, b.plan.File+":"), !stated && strings.HasPrefix(source, "--set"):
		return Stated, source
	case !stated:
		return otherwise, source
	case source == "" || strings.HasPrefix(source, b.plan.File+":") || strings.HasPrefix(source, "--set"):
		return Stated, where
	}
	return Stated, where + ": " + source
}

// stated adds a number that a scenario alone can state.
func (b *book) stated(group, site, name, path string, si float64, m measure) {
	from, source := b.at(path, Stated, b.plan.File+": "+path)
	b.add(number(group, site, name, si, m, from, source))
}

var (
	days    = measure{of: unit.OfDuration, symbol: "d"}
	knots   = measure{of: unit.OfSpeed, symbol: "kn"}
	metres  = measure{of: unit.OfLength, symbol: "m"}
	mbsf    = measure{of: unit.OfDepth, symbol: "mbsf"}
	klbf    = measure{of: unit.OfForce, symbol: "klbf"}
	count   = measure{of: unit.OfCount}
	percent = measure{of: unit.OfShare, symbol: "%"}
	hours   = measure{of: unit.OfDuration, symbol: "h"}
	kNm     = measure{of: unit.OfForce, symbol: "kN", per: " m"}
)

// expedition lists what concerns the whole of it.
func (b *book) expedition() {
	b.stated("expedition", "", "sea days", "sea_days", float64(b.plan.SeaDays), days)
	from, source := b.at("in_port_before_sailing", OfShip, b.plan.InPort.Source)
	b.drawn(quantity("expedition", "", "days in port before sailing", b.plan.InPort, days, from, source), b.v.InPort)
}

// rates lists the figures of ship and crew.
func (b *book) rates() {
	for r, q := range b.plan.Ship.Rates {
		is := rig.Rate(r).Of()
		from, source := b.at("rates."+is.Key, OfShip, q.Source)
		b.drawn(quantity("ship and crew", "", is.Key, q, measure{of: is.Of, symbol: is.Unit}, from, source), voyage.Quantity(r))
	}
}

// ship lists what she can stand.
func (b *book) ship() {
	const group = "sea limits"
	for _, l := range b.plan.Ship.Limits {
		from, source := b.at("", OfShip, l.Source)
		b.add(number(group, "", fmt.Sprintf("%s: %s, water from %s", l.For.Key(), ofWords[l.Of], l.FromDepth.Tell()), float64(l.Most), metres, from, source))
	}
	from, source := b.at("storm", OfShip, b.plan.Ship.Storm.Source)
	b.add(number(group, "", "storm: clear the sea floor, significant wave height", float64(b.plan.Ship.Storm.ClearSeaFloor), metres, from, source))
	b.add(number(group, "", "storm: recover the pipe, significant wave height", float64(b.plan.Ship.Storm.RecoverPipe), metres, from, source))
	b.add(number("ship", "", "rig floor above sea level", float64(b.plan.Ship.RigFloor), metres, OfShip, "ship file: "+b.plan.Ship.Source))
	hull := b.plan.Ship.Hull
	for _, one := range []struct {
		name string
		si   float64
		m    measure
	}{{"hull length", float64(hull.Length), metres}, {"hull beam", float64(hull.Beam), metres}, {"hull draught", float64(hull.Draught), metres}, {"hull block coefficient", hull.Block, count}} {
		b.add(number("ship", "", one.name, one.si, one.m, OfShip, "ship file: "+b.plan.Ship.Source))
	}
	b.figure("ship", "endurance", b.plan.Ship.Endurance, days, "endurance")
	b.figure("ship", "least water depth", b.plan.Ship.LeastWater, metres, "least_water_depth")
	b.figure("ship", "position keeping", b.plan.Ship.PositionKeeping, metres, "position_keeping")
	if b.plan.Ship.MostCurrent.Value > 0 {
		b.figure("ship", "most current", b.plan.Ship.MostCurrent, knots, "most_current")
	}
}

var ofWords = [...]string{"significant heave", "largest heave", "significant wave height", "largest wave"}

// string lists what hangs below her.
func (b *book) string() {
	t := &b.plan.Ship.Tubulars
	for _, p := range t.Pipe {
		from, source := b.at("string.pipe", OfShip, p.Source)
		b.add(number("string", "", p.Pipe.Name+", "+p.Class.String(), float64(p.Length), metres, from, source))
		b.add(number("string", "", p.Pipe.Name+", "+p.Class.String()+": rating", float64(p.Pipe.Rating(p.Class)), klbf, BuiltIn, p.Pipe.Source))
	}
	b.figure("string", "collars of an assembly", t.Collars, count, "string.collars")
	b.figure("string", "collars on board", t.CollarsOnBoard, count, "string.collars_on_board")
	b.figure("string", "assemblies on board", t.Assemblies, count, "string.assemblies")
	b.figure("string", "derrick", t.Derrick, klbf, "string.derrick")
	b.figure("string", "hoist", t.Hoist, klbf, "string.hoist")
	b.figure("string", "overpull kept back", t.Overpull, klbf, "string.overpull")
	b.figure("string", "radius of the guide horn", t.GuideHorn, metres, "string.guide_horn")
	b.figure("string", "compensator: rated load", b.plan.Ship.Compensator.Load, klbf, "string.compensator_load")
	b.figure("string", "compensator: stroke", b.plan.Ship.Compensator.Stroke, metres, "string.compensator_stroke")
	b.torques()
}

// torques lists those of the rig and of the connections.
func (b *book) torques() {
	gear := &b.plan.Ship.Torque
	b.figure("string", "make-up torque of the tongs", gear.MakeUp, kNm, "string.make_up_torque")
	if gear.Rotating.Value > 0 {
		b.figure("string", "rotating torque", gear.Rotating, kNm, "string.rotating_torque")
	}
	board, _ := b.plan.Ship.Tubulars.Board() // what can't be made up is for the check to tell
	table, _ := drillstring.Published()
	for _, joint := range board.Connections() {
		if m, err := table.MakeUp(joint); err == nil {
			b.add(number("string", "", "make-up torque of "+joint.Tell(), float64(m.Torque), kNm, BuiltIn, m.Source))
		}
	}
}

func (b *book) figure(group, name string, f rig.Figure, m measure, path string) {
	from, source := b.at(path, OfShip, f.Source)
	b.add(number(group, "", name, f.Value, m, from, source))
}
