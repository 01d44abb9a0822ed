package parts_test

import (
	"cmp"
	"context"
	"slices"
	"strings"
	"testing"

	gocmp "github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/parts"
	"coredays/sim/simtest"
	"coredays/sim/statistics"
)

// inParts sails replications in parts that end where stated.
func inParts(t *testing.T, v *voyage.Voyage, seed uint64, ends ...int) (list []*parts.Part) {
	t.Helper()
	first := 0
	for i, end := range ends {
		run := sim.Run{Seed: seed, First: first, Replications: end - first, Workers: 1 + i%3, Precision: unit.Hour}
		if err := parts.Sail(t.Context(), v, run, func(p *parts.Part) error { list = append(list, p); return nil }); err != nil {
			t.Fatal(err)
		}
		first = end
	}
	return list
}

// joined puts parts together in the order of their replications.
func joined(ctx context.Context, v *voyage.Voyage, list []*parts.Part) (*statistics.Results, error) {
	j := parts.Join(v, sim.Run{Seed: 3, Replications: 30})
	for _, p := range list {
		if err := j.Add(ctx, p, true); err != nil {
			return nil, err
		}
	}
	return j.Results, nil
}

func TestPartsPutTogetherAreTheWholeToTheLastBit(t *testing.T) {
	v := simtest.Compiled(t, simtest.Uncertain())
	whole := sim.Replicate(t.Context(), v, sim.Run{Seed: 3, Replications: 120})
	for _, ends := range [][]int{{120}, {1, 120}, {17, 18, 60, 119, 120}} {
		got, err := joined(t.Context(), v, inParts(t, v, 3, ends...))
		if err != nil {
			t.Fatal(err)
		}
		if d := gocmp.Diff(whole.Closely(), got.Closely(), cmpopts.EquateNaNs()); d != "" {
			t.Errorf("parts to %v (-whole +parts):\n%s", ends, d)
		}
		if d := gocmp.Diff(whole.Columns(), got.Columns(), cmpopts.EquateNaNs()); d != "" {
			t.Errorf("parts to %v, replication by replication (-whole +parts):\n%s", ends, d)
		}
	}
}

// A long run comes in parts of bounded length, one after the other, with its progress counted through.
func TestALongRunComesInSeveralParts(t *testing.T) {
	v := simtest.Compiled(t, simtest.OneSite(simtest.PistonHole("A", 30)))
	var lengths []int
	next, most := 5, 0
	run := sim.Run{Seed: 3, First: 5, Replications: 2500, Workers: 1, Progress: func(done int) { most = max(most, done) }}
	err := parts.Sail(t.Context(), v, run, func(p *parts.Part) error {
		if p.First != next {
			t.Errorf("a part from replication %d on follows one that ends before %d", p.First, next)
		}
		next += p.Replications
		lengths = append(lengths, p.Replications)
		return nil
	})
	if err != nil || next != 2505 || len(lengths) < 2 || slices.Max(lengths) > 1024 || most != 2500 {
		t.Errorf("%v: parts of %v replications, progress up to %d", err, lengths, most)
	}
}

func TestPartsThatDoNotBelongTogetherAreRefused(t *testing.T) {
	v := simtest.Compiled(t, simtest.Uncertain())
	slower := simtest.Uncertain()
	slower.SeaDays -= unit.Day
	other := simtest.Compiled(t, slower)
	good := func() []*parts.Part { return inParts(t, v, 3, 10, 20, 30) }
	for want, list := range map[string][]*parts.Part{
		"replications 10 to 19 are in no part":          {good()[0], good()[2]},
		"replications 0 to 9 are in no part":            good()[1:],
		"replication 10 is in two parts":                {good()[0], good()[1], good()[1]},
		"of seed 4, another of seed 3":                  {good()[0], inParts(t, v, 4, 10, 20)[1]},
		"from replication 20 on is of another plan":     {good()[0], good()[1], inParts(t, other, 3, 20, 30)[1]},
		"from replication 0 on is of another plan, or ": inParts(t, other, 3, 10),
		"from replication 10 on is of another plan":     {good()[0], {Seed: 3, First: 10, Replications: 10}},
	} {
		slices.SortStableFunc(list, func(a, b *parts.Part) int { return cmp.Compare(a.First, b.First) })
		if _, err := joined(t.Context(), v, list); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("got %v, want %q", err, want)
		}
	}
}

func TestAPartThatWasStoppedIsNone(t *testing.T) {
	ctx, stop := context.WithCancel(t.Context())
	stop()
	err := parts.Sail(ctx, simtest.Compiled(t, simtest.Uncertain()), sim.Run{Replications: 3}, func(p *parts.Part) error {
		t.Errorf("got %+v", p)
		return nil
	})
	if err == nil {
		t.Error("what was stopped is taken for whole")
	}
}

func TestAPartThatIsStoppedIsNoAnswer(t *testing.T) {
	v := simtest.Compiled(t, simtest.Endless()["waiting"])
	layout, slices := statistics.NewLayout(v), statistics.NewSlices(v).All
	part := parts.Part{Seed: 3, Replications: 1, Unconstrained: make([]float64, layout.Width), Constrained: make([]float64, layout.Width), Marks: make([]float32, v.Items*statistics.DepthMarks),
		Cut: make([]int64, slices), Recovered: make([]int64, slices), Covered: make([]int64, slices), Visits: make([]int64, len(v.Sites))}
	simtest.EndsSoon(t, "a part", func(ctx context.Context) {
		if err := parts.Sail(ctx, v, sim.Run{Replications: 40, Workers: 2}, func(*parts.Part) error { return nil }); err == nil {
			t.Error("what was stopped is taken for whole")
		}
	})
	simtest.EndsSoon(t, "joining", func(ctx context.Context) {
		if _, err := joined(ctx, v, []*parts.Part{&part}); err != context.DeadlineExceeded {
			t.Errorf("got %v", err)
		}
	})
}
