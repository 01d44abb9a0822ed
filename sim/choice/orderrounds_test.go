package choice

import (
	"bytes"
	"encoding/gob"
	"testing"

	gocmp "github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"coredays/model/result"
	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/simtest"
	"coredays/sim/statistics"
)

// travelled is a value as it comes out of a file.
func travelled[T any](t *testing.T, value T) (out T) {
	t.Helper()
	var file bytes.Buffer
	if err := gob.NewEncoder(&file).Encode(value); err != nil {
		t.Fatal(err)
	}
	if err := gob.NewDecoder(&file).Decode(&out); err != nil {
		t.Fatal(err)
	}
	return out
}

// onMachines searches round by round on so many machines, each of which knows nothing but what came to it.
func onMachines(t *testing.T, s search, v *voyage.Voyage, run sim.Run, machines int) (c *result.Comparison, rounds int) {
	t.Helper()
	state := s.begin(v, run).State()
	arrived := func() *Search {
		h := s.begin(v, run)
		h.Resume(travelled(t, state))
		return h
	}
	for !state.Final {
		var pieces []*Piece
		for n := range machines {
			h := arrived()
			p, err := h.Sail(t.Context(), n*h.Units()/machines, (n+1)*h.Units()/machines)
			if err != nil {
				t.Fatal(err)
			}
			pieces = append(pieces, travelled(t, p))
		}
		merging := arrived()
		for _, p := range pieces {
			if !merging.IsOf(t.Context(), p) {
				t.Fatalf("units %d to %d of round %d are said to be of another search", p.First, p.End, state.Round)
			}
		}
		merging.Take(t.Context(), pieces...)
		state = merging.State()
	}
	c, err := arrived().Trial().Joined(run, func(v *voyage.Voyage) (*statistics.Results, error) { return sim.Replicate(t.Context(), v, run), nil })
	if err != nil {
		t.Fatal(err)
	}
	return c, state.Round
}

// Twelve sites in any order: the book, the stages and the last round, each in shares on several machines, come to the
// answer of one machine to the last bit.
func TestTwelveSitesInSharesAreTheSearchOfOneMachine(t *testing.T) {
	quick := usual
	quick.kept, quick.bookSize, quick.beam, quick.finalists = 40, 5, 200, 2
	v, run := simtest.Compiled(t, twelveSites()), sim.Run{Seed: 1, Replications: 24}
	whole := quick.bestOrder(t.Context(), v, run)
	for _, machines := range []int{5} {
		shared, rounds := onMachines(t, quick, v, run, machines)
		if d := gocmp.Diff(whole, shared, cmpopts.EquateNaNs()); d != "" {
			t.Errorf("%d machines (-one +shared):\n%s", machines, d)
		}
		if rounds < 3 {
			t.Errorf("%d machines: %d rounds, want the book, stages and the last", machines, rounds)
		}
	}
}

// A piece with one figure changed in its first unit, or of another seed, is told.
func TestAPieceOfAnotherSearchIsTold(t *testing.T) {
	quick := usual
	quick.kept, quick.bookSize, quick.beam = 30, 4, 100
	v, run := simtest.Compiled(t, twelveSites()), sim.Run{Seed: 1, Replications: 8}
	h := quick.begin(v, run)
	visits, err := h.Sail(t.Context(), 0, 2)
	if err != nil {
		t.Fatal(err)
	}
	other := run
	other.Seed = 2
	if !h.IsOf(t.Context(), visits) || quick.begin(v, other).IsOf(t.Context(), visits) {
		t.Error("visits of another seed are taken for its own")
	}
	short := *visits
	short.Visits = short.Visits[:len(short.Visits)-1]
	if h.IsOf(t.Context(), &short) {
		t.Error("visits without their last are taken")
	}
	rest, err := h.Sail(t.Context(), 2, h.Units())
	if err != nil {
		t.Fatal(err)
	}
	h.Take(t.Context(), visits, rest)
	stage, err := h.Sail(t.Context(), 5, 9)
	if err != nil {
		t.Fatal(err)
	}
	if !h.IsOf(t.Context(), stage) {
		t.Error("a piece of a stage is not known again")
	}
	if stage.Outcomes[0][daysNeeded]++; h.IsOf(t.Context(), stage) {
		t.Error("a second more is not noticed")
	}
}
