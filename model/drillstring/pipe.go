package drillstring

import (
	"fmt"

	"coredays/model/unit"
)

// Class is the state of drill pipe by inspection.
type Class int

// The classes.
const (
	New     Class = iota
	Premium       // 80 % of the wall left, wear on the outside: API RP 7G as on the pipe data sheet
)

func (c Class) String() string { return [...]string{"new", "premium"}[c] }

// wall is the share of the wall that the class leaves.
func (c Class) wall() unit.Share { return [...]unit.Share{1, 0.8}[c] }

// Pipe is a kind of drill pipe.
type Pipe struct {
	Name       string
	Body       Tube
	Yield      unit.Pressure   // least yield of the grade
	Mass       unit.LinearMass // in air, with tool joints
	MassSource string
	Joint      Connection
	New        unit.Force // tensile rating of the body when new, from the table
	Premium    unit.Force // and of premium class
	Source     string     // of the ratings
}

// Connection is a rotary shouldered connection.
type Connection struct {
	Name string
	Tube // the tool joint
}

// Tell names the connection with its size to the fraction of an inch: "5-1/2 FH, 7 x 4.125 in".
func (c Connection) Tell() string {
	return fmt.Sprintf("%s, %.5g x %.5g in", c.Name, float64(c.Outside/inch), float64(c.Inside/inch))
}

// Rating is the tensile rating of the pipe body in the published table.
func (p Pipe) Rating(c Class) unit.Force {
	if c == Premium {
		return p.Premium
	}
	return p.New
}

// Bore is the narrowest way through pipe and tool joint.
func (p Pipe) Bore() unit.Length { return min(p.Body.Inside, p.Joint.Inside) }

// Section is a length of the pipe in a string. Worn pipe is given the mass of new pipe.
func (p Pipe) Section(length unit.Length, c Class) Section {
	return Section{Name: p.Name + ", " + c.String(), Length: length, Mass: p.Mass, Body: p.Body.Worn(c.wall()), Rating: p.Rating(c), Joint: p.Joint}
}

// Collar is a part of an assembly: a drill collar, or the pipe between collars and drill pipe.
type Collar struct {
	Name   string
	Body   Tube
	Yield  unit.Pressure
	Length unit.Length // of one joint
	Mass   unit.LinearMass
	Loads  bool // its weight may rest on the bit
	Joint  Connection
	Source string
}

// Section is a number of joints of the collar. Its rating is that of the body: in collars the thread
// is weaker, but they hang at the bottom, where tension is least.
func (c Collar) Section(joints int) Section {
	return Section{Name: c.Name, Length: c.Length * unit.Length(joints), Mass: c.Mass, Body: c.Body,
		Rating: unit.Force(float64(c.Yield) * float64(c.Body.Area())), Collar: c.Loads, Joint: c.Joint}
}
