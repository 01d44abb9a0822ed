package drillstring

import (
	"testing"

	"coredays/model/unit"
)

// Common practice, no published output: a deep coring string is of the weight that ships run, the derrick
// carries it with blocks and overpull, and no pipe is ever in compression.
func TestDeepStringsKeepTheRulesOfThumb(t *testing.T) {
	c := asPublished(AllowedShare)
	c.Travelling = 50_000
	board := taperedBoard(t, "5-1/2 in 24.70 lb/ft S-140", New, 9150/2) // 9150 m of pipe on board: ODP legacy ship page
	reach := board.Reach(c)
	load := reach.String.HookLoad(c)
	if hanging := load.Static() - load.Travelling; hanging > HeaviestRun || hanging < HeaviestRun/2 {
		t.Errorf("deepest string weighs %s, strings of %s are run", hanging.Tell(), HeaviestRun.Tell())
	}
	if all := load.Static() + c.Overpull; all > DerrickClass {
		t.Errorf("%s on a derrick of %s", all.Tell(), DerrickClass.Tell())
	}
	collars := reach.String.Assembly[0].Length
	if height := reach.String.NeutralPoint(board.Assembly.UsableBitWeight(c.Fluid), c.Fluid); height >= collars {
		t.Errorf("neutral point at %s, collars end at %s", height.Tell(), collars.Tell())
	}
	published(t, "sea, m", HighestSea, 1, 9.1, 0.1)
	published(t, "derrick, MN", DerrickClass, 1e6, 5.3, 0.05)
}

func TestNothingHangsInACalmDayOfNoString(t *testing.T) {
	var s String
	if s.Length() != 0 || s.Buoyed(Seawater) != 0 || s.Worst(Conditions{}) != (Loading{}) || s.JerkForce(1) != 0 || s.RunningSpeed(Conditions{}) != 0 {
		t.Error("an empty string has length, weight or load")
	}
	if r := (Board{}).Reach(Conditions{}); r.Length != unit.Length(0) {
		t.Errorf("an empty board reaches %g m", r.Length)
	}
}
