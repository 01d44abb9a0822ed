package voyage

import (
	"math"

	"coredays/model/drillstring"
	"coredays/model/plan"
	"coredays/model/rig"
)

// OnBoard is what strings can be made of. The zero value knows no end.
type OnBoard struct {
	Strings  int     // assemblies that can be made up, one after the other is lost
	Pipe     float64 // m
	Assembly float64 // length of one, m
	Weight   float64 // that can be put on the bit with all pipe in tension and the torque that the rig has, N; 0 where nothing limits it
}

// onBoard counts it: an assembly needs its collars too.
func onBoard(ship *rig.Ship) OnBoard {
	t := &ship.Tubulars
	board, err := t.Board()
	if t.Assemblies.Value < 1 || err != nil {
		return OnBoard{}
	}
	strings := t.Assemblies.Value
	if t.Collars.Value > 0 && t.CollarsOnBoard.Value > 0 {
		strings = min(strings, math.Floor(t.CollarsOnBoard.Value/t.Collars.Value))
	}
	return OnBoard{Strings: int(strings), Pipe: float64(t.Length()), Assembly: float64(board.Assembly.Length()),
		Weight: float64(min(board.Assembly.UsableBitWeight(drillstring.Seawater), ship.Torque.WeightUnder()))}
}

// MakesUp reports whether a string for a hole can be made up after some were lost: so many assemblies, and pipe of a length, m.
func (v *Voyage) MakesUp(site *Site, h *plan.Item, assemblies int, pipe float64) bool {
	on := &v.OnBoard
	if on.Strings == 0 || assemblies == 0 {
		return true // what does not reach at all is for the check to tell
	}
	needed := float64(v.Plan.Ship.RigFloor) + site.Floor + float64(h.AskedFor()) - on.Assembly
	return assemblies < on.Strings && on.Pipe-pipe >= needed
}
