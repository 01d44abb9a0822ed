package parts

import (
	"context"

	"coredays/model/result"
	"coredays/sim"
	"coredays/sim/share"
	"coredays/sim/study"
)

// workOf is that of each plan.
func workOf(plans []study.Plan) (list []int) {
	for _, p := range plans {
		list = append(list, p.Work)
	}
	return list
}

// StudyRange is what of a study a share sails: replications, counted plan after plan, from the first to before the end.
func StudyRange(plans []study.Plan, replications int, which share.Which) (first, end int) {
	return which.RangeOf(workOf(plans), replications)
}

// SailStudy sails a share of a study.
func SailStudy(ctx context.Context, plans []study.Plan, run sim.Run, which share.Which, put func(any) error) error {
	first, end := StudyRange(plans, run.Replications, which)
	return study.Sail(ctx, plans, run, first, end, func(p *study.Piece) error { return put(p) })
}

// JoinStudy puts the shares of a study together, plan by plan.
func JoinStudy(ctx context.Context, plans []study.Plan, run sim.Run, all share.All) ([]result.PlanFigures, error) {
	g := study.Gather(run.Replications)
	for _, share := range all {
		first, end := StudyRange(plans, run.Replications, share.Head.Which)
		for next := first; next < end; {
			p := &study.Piece{}
			if err := share.Take(p); err != nil {
				return nil, err
			}
			if next == first {
				of, err := p.IsOf(ctx, plans, run)
				if err != nil {
					return nil, err
				}
				if !of {
					return nil, ofAnother(share)
				}
			}
			if err := g.Add(p); err != nil {
				return nil, err
			}
			next += p.End - p.First
		}
	}
	return g.Plans, nil
}
