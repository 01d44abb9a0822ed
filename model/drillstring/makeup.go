package drillstring

import (
	"fmt"
	"math"
	"slices"

	"coredays/model/unit"
)

// Torque is in newton metres.
type Torque float64

// MakeUp is the torque with which a connection of given size is made up.
type MakeUp struct {
	Joint  Connection
	Torque Torque
	Source string
}

// MakeUp finds the torque for a connection: the size must be that of the table, since a wider bore bears
// less. The maker's current table decides; this one is for a check of a plan only.
func (t Table) MakeUp(joint Connection) (MakeUp, error) {
	const machining = 0.0002 // m; sizes are multiples of 1/16 in, 1.6 mm
	for _, m := range t.MakeUps {
		if m.Joint.Name == joint.Name && near(m.Joint.Outside, joint.Outside, machining) && near(m.Joint.Inside, joint.Inside, machining) {
			return m, nil
		}
	}
	return MakeUp{}, fmt.Errorf("no make-up torque is at hand for %s: take it from the maker's current table", joint.Tell())
}

// Connections lists the kinds of connection of the assembly and of all pipe on board, from the bit up.
func (b Board) Connections() (all []Connection) {
	sections := slices.Clone(b.Assembly)
	for _, s := range b.Stock {
		sections = append(sections, s.Pipe.Section(s.Length, s.Class))
	}
	for _, s := range sections {
		if !slices.Contains(all, s.Joint) {
			all = append(all, s.Joint)
		}
	}
	return all
}

// Check says what is wrong with a torque applied, when it may differ by a share from the table.
func (m MakeUp) Check(applied Torque, within unit.Share) error {
	off := float64(applied/m.Torque) - 1
	if math.Abs(off) <= float64(within) {
		return nil
	}
	return fmt.Errorf("%s made up with %.3g kN m, %+.0f %% off the table's %.3g kN m", m.Joint.Name, float64(applied)/1000, 100*off, float64(m.Torque)/1000)
}

func near(a, b, within unit.Length) bool { return math.Abs(float64(a-b)) <= float64(within) }
