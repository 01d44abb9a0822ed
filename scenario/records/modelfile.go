package records

import (
	"coredays/model/coring"
	"coredays/model/ground"
	"coredays/model/score"
	"coredays/model/spread"
	"coredays/model/unit"
	"coredays/scenario/document"
	"coredays/scenario/entry"
	"coredays/scenario/fault"
	"coredays/scenario/lithology"
)

// The structs here mirror record.yaml.

type recordFile struct {
	Version     document.Text    `mapstructure:"version"`
	Eras        []eraFile        `mapstructure:"eras"`
	Slower      slowerFile       `mapstructure:"rotary_slower"`
	Work        workFile         `mapstructure:"work"`
	Leg         legFile          `mapstructure:"leg"`
	Described   []toldFile       `mapstructure:"described"`
	Lithologies []lithology.File `mapstructure:"lithologies"`
}

type toldFile struct {
	Classes          []document.Text `mapstructure:"classes"`
	Rotary           document.Text   `mapstructure:"rotary"`
	Extended         document.Text   `mapstructure:"extended"`
	RotaryRecovery   document.Text   `mapstructure:"rotary_recovery"`
	ExtendedRecovery document.Text   `mapstructure:"extended_recovery"`
}

type eraFile struct {
	From    document.Text `mapstructure:"from"`
	Piston  document.Text `mapstructure:"piston"`
	Rotated document.Text `mapstructure:"rotated"`
	Cores   eraCoresFile  `mapstructure:"cores"`
}

type eraCoresFile struct {
	Piston   document.Text `mapstructure:"piston"`
	Extended document.Text `mapstructure:"extended"`
	Rotary   document.Text `mapstructure:"rotary"`
}

type slowerFile struct {
	InWater fromFile `mapstructure:"in_water"`
}

type fromFile struct {
	From document.Text `mapstructure:"from"`
	Rate document.Text `mapstructure:"rate"`
}

type workFile struct {
	WithLeg   document.Text `mapstructure:"with_leg"`
	WithWater document.Text `mapstructure:"with_water"`
	WithDepth document.Text `mapstructure:"with_depth"`
	Piston    sometimesFile `mapstructure:"piston"`
	Extended  sometimesFile `mapstructure:"extended"`
	Rotary    sometimesFile `mapstructure:"rotary"`
	Bare      sometimesFile `mapstructure:"rotary_from_the_sea_floor"`
	Coreless  sometimesFile `mapstructure:"without_cores"`
}

type legFile struct {
	Share  document.Text `mapstructure:"share"`
	Common document.Text `mapstructure:"common"`
	Time   legTimeFile   `mapstructure:"time"`
}

type legTimeFile struct {
	Mean      document.Text `mapstructure:"mean"`
	Deviation document.Text `mapstructure:"standard_deviation"`
	Otherwise document.Text `mapstructure:"otherwise"`
	Freedom   document.Text `mapstructure:"degrees_of_freedom"`
	Scale     document.Text `mapstructure:"scale"`
}

type sometimesFile struct {
	Chance document.Text `mapstructure:"chance"`
	Median document.Text `mapstructure:"median"`
	Factor document.Text `mapstructure:"factor"`
}

var (
	yearMeasure    = entry.Measure{Of: unit.OfCount, Least: 1900, Most: 2200, Whole: true}
	paceMeasure    = entry.Measure{Of: unit.OfShare, Symbol: "%", Above: true, Most: 100}
	coreMeasure    = entry.Measure{Of: unit.OfShare, Symbol: "%", Least: 0.5, Most: 1.1}
	freedomMeasure = entry.Measure{Of: unit.OfCount, Least: 1, Most: 100}
	powerMeasure   = entry.Measure{Of: unit.OfCount, Least: -3, Most: 3}
)

// readUnrecorded reads what a record leaves open.
func readUnrecorded(name string, data []byte) (Unrecorded, fault.List) {
	r, f, readable := entry.Mirrored[recordFile](name, data)
	c := unrecordedReader{r}
	if !readable {
		return Unrecorded{}, c.Faults
	}
	c.Version(f.Version)
	u := Unrecorded{
		WithLeg:   c.Number("work.with_leg", f.Work.WithLeg, entry.ShareMeasure),
		WithWater: c.Number("work.with_water", f.Work.WithWater, powerMeasure),
		WithDepth: c.Number("work.with_depth", f.Work.WithDepth, powerMeasure),
	}
	u.InLeg = spread.Quantity{Shape: normalScore{}, Common: c.Number("leg.common", f.Leg.Common, entry.ShareMeasure)}
	u.InLeg.Shares[spread.Expedition] = c.Number("leg.share", f.Leg.Share, entry.ShareMeasure)
	u.InLeg.Shares[spread.Run] = 1 - u.InLeg.Shares[spread.Expedition]
	u.LegTime = c.legTime("leg.time", f.Leg.Time)
	u.InWater = c.slower("rotary_slower.in_water", f.Slower.InWater)
	for i, e := range f.Eras {
		u.Eras = append(u.Eras, c.era(document.At("eras", i), e))
	}
	for class, s := range [UnrecordedClasses]sometimesFile{f.Work.Piston, f.Work.Extended, f.Work.Rotary, f.Work.Bare, f.Work.Coreless} {
		u.Work[class] = c.sometimes("work."+workKeys[class], s)
	}
	u.Ground = c.grounds(f.Lithologies)
	for i, t := range f.Described {
		u.Described = append(u.Described, c.told(document.At("described", i), t))
	}
	return u, c.Faults
}

// unrecordedReader reads the parts of record.yaml.
type unrecordedReader struct{ *entry.Reader }

func (c unrecordedReader) era(path string, f eraFile) Era {
	e := Era{From: int(c.Number(document.Join(path, "from"), f.From, yearMeasure)),
		Piston: c.Number(document.Join(path, "piston"), f.Piston, paceMeasure), Rotated: c.Number(document.Join(path, "rotated"), f.Rotated, paceMeasure)}
	cores := document.Join(path, "cores")
	piston := c.Number(document.Join(cores, "piston"), f.Cores.Piston, coreMeasure)
	e.Cores = [coring.Tools]float64{coring.APC: piston, coring.HLAPC: piston,
		coring.XCB: c.Number(document.Join(cores, "extended"), f.Cores.Extended, coreMeasure), coring.RCB: c.Number(document.Join(cores, "rotary"), f.Cores.Rotary, coreMeasure)}
	return e
}

func (c unrecordedReader) told(path string, f toldFile) Told {
	t := Told{Rotary: c.Number(document.Join(path, "rotary"), f.Rotary, paceMeasure), Extended: c.Number(document.Join(path, "extended"), f.Extended, paceMeasure)}
	for i, class := range f.Classes {
		t.Classes = append(t.Classes, c.Name(document.At(document.Join(path, "classes"), i), class))
	}
	t.Recovery = [coring.Tools]float64{coring.APC: 1, coring.HLAPC: 1, coring.XCB: c.Number(document.Join(path, "extended_recovery"), f.ExtendedRecovery, paceMeasure),
		coring.RCB: c.Number(document.Join(path, "rotary_recovery"), f.RotaryRecovery, paceMeasure)}
	return t
}

func (c unrecordedReader) legTime(path string, f legTimeFile) score.LegTime {
	days := func(key string, text document.Text) float64 {
		return c.Number(document.Join(path, key), text, entry.TaskMeasure) / float64(unit.Day)
	}
	return score.LegTime{
		Mean: days("mean", f.Mean), SD: days("standard_deviation", f.Deviation),
		Otherwise: c.Number(document.Join(path, "otherwise"), f.Otherwise, entry.ShareMeasure),
		Freedom:   c.Number(document.Join(path, "degrees_of_freedom"), f.Freedom, freedomMeasure),
		Scale:     c.Number(document.Join(path, "scale"), f.Scale, paceMeasure),
	}
}

var workKeys = [UnrecordedClasses]string{"piston", "extended", "rotary", "rotary_from_the_sea_floor", "without_cores"}

func (c unrecordedReader) slower(path string, f fromFile) Slower {
	return Slower{From: c.Number(document.Join(path, "from"), f.From, entry.WaterLimitMeasure), Rate: c.Number(document.Join(path, "rate"), f.Rate, paceMeasure)}
}

func (c unrecordedReader) sometimes(path string, f sometimesFile) Sometimes {
	return Sometimes{
		Chance: c.Number(document.Join(path, "chance"), f.Chance, entry.ShareMeasure),
		Median: c.Number(document.Join(path, "median"), f.Median, entry.TaskMeasure),
		Factor: c.Number(document.Join(path, "factor"), f.Factor, entry.FactorMeasure),
	}
}

// grounds reads the lithologies, of which there is one for each ground.
func (c unrecordedReader) grounds(given []lithology.File) (all [grounds]ground.Lithology) {
	if len(given) != grounds {
		c.Fault("lithologies", "", "one for each ground of a record: soft, rotary and bare")
		return all
	}
	for i, f := range given {
		all[i] = lithology.Read(c.Reader, document.At("lithologies", i), f)
	}
	return all
}
