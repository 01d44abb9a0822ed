package outputtest

import (
	"math"

	"coredays/model/basis"
	"coredays/model/check"
	"coredays/model/plan"
	"coredays/model/result"
	"coredays/model/unit"
	"coredays/output"
)

// ReportOn is a report on a summary, looked at closely by hand.
func ReportOn(s *result.Summary) *output.Report {
	t := s.Needed.Total
	for i := range 201 {
		s.Needed.Curve = append(s.Needed.Curve, t.P10+(t.P90-t.P10)*(float64(i)/160-0.125))
	}
	for i := range s.Sites {
		site := &s.Sites[i]
		site.Layers = []result.Layer{{Name: "ooze", Bottom: site.Target / 2}, {Name: "chalk & <chert>", Bottom: site.Target}}
		for d := unit.Depth(0); d < site.Target; d += 20 {
			site.Section = append(site.Section, result.Slice{From: d, To: d + 20, Cored: 40, Recovered: unit.Length(38 - d/20), Covered: 0.97})
		}
		for h := range site.Holes {
			if hole := &site.Holes[h]; !hole.Task {
				for m := range 11 {
					x := float64(m+1) * Day / 4
					hole.Marks = append(hole.Marks, result.DepthMark{Depth: site.Target * unit.Depth(m) / 10, Share: 1 - float64(m)/30, P10: 0.8 * x, P50: x, P90: 1.4 * x})
				}
			}
		}
	}
	return &output.Report{Summary: s, Plan: &plan.Plan{Title: s.Scenario, From: plan.Port{Name: "Leith"}, To: plan.Port{Name: "Leith"}},
		Passages: []output.Passage{{From: "Leith", To: "TR-01", Distance: 1.2e6}}, Program: "coredays test",
		Found: []check.Finding{{Site: "TR-01", What: "string reaches the target", Value: 3800, Limit: 8000, Unit: "m", Source: "hand"},
			{What: "days for all", Verdict: check.Caution, Value: 41, Limit: 40, Unit: "d", Source: "<hand>"}},
		Basis:        []basis.Entry{{Group: "Rates", Name: "tripping", Low: 18, Mid: 21, High: 24, Unit: "stands/h", Varies: "run", From: basis.OfShip, Source: "from memory", Memory: true, Influence: result.Influence{Share: math.NaN()}}},
		Replications: &result.Replications{Numbers: []int{0, 1}, Columns: []result.Column{{Key: "whole.needed", Meaning: "days", Of: result.Seconds, Main: true, Values: []float64{40 * Day, 44.5 * Day}}}},
	}
}
