package drillstring

import (
	_ "embed"
	"fmt"

	"coredays/model/unit"
)

//go:embed pipes.csv
var pipesFile string

//go:embed collars.csv
var collarsFile string

//go:embed makeup.csv
var makeUpFile string

// Table is pipe, collars and make-up torque for the sizes in use.
type Table struct {
	Pipes   []Pipe
	Collars []Collar
	MakeUps []MakeUp
}

// Published is the built-in table, each row with its source.
func Published() (Table, error) {
	var t Table
	return t, firstOf(
		readRows(pipesFile, func(r row) { t.Pipes = append(t.Pipes, r.pipe()) }),
		readRows(collarsFile, func(r row) { t.Collars = append(t.Collars, r.collar()) }),
		readRows(makeUpFile, func(r row) { t.MakeUps = append(t.MakeUps, r.makeUp()) }))
}

// Pipe finds a kind of pipe by its name.
func (t Table) Pipe(name string) (Pipe, error) {
	for _, p := range t.Pipes {
		if p.Name == name {
			return p, nil
		}
	}
	return Pipe{}, fmt.Errorf("no pipe %q in the table", name)
}

// Collar finds a collar by its name.
func (t Table) Collar(name string) (Collar, error) {
	for _, c := range t.Collars {
		if c.Name == name {
			return c, nil
		}
	}
	return Collar{}, fmt.Errorf("no collar %q in the table", name)
}

// CoreBore is the least bore of a coring string: barrels and logging tools pass (ODP TN31 Drill String
// tool sheet).
const CoreBore = 4.125 * inch

// CoringAssembly is the assembly of the ODP TN31 BHA tool sheet: a number of drill collars (4 to 13
// there), one tapered collar, six joints of transition pipe. Bit and barrel subs are left out.
func (t Table) CoringAssembly(collars int) (Assembly, error) {
	if collars < 1 {
		return nil, fmt.Errorf("%d drill collars: the bit needs weight", collars)
	}
	collar, err1 := t.Collar("8-1/4 x 4-1/8 in drill collar")
	tapered, err2 := t.Collar("tapered drill collar")
	transition, err3 := t.Collar("5-1/2 in transition pipe")
	if err := firstOf(err1, err2, err3); err != nil {
		return nil, err
	}
	return Assembly{collar.Section(collars), tapered.Section(1), transition.Section(6)}, nil
}

func (r row) pipe() Pipe {
	return Pipe{Name: r.text("name"), Body: Tube{r.length("outside"), r.length("inside")}, Yield: unit.Pressure(r.in(unit.OfPressure, "yield")),
		Mass: unit.LinearMass(r.in(unit.OfLinearMass, "mass")), MassSource: r.text("mass_source"),
		Joint: Connection{r.text("connection"), Tube{r.length("joint_outside"), r.length("joint_bore")}},
		New:   unit.Force(r.in(unit.OfForce, "new")), Premium: unit.Force(r.in(unit.OfForce, "premium")), Source: r.text("source")}
}

func (r row) collar() Collar {
	return Collar{Name: r.text("name"), Body: Tube{r.length("outside"), r.length("inside")}, Yield: unit.Pressure(r.in(unit.OfPressure, "yield")),
		Length: r.length("length"), Mass: unit.LinearMass(r.in(unit.OfLinearMass, "mass")), Loads: r.text("loads") == "yes",
		Joint: Connection{r.text("connection"), Tube{r.length("joint_outside"), r.length("joint_bore")}}, Source: r.text("source")}
}

func (r row) makeUp() MakeUp {
	return MakeUp{Joint: Connection{r.text("connection"), Tube{r.length("outside"), r.length("bore")}},
		Torque: Torque(r.in(unit.OfForce, "force_at_one_foot") * float64(unit.Foot)), Source: r.text("source")}
}
