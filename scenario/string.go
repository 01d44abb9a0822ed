package scenario

import (
	"math"
	"strings"

	"coredays/model/drillstring"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/scenario/document"
	"coredays/scenario/entry"
	"coredays/scenario/fault"
)

// figureOf names a figure of the string in its file, and where it goes.
type figureOf struct {
	key   string
	given *document.Spread
	of    entry.Measure
	to    *rig.Figure
}

// tubulars reads what is stated of the string over what is in the ship already.
func (c *clerk) tubulars(f *stringFile, endurance, leastWater *document.Spread, ship *rig.Ship) {
	c.figure("endurance", endurance, entry.EnduranceMeasure, &ship.Endurance)
	c.figure("least_water_depth", leastWater, entry.LeastMeasure, &ship.LeastWater)
	if f == nil {
		return
	}
	t := &ship.Tubulars
	if f.Pipe != nil {
		t.Pipe = c.pipe("string.pipe", f.Pipe)
	}
	for _, one := range f.figures(ship) {
		c.figure(document.Join("string", one.key), one.given, one.of, one.to)
	}
	if f.Roll != nil {
		t.Roll = c.lean("string.roll", f.Roll)
	}
	c.torque("string.make_up_torque", f.MakeUpTorque, &ship.Torque.MakeUp)
	c.torque("string.rotating_torque", f.RotatingTorque, &ship.Torque.Rotating)
	if t.CollarsOnBoard.Value < t.Collars.Value && f.Collars != nil {
		c.Fault("string.collars", t.Collars.Text, "no more than there are on board, "+t.CollarsOnBoard.Text)
	}
}

func (f *stringFile) figures(ship *rig.Ship) []figureOf {
	t := &ship.Tubulars
	return []figureOf{
		{"collars", f.Collars, entry.CollarsMeasure, &t.Collars}, {"collars_on_board", f.CollarsOnBoard, entry.CollarsMeasure, &t.CollarsOnBoard},
		{"assemblies", f.Assemblies, entry.CollarsMeasure, &t.Assemblies}, {"derrick", f.Derrick, entry.RatingMeasure, &t.Derrick},
		{"hoist", f.Hoist, entry.RatingMeasure, &t.Hoist}, {"overpull", f.Overpull, entry.ReserveMeasure, &t.Overpull},
		{"guide_horn", f.GuideHorn, entry.HornMeasure, &t.GuideHorn}, {"compensator_load", f.CompensatorLoad, entry.RatingMeasure, &ship.Compensator.Load},
		{"compensator_stroke", f.CompensatorStroke, entry.StrokeMeasure, &ship.Compensator.Stroke}}
}

// figure reads one value, if it is there.
func (c *clerk) figure(path string, s *document.Spread, m entry.Measure, to *rig.Figure) {
	if s == nil {
		return
	}
	if !s.Value.Given {
		c.Fault(path, "", m.Wanted()+", without spread")
		return
	}
	*to = rig.Figure{Value: c.Number(path, s.Value, m), Text: s.Value.Value, Source: c.Words(document.Join(path, "source"), s.Source, c.Source(path))}
}

// lean reads a roll in degrees.
func (c *clerk) lean(path string, s *document.Spread) rig.Figure {
	number, found := strings.CutSuffix(s.Value.Value, "deg")
	degrees, err := unit.OfCount.Parse(number)
	if !found || err != nil || degrees < 0 || degrees > 45 {
		c.Fault(path, s.Value.Value, `a roll from 0 to 45 deg, such as "6 deg"`)
		return rig.Figure{}
	}
	return rig.Figure{Value: degrees * math.Pi / 180, Text: s.Value.Value, Source: c.Words(document.Join(path, "source"), s.Source, c.Source(path))}
}

// pipe reads the drill pipe on board, from the bit up.
func (c *clerk) pipe(path string, given []pipeFile) (all []rig.PipeOnBoard) {
	table, err := drillstring.Published()
	if err != nil {
		c.Fault(path, "", err.Error())
		return nil
	}
	if len(given) == 0 || len(given) > mostKinds {
		c.Fault(path, "", "from one to six kinds of drill pipe")
	}
	for i, f := range given {
		inner := document.At(path, i)
		kind, err := table.Pipe(c.Name(document.Join(inner, "name"), f.Name))
		if err != nil && f.Name.Given {
			wanted, _ := fault.Suggest(f.Name.Value, pipeNames(table), "drill pipe")
			c.Fault(document.Join(inner, "name"), f.Name.Value, wanted)
		}
		if !f.Class.Given {
			c.Fault(document.Join(inner, "class"), "", "new or premium, by its last inspection")
		}
		all = append(all, rig.PipeOnBoard{Source: c.Words(document.Join(inner, "source"), f.Source, c.Source(inner)), Stock: drillstring.Stock{
			Pipe:   kind,
			Class:  drillstring.Class(c.Choice(document.Join(inner, "class"), f.Class, "new", "premium")),
			Length: unit.Length(c.Number(document.Join(inner, "length"), f.Length, entry.StockMeasure)),
		}})
	}
	return all
}

// mostKinds keeps the choices of a tapered string, 2^kinds, few.
const mostKinds = 6

func pipeNames(t drillstring.Table) (names []string) {
	for _, p := range t.Pipes {
		names = append(names, p.Name)
	}
	return names
}

// wholeString asks a ship file for all of its string, with sources.
func (c *clerk) wholeString(f shipFile) {
	c.stated("endurance", f.Endurance, "how long she stays at sea")
	c.stated("least_water_depth", f.LeastWaterDepth, "the shallowest water in which she holds station")
	c.stated("position_keeping", f.PositionKeeping, "how far off the hole she is moved in the roughest sea in which she works")
	if f.String == nil {
		c.Fault("string", "", "pipe and collars on board, and what derrick and hoist carry")
		return
	}
	if f.String.Pipe == nil {
		c.Fault("string.pipe", "", "the drill pipe on board, from the bit up")
	}
	for i, p := range f.String.Pipe {
		if !p.Source.Given {
			c.Fault(document.Join(document.At("string.pipe", i), "source"), "", "where the value comes from")
		}
	}
	for _, one := range append(f.String.figures(&rig.Ship{}), figureOf{key: "roll", given: f.String.Roll}, figureOf{key: "make_up_torque", given: f.String.MakeUpTorque}) {
		c.stated(document.Join("string", one.key), one.given, "a value with its source")
	}
	if turns := f.String.RotatingTorque; turns != nil {
		c.stated("string.rotating_torque", turns, "a value with its source")
	}
}

func (c *clerk) stated(path string, s *document.Spread, what string) {
	switch {
	case s == nil:
		c.Fault(path, "", what)
	case !s.Source.Given:
		c.Fault(document.Join(path, "source"), "", "where the value comes from")
	}
}
