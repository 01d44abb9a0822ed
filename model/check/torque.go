package check

import (
	"fmt"
	"slices"

	"coredays/model/drillstring"
	"coredays/model/rig"
	"coredays/model/unit"
)

// klbfFt is the rig's unit of torque.
const klbfFt = drillstring.Torque(klbf) * drillstring.Torque(unit.Foot)

const neverMore = "; not to be exceeded" // each row of the table says that the maker's current one is to be looked up

// torques looks whether every connection of the string can be made up, and that rotating does not make
// it up further. Piston and rotary assemblies are of the same parts.
func (i *inspector) torques() {
	table, _ := drillstring.Published() // its faults are given where the assembly is made up
	var weakest drillstring.MakeUp
	for _, joint := range i.board.Connections() {
		m, err := table.MakeUp(joint)
		if err != nil {
			i.note(Finding{What: err.Error(), Verdict: Caution, Value: none, Limit: none, Source: "built-in table of make-up torque"})
			continue
		}
		i.makeUp(m)
		if weakest.Torque == 0 || m.Torque < weakest.Torque {
			weakest = m
		}
	}
	i.rotating(weakest)
}

// makeUp holds a connection against what the ship's tongs give.
func (i *inspector) makeUp(m drillstring.MakeUp) {
	gives := i.plan.Ship.Torque.MakeUp
	i.note(Finding{What: fmt.Sprintf("tongs reach the make-up torque of %s", m.Joint.Tell()),
		Verdict: remembered(atMost(float64(m.Torque), gives.Value), gives.Source, m.Source),
		Value:   float64(m.Torque / klbfFt), Limit: inKlbfFt(gives), Unit: "klbf ft", Source: "tongs: " + gives.Source + "; connection: " + m.Source + neverMore})
}

// rotating holds the most torque with which the string is rotated against the weakest connection, where
// the ship states one. The make-up torque is to be more (drillingmanual.com, torsional strength of tool joints).
func (i *inspector) rotating(weakest drillstring.MakeUp) {
	turns := i.plan.Ship.Torque.Rotating
	if turns.Value == 0 || weakest.Torque == 0 {
		return
	}
	f := Finding{What: fmt.Sprintf("rotating torque below the weakest make-up torque, %s", weakest.Joint.Tell()),
		Verdict: remembered(atMost(turns.Value, float64(weakest.Torque)), turns.Source, weakest.Source),
		Value:   inKlbfFt(turns), Limit: float64(weakest.Torque / klbfFt), Unit: "klbf ft",
		Source: "rotating: " + turns.Source + "; connection: " + weakest.Source + neverMore}
	if slices.ContainsFunc(i.board.Stock, func(s drillstring.Stock) bool { return s.Class != drillstring.New }) {
		f.Verdict = max(f.Verdict, Caution)
		f.Source = "joints of worn pipe take less than this limit, which is that of new ones; " + f.Source
	}
	i.note(f)
}

func inKlbfFt(f rig.Figure) float64 { return f.Value / float64(klbfFt) }
