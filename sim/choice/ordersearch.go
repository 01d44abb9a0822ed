package choice

import (
	"cmp"
	"context"
	"slices"
	"strings"

	"gonum.org/v1/gonum/stat"

	"coredays/model/chance"
	"coredays/model/result"
	"coredays/model/voyage"
	"coredays/sim"
)

// search is how much is done to find the best order. Its figures are our choice: on two processors
// they answer twelve sites of some 700 cores in about twenty seconds.
type search struct {
	few       int // orders up to which all are sailed
	kept      int // orders sailed of those only estimated
	bookSize  int // replications of the visit book
	beam      int
	least     int // replications of the first stage
	perStage  int // replications of a stage in all, over those of the answer
	finalists int
}

var usual = search{few: 720, kept: 400, bookSize: 100, beam: widestBeam, least: 8, perStage: 4, finalists: 10}

// growth is how many times more replications a stage has than the one before.
const growth = 4

// BestOrder looks for the order in which to visit the sites. Where few orders keep the rules, all
// are sailed; where many do, the visit book picks those to sail. Stages of more and more
// replications rule out what is surely behind, and the last orders are sailed anew with the random stream of
// the run's seed, which none of them was picked for.
func BestOrder(ctx context.Context, v *voyage.Voyage, run sim.Run) *result.Comparison {
	return usual.bestOrder(ctx, v, run)
}

func (s search) bestOrder(ctx context.Context, v *voyage.Voyage, run sim.Run) *result.Comparison {
	h := s.begin(v, run)
	for !h.Last() && ctx.Err() == nil {
		if piece, err := h.Sail(ctx, 0, h.Units()); err == nil {
			h.Take(ctx, piece)
		}
	}
	if ctx.Err() != nil {
		return &result.Comparison{Question: result.WhichOrder, Seed: run.Seed, StoppedEarly: true}
	}
	if progress, before := run.Progress, h.state.Sailed; progress != nil {
		run.Progress = func(done int) { progress(before + done) }
	}
	return h.Trial().Sail(ctx, run)
}

// Search is a search for the best order under way, round by round: the visits of the book, where there are many
// orders; the stages; and the last orders with all replications. Each round can be sailed here, or in shares elsewhere.
type Search struct {
	search
	v     *voyage.Voyage
	run   sim.Run
	rules orderRules
	seed  uint64
	state SearchState
}

// NewSearch begins a search.
func NewSearch(v *voyage.Voyage, run sim.Run) *Search { return usual.begin(v, run) }

func (s search) begin(v *voyage.Voyage, run sim.Run) *Search {
	h := &Search{search: s, v: v, run: run, rules: orderRulesOf(v), seed: chance.SeedOf(run.Seed, "search for an order"), state: SearchState{Round: 1}}
	h.state.Found.Rule = comparisonMethod
	orders, all := h.rules.allOrders(h.few)
	if !all {
		h.state.Visits = true
		return h
	}
	h.state.Found.Allowed = len(orders)
	for _, order := range orders {
		h.measure(order)
		h.add(order)
	}
	h.firstStage()
	return h
}

// choose picks the orders to sail by the visit book.
func (h *Search) choose(ctx context.Context, book *visitBook) {
	estimated, dropped := book.estimateOrders(ctx, h.rules, h.beam, h.run.Workers)
	found := &h.state.Found
	found.Allowed, found.Estimated, found.Uncounted = len(estimated), len(estimated), dropped
	if len(estimated) == 0 {
		return
	}
	for i := range estimated {
		h.measure(estimated[i].order)
	}
	h.state.Shortest = h.rules.withAlternates(h.state.Shortest)
	h.keep(estimated)
}

// placeOf is the index of the alternative of a name; -1 where it was not sailed.
func placeOf(c *result.Comparison, name string) int {
	return slices.IndexFunc(c.Alternatives, func(a result.Alternative) bool { return a.Name == name })
}

// byMerit puts what was sailed in the order of merit.
func byMerit(sailed []sailedAlternative) []sailedAlternative {
	var list []sailedAlternative
	for _, i := range ranked(allMerits(outcomesOf(sailed))) {
		list = append(list, sailed[i])
	}
	return list
}

// measure remembers the order with the shortest track, the first of those that are alike to a metre.
func (h *Search) measure(order []int) {
	if length := trackLength(h.v, order); h.state.Shortest == nil || length < h.state.Length-1 {
		h.state.Shortest, h.state.Length = order, length
	}
}

// keep takes the best estimated orders: by the rule of merit, and by days alone.
func (h *Search) keep(estimated []estimatedOrder) {
	list := make([]merits, len(estimated))
	for i := range estimated {
		list[i] = estimated[i].merits
	}
	byRule, byDays := ranked(list), ranked(list)
	slices.SortStableFunc(byDays, func(i, j int) int { return cmp.Compare(list[i].days, list[j].days) })
	taken := map[int]bool{}
	for i := range min(h.kept, len(estimated)) {
		for _, n := range []int{byRule[i], byDays[i]} {
			if len(taken) < h.kept && !taken[n] {
				taken[n] = true
				order := h.rules.withAlternates(estimated[n].order)
				h.state.Estimates = append(h.state.Estimates, Estimate{h.nameOf(order), list[n].first, list[n].days})
				h.add(order)
			}
		}
	}
	for _, n := range byRule {
		if !taken[n] {
			best := list[byRule[0]]
			h.state.Found.NextDays = result.Interval{Mean: list[n].days - best.days, Low: list[n].days - best.days, High: list[n].days - best.days}
			h.state.Found.NextFirst = best.first - list[n].first
			break
		}
	}
}

// judgeEstimates says by how much the orders that were sailed in the end differ from what was
// estimated of them, beyond what all differ by alike.
func (h *Search) judgeEstimates(sailed []sailedAlternative) {
	var first, days []float64
	for i := range sailed {
		for _, e := range h.state.Estimates {
			if e.Name == sailed[i].Name {
				m := meritsOf(sailed[i].outcomes)
				first, days = append(first, m.first-e.First), append(days, m.days-e.Days)
			}
		}
	}
	if len(days) > 1 {
		h.state.Found.ErrorFirst, h.state.Found.ErrorDays = stat.StdDev(first, nil), stat.StdDev(days, nil)
	}
}

// add takes an order to be sailed.
func (h *Search) add(order []int) {
	s := &h.state
	s.Orders, s.Outcomes, s.Able = append(s.Orders, order), append(s.Outcomes, nil), append(s.Able, true)
}

// missed is the share of the risk of a wrong statement that all stages together may take; the other
// half is for the answer.
const missed = (1 - confidence) / 2

// mostStages bounds the stages: from 8 replications fourfold each time to more than a million.
const mostStages = 10

// screen keeps what may be the best, at most so many, and what no other order beats so far.
func (h *Search) screen(most int) {
	s := &h.state
	list := allMerits(s.Outcomes)
	able, front := notRuledOut(s.Outcomes, missed/mostStages), nondominated(list)
	var orders [][]int
	var outcomes [][]outcome
	var stillAble []bool
	kept, inFront := 0, 0
	for _, i := range ranked(list) {
		switch {
		case able[i] && s.Able[i] && kept < most:
			kept++
		case front[i] && inFront < mostInFront:
			inFront++
		case len(orders) < fewShown:
		default:
			if able[i] && s.Able[i] {
				s.Found.LeftOut++
			}
			continue
		}
		orders, outcomes = append(orders, s.Orders[i]), append(outcomes, s.Outcomes[i])
		stillAble = append(stillAble, able[i] && s.Able[i])
	}
	s.Orders, s.Outcomes, s.Able = orders, outcomes, stillAble
}

// fewShown is how many of the first orders are carried on even where they are ruled out, for people to
// see by how much.
const fewShown = 6

// mostInFront is how many orders are carried on for their days or metres alone.
const mostInFront = 6

// finalists are those left, with the order of the plan and that with the shortest track to hold
// them against.
func (h *Search) finalists() []Alternative {
	var list []Alternative
	add := func(order []int) {
		name := h.nameOf(order)
		if order != nil && !slices.ContainsFunc(list, func(a Alternative) bool { return a.Name == name }) {
			list = append(list, Alternative{name, h.v.InOrder(order)})
		}
	}
	h.cut()
	for _, order := range h.state.Orders {
		add(order)
	}
	add(h.v.Visits())
	add(h.state.Shortest)
	return list
}

// conclude says what the search came to.
func (h *Search) conclude(sailed []sailedAlternative, run sim.Run, stopped bool) *result.Comparison {
	sailed = byMerit(sailed)
	h.judgeEstimates(sailed)
	c := compared(sailed, run, stopped, missed)
	found := h.state.Found
	c.Question, c.Search = result.WhichOrder, &found
	c.Reference, c.Planned = placeOf(c, h.nameOf(h.state.Shortest)), placeOf(c, h.nameOf(h.v.Visits()))
	return c
}

// cut ranks those left and, where stages did not bring them down to few enough, leaves out the last.
func (h *Search) cut() {
	if len(h.state.Orders) > 0 && len(h.state.Outcomes[0]) > 0 {
		h.screen(h.search.finalists)
	}
}

// nameOf is an order in words.
func (h *Search) nameOf(order []int) string {
	var names []string
	for _, n := range order {
		if !h.v.Sites[n].Alternate || len(h.rules.alternate) > 1 {
			names = append(names, h.v.Sites[n].Name)
		}
	}
	return strings.Join(names, ", ")
}
