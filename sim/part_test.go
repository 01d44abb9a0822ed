package sim

import (
	"context"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"coredays/model/unit"
	"coredays/model/voyage"
)

// inParts sails replications in parts that end where told.
func inParts(t *testing.T, v *voyage.Voyage, seed uint64, ends ...int) (parts []Part) {
	t.Helper()
	first := 0
	for i, end := range ends {
		p, err := SailPart(t.Context(), v, Run{Seed: seed, Replications: end - first, Workers: 1 + i%3, Precision: unit.Hour}, first)
		if err != nil {
			t.Fatal(err)
		}
		parts, first = append(parts, *p), end
	}
	return parts
}

func TestPartsPutTogetherAreTheWholeToTheLastBit(t *testing.T) {
	v := compiled(t, uncertain())
	whole := Replicate(t.Context(), v, Run{Seed: 3, Replications: 120})
	for _, ends := range [][]int{{120}, {1, 120}, {17, 18, 60, 119, 120}} {
		parts := inParts(t, v, 3, ends...)
		parts[0], parts[len(parts)-1] = parts[len(parts)-1], parts[0] // in whatever order they come
		joined, err := Join(t.Context(), v, parts)
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
	v := compiled(t, uncertain())
	slower := uncertain()
	slower.SeaDays -= unit.Day
	other := compiled(t, slower)
	good := func() []Part { return inParts(t, v, 3, 10, 20, 30) }
	for want, parts := range map[string][]Part{
		"replications 10 to 19 are in no part":          {good()[0], good()[2]},
		"replications 0 to 9 are in no part":            good()[1:],
		"replication 10 is in two parts":                append(good(), good()[1]),
		"of seed 4, another of seed 3":                  {good()[0], inParts(t, v, 4, 10, 20)[1]},
		"from replication 20 on is of another plan":     {good()[0], good()[1], inParts(t, other, 3, 20, 30)[1]},
		"from replication 0 on is of another plan, or ": inParts(t, other, 3, 10),
		"from replication 10 on is of another plan":     {good()[0], {Seed: 3, First: 10, Replications: 10}},
	} {
		if _, err := Join(t.Context(), v, parts); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("got %v, want %q", err, want)
		}
	}
}

func TestAPartThatWasStoppedIsNone(t *testing.T) {
	ctx, stop := context.WithCancel(t.Context())
	stop()
	if p, err := SailPart(ctx, compiled(t, uncertain()), Run{Replications: 3}, 0); err == nil {
		t.Errorf("got %+v", p)
	}
}
