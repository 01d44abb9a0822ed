package parts_test

import (
	"context"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/parts"
	"coredays/sim/simtest"
	"coredays/sim/statistics"
)

// inParts sails replications in parts that end where stated.
func inParts(t *testing.T, v *voyage.Voyage, seed uint64, ends ...int) (list []parts.Part) {
	t.Helper()
	first := 0
	for i, end := range ends {
		p, err := parts.Sail(t.Context(), v, sim.Run{Seed: seed, First: first, Replications: end - first, Workers: 1 + i%3, Precision: unit.Hour})
		if err != nil {
			t.Fatal(err)
		}
		list, first = append(list, *p), end
	}
	return list
}

func TestPartsPutTogetherAreTheWholeToTheLastBit(t *testing.T) {
	v := simtest.Compiled(t, simtest.Uncertain())
	whole := sim.Replicate(t.Context(), v, sim.Run{Seed: 3, Replications: 120})
	for _, ends := range [][]int{{120}, {1, 120}, {17, 18, 60, 119, 120}} {
		list := inParts(t, v, 3, ends...)
		list[0], list[len(list)-1] = list[len(list)-1], list[0] // in whatever order they come
		joined, err := parts.Join(t.Context(), v, list)
		if err != nil {
			t.Fatal(err)
		}
		if d := cmp.Diff(whole.Closely(), joined.Closely(), cmpopts.EquateNaNs()); d != "" {
			t.Errorf("parts to %v (-whole +parts):\n%s", ends, d)
		}
		if d := cmp.Diff(whole.Columns(), joined.Columns(), cmpopts.EquateNaNs()); d != "" {
			t.Errorf("parts to %v, replication by replication (-whole +parts):\n%s", ends, d)
		}
	}
}

func TestPartsThatDoNotBelongTogetherAreRefused(t *testing.T) {
	v := simtest.Compiled(t, simtest.Uncertain())
	slower := simtest.Uncertain()
	slower.SeaDays -= unit.Day
	other := simtest.Compiled(t, slower)
	good := func() []parts.Part { return inParts(t, v, 3, 10, 20, 30) }
	for want, list := range map[string][]parts.Part{
		"replications 10 to 19 are in no part":          {good()[0], good()[2]},
		"replications 0 to 9 are in no part":            good()[1:],
		"replication 10 is in two parts":                append(good(), good()[1]),
		"of seed 4, another of seed 3":                  {good()[0], inParts(t, v, 4, 10, 20)[1]},
		"from replication 20 on is of another plan":     {good()[0], good()[1], inParts(t, other, 3, 20, 30)[1]},
		"from replication 0 on is of another plan, or ": inParts(t, other, 3, 10),
		"from replication 10 on is of another plan":     {good()[0], {Seed: 3, First: 10, Replications: 10}},
	} {
		if _, err := parts.Join(t.Context(), v, list); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("got %v, want %q", err, want)
		}
	}
}

func TestAPartThatWasStoppedIsNone(t *testing.T) {
	ctx, stop := context.WithCancel(t.Context())
	stop()
	if p, err := parts.Sail(ctx, simtest.Compiled(t, simtest.Uncertain()), sim.Run{Replications: 3}); err == nil {
		t.Errorf("got %+v", p)
	}
}

func TestAPartThatIsStoppedIsNoAnswer(t *testing.T) {
	v := simtest.Compiled(t, simtest.Endless()["waiting"])
	layout, slices := statistics.NewLayout(v), statistics.NewSlices(v).All
	part := parts.Part{Replications: 1, Unconstrained: make([]float64, layout.Width), Constrained: make([]float64, layout.Width), Marks: make([]float32, v.Items*statistics.DepthMarks),
		Cut: make([]int64, slices), Recovered: make([]int64, slices), Covered: make([]int64, slices), Visits: make([]int64, len(v.Sites))}
	simtest.EndsSoon(t, "a part", func(ctx context.Context) {
		if _, err := parts.Sail(ctx, v, sim.Run{Replications: 40, Workers: 2}); err == nil {
			t.Error("what was stopped is taken for whole")
		}
	})
	simtest.EndsSoon(t, "joining", func(ctx context.Context) {
		if _, err := parts.Join(ctx, v, []parts.Part{part}); err != context.DeadlineExceeded {
			t.Errorf("got %v", err)
		}
	})
}
