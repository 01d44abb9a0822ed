package sim

import (
	"testing"
	"time"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/state"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/sim/simtest"
)

// casedHole is cored with one rotary core below its strings of casing.
func casedHole(strings ...plan.Casing) plan.Item {
	h := &plan.Hole{Reentry: plan.Cone, Casing: strings}
	h.DrillAheadTo = h.CasedTo()
	h.Stages = []plan.Stage{{With: coring.RCB, To: h.CasedTo() + 9.5}}
	return plan.Item{Name: "A", Rank: 1, Hole: h}
}

var (
	conductor = plan.Casing{Name: "20 in", To: 50}
	surface   = plan.Casing{Name: "10-3/4 in", To: 150, By: plan.InADrilledHole, Cemented: true}
)

// A cone with 50 m of casing is jetted in, a hole of 150 m drilled for the next string, which is cemented; its shoe is drilled out.
func TestTimeOfConeAndCasingIsTheSumDoneByHand(t *testing.T) {
	const h, m = simtest.Hours, simtest.Minutes
	pipe := func(metres float64) float64 { return metres / 30 / 20 * h }
	inHole := func(metres float64) float64 { return metres / 30 / 10 * h }
	s := inPort(t, simtest.OneSite(casedHole(conductor, surface)))
	goOnUntil(t, s, func() bool { return s.Hole.Cased.Strings == 1 })
	want := 2*h + float64(geo.Distance(geo.Position{}, geo.Position{Longitude: 1}))/5 + 30*m + // pilotage, passage, station
		4*h + 5*10*m + 3*h + pipe(1470-50) + // cone, five joints of 10 m, the assembly inside, the rest of the way on pipe
		30*m + 50/10.0*h + 3000/0.5 + 1*h // top drive, jetting at 10 m/h, looked at by camera, released
	if !simtest.Near(s.Clock, want) {
		t.Errorf("the cone stands after %.3f h, by hand %.3f h; by kind %v", s.Clock/h, want/h, s.Spent)
	}
	goOnUntil(t, s, func() bool { return s.Hole.Cased.Strings == 2 })
	want += pipe(1500) + 1*h + // running tool out and laid down
		3*h + pipe(1470) + 3000/0.5 + 1*h + inHole(50-0.001) + 100/40.0*h + 10*6*m + // drilled from 50 m to 150 m with ten connections
		inHole(150) + pipe(1500) + 1*h + // out
		15*10*m + pipe(1470-150) + 3000/0.5 + 0.3*h + inHole(150-0.001) + 1*h + 2*h // fifteen joints, landed and cemented
	if !simtest.Near(s.Clock, want) {
		t.Errorf("the second string stands after %.3f h, by hand %.3f h; by kind %v", s.Clock/h, want/h, s.Spent)
	}
	back := pipe(1500) + 1*h + 3*h + pipe(1470) + 3000/0.5 + 0.3*h + inHole(150-0.001)
	goOnUntil(t, s, func() bool { return !s.Hole.Cased.Plug })
	if back > 12*h {
		t.Fatal("the cement is hard before the bit is back: no test of waiting for it")
	}
	want += 12*h + 2*h // the cement sets for 12 h, of which a new assembly and its way down take 11.4 h
	if !simtest.Near(s.Clock, want) || !simtest.Near(s.Spent[activity.WaitForCement], 12*h-back) {
		t.Errorf("drilled out after %.3f h, by hand %.3f h; waited %.3f h for cement", s.Clock/h, want/h, s.Spent[activity.WaitForCement]/h)
	}
	goHome(t, s)
	if !simtest.Near(s.Sites[0].Cored, 9.5) || !simtest.Near(s.Items[0].Depth, 159.5) || s.Spent[activity.CentreBit] > 0 {
		t.Errorf("cored %g m to %g m, %.2f h of centre bit", s.Sites[0].Cored, s.Items[0].Depth, s.Spent[activity.CentreBit]/h)
	}
}

// Cement that sets for an hour longer is an hour of waiting more; a hanger that fails costs its 9 h, once a string; casing
// drilled in at half of 40 m/h takes 2.5 h for 50 m, where jetting takes 5 h.
func TestWhatCasingDependsOnChangesItsTimeByAHandSum(t *testing.T) {
	drilledIn := conductor
	drilledIn.By = plan.DrilledIn
	takes := func(first plan.Casing, change func(*plan.Plan)) float64 {
		p := simtest.OneSite(casedHole(first, surface))
		change(p)
		s := inPort(t, p)
		goOnUntil(t, s, func() bool { return s.Hole.Cased.Strings == 2 && !s.Hole.Cased.Plug })
		return s.Clock
	}
	usual := takes(conductor, func(*plan.Plan) {})
	for name, c := range map[string]struct {
		first  plan.Casing
		change func(*plan.Plan)
		more   float64
	}{
		"setting":     {conductor, func(p *plan.Plan) { p.Ship.Rates[rig.CementSetting] = simtest.Just(13 * simtest.Hours) }, 1 * simtest.Hours},
		"hanger":      {conductor, func(p *plan.Plan) { p.Ship.Rates[rig.HangerFailure] = simtest.Just(1) }, 2 * 9 * simtest.Hours},
		"no trouble":  {conductor, func(p *plan.Plan) { p.Ship.Rates[rig.HangerFailure], p.NoTrouble = simtest.Just(1), true }, 0},
		"drilling in": {drilledIn, func(*plan.Plan) {}, -2.5 * simtest.Hours},
	} {
		if got := takes(c.first, c.change) - usual; !simtest.Near(got, c.more) {
			t.Errorf("%s: %+.3f h, by hand %+.3f h", name, got/simtest.Hours, c.more/simtest.Hours)
		}
	}
}

// Below a shoe at 150 m, a hole of 300 m has 150 m of open wall: the usual hole's, so long as it has stood for a day. Sand above
// the shoe is cased off.
func TestCasedHoleSticksByWhatIsOpenBelowTheShoe(t *testing.T) {
	s := inOpenHole(t, 300, 1)
	s.Hole.Cased.Shoe = 150
	s.Hole.OpenedAt = s.Clock - float64(unit.Day)
	if got := s.Stickiness(); !simtest.Near(got, 1) {
		t.Errorf("%g times the usual chance, by hand once", got)
	}
	sand := s.Here.Layers[0]
	sand.Bottom = 140
	s.Voyage.Quantities[sand.Sticking].Median = 4
	mud := s.Here.Layers[0]
	mud.Sticking = s.Voyage.Sites[0].Layers[0].Recovery[coring.APC] // a factor of one
	s.Here.Layers = append([]voyage.Layer{sand}, mud)
	if got := s.Stickiness(); !simtest.Near(got, 1) {
		t.Errorf("%g times the usual chance below cased sand, by hand once", got)
	}
	s.Hole.Cased.Shoe = 0
	if got := s.Stickiness(); !simtest.Near(got, 8) {
		t.Errorf("%g times the usual chance with the sand open, by hand 4 x 300 m / 150 m", got)
	}
}

// A log that has the first of two strings and cement pumped two hours ago: the hole is drilled for the next one once it is hard.
func TestCasingIsTakenUpFromTheLog(t *testing.T) {
	first := conductor
	first.Cemented = true
	v := simtest.Compiled(t, simtest.OneSite(casedHole(first, surface)))
	at := v.Plan.Sails.Add(10 * 24 * time.Hour)
	st := &state.State{At: at, Sites: []state.Site{{State: state.InHand, Arrived: at.Add(-24 * time.Hour), FloorKnown: true}},
		Items: []state.Item{{State: state.InHand, Began: at.Add(-24 * time.Hour), Depth: 50, Spudded: 1}}}
	st.Now = state.Ship{OnStation: true, Bit: 1500, Assembly: coring.RunningTool, Longest: 1600, TriedOut: true, LastService: at,
		Hole: state.Hole{Open: true, Funnel: true, Depth: 50, Cased: state.Cased{Strings: 1, Plug: true, Cemented: at.Add(-2 * time.Hour)}}}
	x, s := TakeUp(v, st), newExpedition(v)
	s.begins(1, 0)
	s.takesUp(x)
	if s.Hole.Cased.Shoe != 50 || !simtest.Near(s.Hole.Cased.Hard-s.Clock, 10*simtest.Hours) || s.Hole.Aim != 150 || s.Assembly() != coring.RotaryBHA {
		t.Errorf("%+v, drilled to %g m with %v", s.Hole.Cased, s.Hole.Aim, s.Assembly())
	}
}
