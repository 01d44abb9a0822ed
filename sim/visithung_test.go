package sim

import (
	"testing"

	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/sim/simtest"
)

// Reached with the assembly hanging clear of the sea floor, a site needs neither thrusters down (30 min) nor assembly
// nor pipe run, but the bit is set over the hole (60 min); left so, neither is pipe pulled from clear of the floor nor
// the assembly laid down.
func TestAVisitBetweenHopsWithPipeHangingHasNoTrips(t *testing.T) {
	const down, up = 30*simtest.Minutes + 3*simtest.Hours - 60*simtest.Minutes + 1470.0/30/20*simtest.Hours, 1470.0/30/20*simtest.Hours + 1*simtest.Hours
	whole := visited(t, oneVisit()).Clock
	p := oneVisit()
	p.Reached = coring.PistonBHA
	if got := whole - visited(t, p).Clock; !simtest.Near(got, down) {
		t.Errorf("reached with pipe hanging it takes %.3f h less, by hand %.3f h", got/simtest.Hours, down/simtest.Hours)
	}
	p.LeavesHanging = true
	if got := whole - visited(t, p).Clock; !simtest.Near(got, down+up) {
		t.Errorf("left so too it takes %.3f h less, by hand %.3f h", got/simtest.Hours, (down+up)/simtest.Hours)
	}
	if left := visited(t, p); left.Bit != left.Clear() || left.BHA != coring.PistonBHA {
		t.Errorf("the bit is left at %.0f m with %v", left.Bit, left.BHA)
	}
}

// The other assembly has to come up first: the trip down is added to, not saved.
func TestTheWrongAssemblyHangingComesUpFirst(t *testing.T) {
	whole := visited(t, oneVisit()).Clock
	p := oneVisit()
	p.Reached = coring.RotaryBHA
	const more = 1470.0/30/20*simtest.Hours + 1*simtest.Hours - 30*simtest.Minutes // with pipe hanging no thrusters are let down
	if got := visited(t, p).Clock - whole; !simtest.Near(got, more) {
		t.Errorf("it takes %.3f h more, by hand %.3f h", got/simtest.Hours, more/simtest.Hours)
	}
}

// Pipe that hung is strapped already, also where it is recovered and goes down again with the other assembly.
func TestHangingPipeIsStrappedAlready(t *testing.T) {
	p := oneVisit()
	p.Reached = coring.RotaryBHA
	even := visited(t, p).Clock
	p.Ship.Rates[rig.Strapping] = spread.Just(10 * simtest.Minutes)
	if got := visited(t, p).Clock - even; got > 2*10*simtest.Minutes+1 { // 30 m of 1,500 m are one stand, and the corer's bit a part of one
		t.Errorf("strapping takes %.2f h with the pipe hanging", got/simtest.Hours)
	}
}
