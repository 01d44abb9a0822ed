package choice

import (
	"cmp"
	"context"
	"slices"
	"strings"
	"sync/atomic"

	"gonum.org/v1/gonum/stat"

	"coredays/model/chance"
	"coredays/model/result"
	"coredays/model/voyage"
	"coredays/model/workers"
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
	h := &hunt{search: s, v: v, run: run, rules: orderRulesOf(v), seed: chance.SeedOf(run.Seed, "search for an order")}
	h.found.Rule = comparisonMethod
	h.choose(ctx)
	h.narrow(ctx)
	if ctx.Err() != nil {
		return &result.Comparison{Question: result.WhichOrder, Seed: run.Seed, StoppedEarly: true}
	}
	sailed, stopped := sailAll(ctx, h.finalists(), h.run)
	sailed = byMerit(sailed)
	c := compared(sailed, h.run, stopped, missed)
	c.Question, c.Search = result.WhichOrder, &h.found
	h.judgeEstimates(sailed)
	c.Reference, c.Planned = placeOf(c, h.nameOf(h.shortest)), placeOf(c, h.nameOf(v.Visits()))
	return c
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

// hunt is a search under way.
type hunt struct {
	search
	v         *voyage.Voyage
	run       sim.Run
	rules     orderRules
	seed      uint64
	left      []*candidate
	able      []bool            // of those left: not ruled out
	shortest  []int             // the order with the shortest track
	length    float64           // of it, m
	sailed    int               // replications so far
	estimated map[string]merits // by name of the order
	found     result.Search
}

// choose picks the orders to sail.
func (h *hunt) choose(ctx context.Context) {
	orders, all := h.rules.allOrders(h.few)
	if all {
		h.found.Allowed = len(orders)
		for _, order := range orders {
			h.measure(order)
			h.add(order)
		}
		return
	}
	book := newVisitBook(ctx, h.v, h.seed, h.bookSize, h.run.Workers)
	estimated, dropped := book.estimateOrders(ctx, h.rules, h.beam, h.run.Workers)
	h.found.Allowed, h.found.Estimated, h.found.Uncounted = len(estimated), len(estimated), dropped
	if len(estimated) == 0 {
		return
	}
	for i := range estimated {
		h.measure(estimated[i].order)
	}
	h.shortest = h.rules.withAlternates(h.shortest)
	h.keep(estimated)
}

// measure remembers the order with the shortest track, the first of those that are alike to a metre.
func (h *hunt) measure(order []int) {
	if length := trackLength(h.v, order); h.shortest == nil || length < h.length-1 {
		h.shortest, h.length = order, length
	}
}

// keep takes the best estimated orders: by the rule of merit, and by days alone.
func (h *hunt) keep(estimated []estimatedOrder) {
	list := make([]merits, len(estimated))
	for i := range estimated {
		list[i] = estimated[i].merits
	}
	byRule, byDays := ranked(list), ranked(list)
	slices.SortStableFunc(byDays, func(i, j int) int { return cmp.Compare(list[i].days, list[j].days) })
	taken := map[int]bool{}
	h.estimated = map[string]merits{}
	for i := range min(h.kept, len(estimated)) {
		for _, n := range []int{byRule[i], byDays[i]} {
			if len(taken) < h.kept && !taken[n] {
				taken[n] = true
				order := h.rules.withAlternates(estimated[n].order)
				h.estimated[h.nameOf(order)] = list[n]
				h.add(order)
			}
		}
	}
	for _, n := range byRule {
		if !taken[n] {
			best := list[byRule[0]]
			h.found.NextDays = result.Interval{Mean: list[n].days - best.days, Low: list[n].days - best.days, High: list[n].days - best.days}
			h.found.NextFirst = best.first - list[n].first
			break
		}
	}
}

// judgeEstimates says by how much the orders that were sailed in the end differ from what was
// estimated of them, beyond what all differ by alike.
func (h *hunt) judgeEstimates(sailed []sailedAlternative) {
	var first, days []float64
	for i := range sailed {
		if r, known := h.estimated[sailed[i].Name]; known {
			m := meritsOf(sailed[i].outcomes)
			first, days = append(first, m.first-r.first), append(days, m.days-r.days)
		}
	}
	if len(days) > 1 {
		h.found.ErrorFirst, h.found.ErrorDays = stat.StdDev(first, nil), stat.StdDev(days, nil)
	}
}

// add takes an order to be sailed.
func (h *hunt) add(order []int) {
	h.left = append(h.left, &candidate{v: h.v.InOrder(order)})
	h.able = append(h.able, true)
}

// narrow sails those left in stages until few enough are left, or more replications than the answer
// has would not tell them apart.
func (h *hunt) narrow(ctx context.Context) {
	n := max(min(h.least, h.run.Replications), min(h.run.Replications, h.perStage*h.run.Replications/max(1, len(h.left))))
	for len(h.left) > h.search.finalists+mostInFront && ctx.Err() == nil {
		h.stage(ctx, n)
		if ctx.Err() != nil || n >= h.run.Replications {
			return
		}
		n = min(n*growth, h.run.Replications)
		h.screen(max(h.search.finalists, h.perStage*h.run.Replications/n))
	}
}

// stage sails all that are left up to a number of replications.
func (h *hunt) stage(ctx context.Context, upTo int) {
	h.found.Stages = append(h.found.Stages, result.Stage{Orders: len(h.left), Replications: upTo})
	var finished atomic.Int64
	workers.Share(ctx, h.run.Workers, 0, len(h.left), func() func(int) {
		return func(i int) {
			before := len(h.left[i].outcomes)
			h.left[i].sail(ctx, h.seed, upTo)
			if f := int(finished.Add(int64(upTo - before))); h.run.Progress != nil {
				h.run.Progress(h.sailed + f)
			}
		}
	})
	h.sailed += int(finished.Load())
}

// missed is the share of the risk of a wrong statement that all stages together may take; the other
// half is for the answer.
const missed = (1 - confidence) / 2

// mostStages bounds the stages: from 8 replications fourfold each time to more than a million.
const mostStages = 10

// screen keeps what may be the best, at most so many, and what no other order beats so far.
func (h *hunt) screen(most int) {
	all := make([][]outcome, len(h.left))
	for i, c := range h.left {
		all[i] = c.outcomes
	}
	list := allMerits(all)
	able, front := notRuledOut(all, missed/mostStages), nondominated(list)
	var left []*candidate
	var stillAble []bool
	kept, inFront := 0, 0
	for _, i := range ranked(list) {
		switch {
		case able[i] && h.able[i] && kept < most:
			kept++
		case front[i] && inFront < mostInFront:
			inFront++
		case len(left) < fewShown:
		default:
			if able[i] && h.able[i] {
				h.found.LeftOut++
			}
			continue
		}
		left = append(left, h.left[i])
		stillAble = append(stillAble, able[i] && h.able[i])
	}
	h.left, h.able = left, stillAble
}

// fewShown is how many of the first orders are carried on even where they are ruled out, for people to
// see by how much.
const fewShown = 6

// mostInFront is how many orders are carried on for their days or metres alone.
const mostInFront = 6

// finalists are those left, with the order of the plan and that with the shortest track to hold
// them against.
func (h *hunt) finalists() []Alternative {
	var list []Alternative
	add := func(order []int) {
		name := h.nameOf(order)
		if order != nil && !slices.ContainsFunc(list, func(a Alternative) bool { return a.Name == name }) {
			list = append(list, Alternative{name, h.v.InOrder(order)})
		}
	}
	h.cut()
	for _, c := range h.left {
		add(c.v.Plan.Order)
	}
	add(h.v.Visits())
	add(h.shortest)
	if progress := h.run.Progress; progress != nil {
		h.run.Progress = func(done int) { progress(h.sailed + done) }
	}
	return list
}

// cut ranks those left and, where stages did not bring them down to few enough, leaves out the last.
func (h *hunt) cut() {
	if len(h.left) > 0 && len(h.left[0].outcomes) > 0 {
		h.screen(h.search.finalists)
	}
}

// nameOf is an order in words.
func (h *hunt) nameOf(order []int) string {
	var names []string
	for _, n := range order {
		if !h.v.Sites[n].Alternate || len(h.rules.alternate) > 1 {
			names = append(names, h.v.Sites[n].Name)
		}
	}
	return strings.Join(names, ", ")
}
