package choice

import (
	"context"
	"math"
	"slices"
	"sync/atomic"

	"coredays/model/result"
	"coredays/model/workers"
)

// Piece is what was sailed in a round of a search: some of its units, one after the other.
type Piece struct {
	First, End int
	Visits     []float32 // of the visit book, by replication: s
	Outcomes   []outcome // of a stage
}

// Units is how many pieces of equal work the round has that are shared out: replications of the visit book; of a
// stage the replications of all orders, order after order. The last round has none of these but a trial.
func (h *Search) Units() int {
	if h.state.Visits {
		return h.bookSize
	}
	return len(h.state.Orders) * h.perOrder()
}

// perOrder is how many replications more each order has in this stage.
func (h *Search) perOrder() int {
	if len(h.state.Orders) == 0 {
		return 0
	}
	return h.state.UpTo - len(h.state.Outcomes[0])
}

// Sail sails some units of the round. Where the context ends first, that is an error.
func (h *Search) Sail(ctx context.Context, first, end int) (*Piece, error) {
	p := &Piece{First: first, End: end}
	if h.state.Visits {
		book := newVisitBook(h.v, h.bookSize)
		book.fill(ctx, h.seed, h.run.Workers, first, end)
		p.Visits = book.entries(first, end)
	} else {
		p.Outcomes = make([]outcome, end-first)
		h.stage(ctx, p)
	}
	return p, ctx.Err()
}

// stage sails the units of a piece.
func (h *Search) stage(ctx context.Context, p *Piece) {
	if p.End == p.First {
		return
	}
	each, had := h.perOrder(), len(h.state.Outcomes[0])
	var finished atomic.Int64
	workers.Share(ctx, h.run.Workers, p.First/each, (p.End-1)/each+1, func() func(int) {
		return func(i int) {
			from, to := max(p.First, i*each), min(p.End, (i+1)*each)
			c := candidate{v: h.v.InOrder(h.state.Orders[i])}
			c.sail(ctx, h.seed, had+from-i*each, had+to-i*each)
			copy(p.Outcomes[from-p.First:], c.outcomes)
			if f := int(finished.Add(int64(to - from))); h.run.Progress != nil {
				h.run.Progress(h.state.Sailed + f)
			}
		}
	})
}

// Take takes what all units of the round gave, in their order, and goes on to the next round. Where the context ends
// first, the search is of no use any more.
func (h *Search) Take(ctx context.Context, pieces ...*Piece) {
	if h.state.Visits {
		h.takeVisits(ctx, pieces)
	} else {
		h.takeStage(pieces)
	}
	h.state.Round++
}

// takeVisits picks the orders by the whole book.
func (h *Search) takeVisits(ctx context.Context, pieces []*Piece) {
	book := newVisitBook(h.v, h.bookSize)
	for _, p := range pieces {
		book.enter(p.First, p.End, p.Visits)
	}
	book.bounds()
	h.state.Visits = false
	h.choose(ctx, book)
	h.firstStage()
}

// firstStage sets how far the first stage goes.
func (h *Search) firstStage() {
	h.state.UpTo = max(min(h.least, h.run.Replications), min(h.run.Replications, h.perStage*h.run.Replications/max(1, len(h.state.Orders))))
	h.state.Final = h.fewEnough()
}

// fewEnough says that the orders left are as few as the last round sails.
func (h *Search) fewEnough() bool { return len(h.state.Orders) <= h.search.finalists+mostInFront }

// takeStage notes a stage and leaves out what is surely behind. Stages end when few enough are left, or when more
// replications than the answer has would not tell them apart.
func (h *Search) takeStage(pieces []*Piece) {
	s, each := &h.state, h.perOrder()
	s.Found.Stages = append(s.Found.Stages, result.Stage{Orders: len(s.Orders), Replications: s.UpTo})
	s.Sailed += h.Units()
	for _, p := range pieces {
		for k, o := range p.Outcomes {
			i := (p.First + k) / each
			s.Outcomes[i] = append(s.Outcomes[i], o)
		}
	}
	if s.UpTo >= h.run.Replications {
		s.Final = true
		return
	}
	s.UpTo = min(s.UpTo*growth, h.run.Replications)
	h.screen(max(h.search.finalists, h.perStage*h.run.Replications/s.UpTo))
	s.Final = h.fewEnough()
}

// Last says that the round is the last: that of the trial.
func (h *Search) Last() bool { return h.state.Final }

// Trial is the last round: the orders left, with the order of the plan and that with the shortest track to hold
// them against.
func (h *Search) Trial() *Trial { return &Trial{h.finalists(), h.conclude} }

// SearchState is a search between two rounds, as it goes from machine to machine. The plan, the seed and the
// replications are not in it.
type SearchState struct {
	Round     int // from 1 on
	Visits    bool
	Final     bool
	UpTo      int         // replications that the stage goes up to
	Orders    [][]int     // that are left
	Outcomes  [][]outcome // of these
	Able      []bool      // of these: not ruled out
	Shortest  []int       // the order with the shortest track
	Length    float64     // of it, m
	Sailed    int         // replications so far
	Estimates []Estimate
	Found     result.Search
}

// Estimate is what the visit book said of an order.
type Estimate struct {
	Name        string
	First, Days float64
}

// State is the search as it stands.
func (h *Search) State() SearchState { return h.state }

// Resume goes on from where a search stood.
func (h *Search) Resume(state SearchState) { h.state = state }

// IsOf reports whether a piece is of this round, by sailing its first unit again.
func (h *Search) IsOf(ctx context.Context, p *Piece) bool {
	if p.End == p.First {
		return len(p.Visits) == 0 && len(p.Outcomes) == 0
	}
	again, err := h.Sail(ctx, p.First, p.First+1)
	units := p.End - p.First
	return err == nil && len(p.Visits) == units*len(again.Visits) && len(p.Outcomes) == units*len(again.Outcomes) &&
		slices.EqualFunc(again.Visits, p.Visits[:len(again.Visits)], func(a, b float32) bool { return math.Float32bits(a) == math.Float32bits(b) }) &&
		slices.EqualFunc(again.Outcomes, p.Outcomes[:len(again.Outcomes)], sameOutcome)
}

// sameOutcome compares to the last bit.
func sameOutcome(a, b outcome) bool {
	for i := range a {
		if math.Float64bits(a[i]) != math.Float64bits(b[i]) {
			return false
		}
	}
	return true
}
