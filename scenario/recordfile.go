package scenario

import (
	"coredays/model/ground"
	"coredays/model/unit"
)

// The structs here mirror record.yaml.

type recordFile struct {
	Version     text            `mapstructure:"version"`
	Eras        []eraFile       `mapstructure:"eras"`
	Slower      slowerFile      `mapstructure:"rotary_slower"`
	Work        workFile        `mapstructure:"work"`
	Lithologies []lithologyFile `mapstructure:"lithologies"`
}

type eraFile struct {
	From    text `mapstructure:"from"`
	Piston  text `mapstructure:"piston"`
	Rotated text `mapstructure:"rotated"`
}

type slowerFile struct {
	InWater fromFile `mapstructure:"in_water"`
}

type fromFile struct {
	From text `mapstructure:"from"`
	Rate text `mapstructure:"rate"`
}

type workFile struct {
	WithLeg   text          `mapstructure:"with_leg"`
	WithWater text          `mapstructure:"with_water"`
	WithDepth text          `mapstructure:"with_depth"`
	Piston    sometimesFile `mapstructure:"piston"`
	Extended  sometimesFile `mapstructure:"extended"`
	Rotary    sometimesFile `mapstructure:"rotary"`
	Bare      sometimesFile `mapstructure:"rotary_from_the_sea_floor"`
	Coreless  sometimesFile `mapstructure:"without_cores"`
}

type sometimesFile struct {
	Chance text `mapstructure:"chance"`
	Median text `mapstructure:"median"`
	Factor text `mapstructure:"factor"`
}

var (
	yearMeasure  = measure{of: unit.OfCount, least: 1900, most: 2200, whole: true}
	paceMeasure  = measure{of: unit.OfShare, symbol: "%", above: true, most: 100}
	powerMeasure = measure{of: unit.OfCount, least: -3, most: 3}
)

// readUnrecorded reads what a record leaves open.
func readUnrecorded(name string, data []byte) (Unrecorded, Faults) {
	r, f, readable := mirrored[recordFile](name, data)
	c := unrecordedReader{r}
	if !readable {
		return Unrecorded{}, c.faults
	}
	c.version(f.Version)
	u := Unrecorded{
		WithLeg:   c.number("work.with_leg", f.Work.WithLeg, shareMeasure),
		WithWater: c.number("work.with_water", f.Work.WithWater, powerMeasure),
		WithDepth: c.number("work.with_depth", f.Work.WithDepth, powerMeasure),
	}
	u.InWater = c.slower("rotary_slower.in_water", f.Slower.InWater)
	for i, e := range f.Eras {
		path := at("eras", i)
		u.Eras = append(u.Eras, Era{int(c.number(join(path, "from"), e.From, yearMeasure)),
			c.number(join(path, "piston"), e.Piston, paceMeasure), c.number(join(path, "rotated"), e.Rotated, paceMeasure)})
	}
	for class, s := range [UnrecordedClasses]sometimesFile{f.Work.Piston, f.Work.Extended, f.Work.Rotary, f.Work.Bare, f.Work.Coreless} {
		u.Work[class] = c.sometimes("work."+workKeys[class], s)
	}
	u.Ground = c.grounds(f.Lithologies)
	return u, c.faults
}

// unrecordedReader reads the parts of record.yaml.
type unrecordedReader struct{ *reader }

var workKeys = [UnrecordedClasses]string{"piston", "extended", "rotary", "rotary_from_the_sea_floor", "without_cores"}

func (c unrecordedReader) slower(path string, f fromFile) Slower {
	return Slower{From: c.number(join(path, "from"), f.From, waterLimitMeasure), Rate: c.number(join(path, "rate"), f.Rate, paceMeasure)}
}

func (c unrecordedReader) sometimes(path string, f sometimesFile) Sometimes {
	return Sometimes{
		Chance: c.number(join(path, "chance"), f.Chance, shareMeasure),
		Median: c.number(join(path, "median"), f.Median, taskMeasure),
		Factor: c.number(join(path, "factor"), f.Factor, factorMeasure),
	}
}

// grounds reads the lithologies, of which there is one for each ground.
func (c unrecordedReader) grounds(given []lithologyFile) (all [grounds]ground.Lithology) {
	if len(given) != grounds {
		c.fault("lithologies", "", "one for each ground of a record: soft, rotary and bare")
		return all
	}
	for i, f := range given {
		all[i] = readLithology(c.reader, at("lithologies", i), f)
	}
	return all
}
