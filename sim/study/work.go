package study

import (
	"coredays/model/coring"
	"coredays/model/plan"
)

// The work of a replication is counted in cores: a core is most of it, and a hole has work of its own. By processor
// time of the demonstration with holes and depths taken away.
const (
	workOfAHole = 8
	workOfASite = 8
)

// WorkOf is about how much work a replication of a plan is, for sharing it out: a count of cores. Depth is counted as
// asked for, down to which not every hole comes.
func WorkOf(p *plan.Plan) int {
	work := 0
	for _, n := range p.Order {
		work += workOfASite
		for i := range p.Sites[n].Items {
			if hole := p.Sites[n].Items[i].Hole; hole != nil {
				cored := p.Sites[n].Items[i].AskedFor() - hole.DrillAheadTo
				work += workOfAHole + int(float64(max(0, cored))/float64(coring.APC.Stroke()))
			}
		}
	}
	return max(1, work)
}
