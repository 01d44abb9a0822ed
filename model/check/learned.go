package check

import "coredays/model/rig"

// learned names the rates that were learned from a log of the ship: who reviews the plan is to know that they are hers, of
// how much work, and of when.
func (i *inspector) learned() {
	for r := range rig.Rates {
		q := &i.plan.Ship.Rates[r]
		if !rig.FromLog(q.Source) {
			continue
		}
		is := r.Of()
		one, err := is.Of.Parse("1 " + is.Unit)
		if err != nil {
			one = 1 // a count
		}
		i.note(Finding{What: is.What + ", median learned from a log", Kind: "rate learned from a log", Verdict: Pass, Value: q.Median() / one,
			Limit: none, Unit: is.Unit, Source: q.Source, Path: "rates." + is.Key})
	}
}
