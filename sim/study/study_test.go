package study_test

import (
	"context"
	"errors"
	"math"
	"slices"
	"testing"

	gocmp "github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/simtest"
	"coredays/sim/study"
)

// three are plans of unlike work and days.
func three(t *testing.T) (list []study.Plan, voyages []*voyage.Voyage) {
	t.Helper()
	for i, days := range []unit.Duration{20, 24, 30} {
		p := simtest.Uncertain()
		p.SeaDays = days * unit.Day
		if i == 1 {
			p.Sites[0].Items = p.Sites[0].Items[:1]
		}
		v := simtest.Compiled(t, p)
		voyages = append(voyages, v)
		list = append(list, study.Plan{Work: study.WorkOf(p), Voyage: func() (*voyage.Voyage, error) { return v, nil }})
	}
	return list, voyages
}

// gathered sails the replications between borders, counted plan after plan, and puts all together.
func gathered(t *testing.T, list []study.Plan, run sim.Run, borders ...int) *study.Gathering {
	t.Helper()
	g := study.Gather(run.Replications)
	for i := range borders[1:] {
		if err := study.Sail(t.Context(), list, run, borders[i], borders[i+1], g.Add); err != nil {
			t.Fatal(err)
		}
	}
	return g
}

// The figures of a plan are those of its simulation, to the last bit, however many workers and shares there are.
func TestFiguresOfAPlanAreThoseOfItsSimulation(t *testing.T) {
	list, voyages := three(t)
	for _, workers := range []int{1, 2, 7} {
		run := sim.Run{Seed: 5, Replications: 40, Workers: workers}
		for _, borders := range [][]int{{0, 120}, {0, 1, 39, 41, 120}} {
			g := gathered(t, list, run, borders...)
			if len(g.Plans) != 3 {
				t.Fatalf("%d plans", len(g.Plans))
			}
			for i, v := range voyages {
				want, got := sim.Replicate(t.Context(), v, run).Summary(), g.Plans[i]
				if d := gocmp.Diff(want.Needed.Total, got.Needed, cmpopts.EquateNaNs()); d != "" {
					t.Errorf("days needed of plan %d (-simulated +studied):\n%s", i, d)
				}
				a := &want.Allotted
				if d := gocmp.Diff(a.InHand, got.InHand, cmpopts.EquateNaNs()) + gocmp.Diff(a.Recovered, got.Recovered, cmpopts.EquateNaNs()); d != "" {
					t.Errorf("plan %d within the days (-simulated +studied):\n%s", i, d)
				}
				if a.ChancePrimary != got.ChancePrimary || a.ChanceAll != got.ChanceAll || a.Late != got.ChanceLate {
					t.Errorf("chances of plan %d: %g %g %g, simulated %g %g %g", i, got.ChancePrimary, got.ChanceAll, got.ChanceLate, a.ChancePrimary, a.ChanceAll, a.Late)
				}
			}
		}
	}
}

func TestProgressOfAStudyEndsWithAllReplications(t *testing.T) {
	list, _ := three(t)
	most := 0
	run := sim.Run{Replications: 20, Workers: 1, Progress: func(done int) { most = max(most, done) }}
	gathered(t, list, run, 0, 60)
	if most != 60 {
		t.Errorf("it ends at %d of 60", most)
	}
}

func TestTheFaultOfAPlanEndsAStudy(t *testing.T) {
	list, _ := three(t)
	wrong := errors.New("no such plan")
	list[1].Voyage = func() (*voyage.Voyage, error) { return nil, wrong }
	g := study.Gather(5)
	if err := study.Sail(t.Context(), list, sim.Run{Replications: 5, Workers: 2}, 0, 15, g.Add); err != wrong {
		t.Errorf("got %v", err)
	}
	if err := study.Sail(t.Context(), list, sim.Run{Replications: 5, Workers: 2}, 10, 15, func(*study.Piece) error { return wrong }); err != wrong {
		t.Errorf("of who takes the pieces: %v", err)
	}
}

func TestAStudyThatIsStoppedHasThePlansThatWereDone(t *testing.T) {
	list, _ := three(t)
	endless := simtest.Compiled(t, simtest.Endless()["waiting"])
	list[1].Voyage = func() (*voyage.Voyage, error) { return endless, nil }
	ctx, stop := context.WithCancel(t.Context())
	g := study.Gather(2)
	err := study.Sail(ctx, list, sim.Run{Replications: 2, Workers: 1}, 0, 6, func(p *study.Piece) error {
		stop() // when the first plan is done
		return g.Add(p)
	})
	if err != context.Canceled || len(g.Plans) != 1 {
		t.Errorf("%v, %d plans", err, len(g.Plans))
	}
}

func TestPiecesThatDoNotFollowEachOtherAreRefused(t *testing.T) {
	list, _ := three(t)
	var pieces []study.Piece
	if err := study.Sail(t.Context(), list, sim.Run{Replications: 4, Workers: 1}, 0, 12, func(p *study.Piece) error { pieces = append(pieces, *p); return nil }); err != nil {
		t.Fatal(err)
	}
	short := pieces[0]
	short.Rows = short.Rows[1:]
	for name, wrong := range map[string][]study.Piece{"the second first": {pieces[1]}, "one twice": {pieces[0], pieces[0]}, "one left out": {pieces[0], pieces[2]}, "figures missing": {short}} {
		g := study.Gather(4)
		var err error
		for i := range wrong {
			err = errors.Join(err, g.Add(&wrong[i]))
		}
		if err == nil {
			t.Errorf("%s: taken", name)
		}
	}
	run := sim.Run{Replications: 4}
	if is, err := pieces[1].IsOf(t.Context(), list, run); !is || err != nil {
		t.Errorf("a piece is not known again: %v", err)
	}
	changed := pieces[1]
	changed.Rows = slices.Clone(changed.Rows)
	changed.Rows[0] = math.Nextafter(changed.Rows[0], 0)
	if is, _ := changed.IsOf(t.Context(), list, run); is {
		t.Error("the last bit of a figure was changed, and nobody notices")
	}
	if is, _ := pieces[1].IsOf(t.Context(), list, sim.Run{Seed: 1, Replications: 4}); is {
		t.Error("a piece of another seed is taken")
	}
}

// Work is counted in cores: a hole of 95 m is ten strokes, to which site and hole add theirs; drilled ahead it is less.
func TestWorkGoesWithCores(t *testing.T) {
	p := simtest.OneSite(simtest.PistonHole("A", 95))
	one := study.WorkOf(p)
	p.Sites[0].Items = append(p.Sites[0].Items, simtest.PistonHole("B", 190))
	if more := study.WorkOf(p) - one; more != 20+8 {
		t.Errorf("a hole of twenty strokes more is %d units of work more, by hand 28", more)
	}
	p.Sites[0].Items[1].Hole.DrillAheadTo = 95
	if more := study.WorkOf(p) - one; more != 10+8 {
		t.Errorf("drilled ahead to its middle it is %d more, by hand 18", more)
	}
}
