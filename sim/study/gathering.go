package study

import (
	"fmt"

	"coredays/model/result"
)

// Gathering makes the answer of the pieces that come one after the other. It holds the rows of one plan at a time.
type Gathering struct {
	each  int
	rows  []float64 // of the plan that comes next
	Plans []result.PlanFigures
}

// Gather begins with no piece; each plan has so many replications.
func Gather(replications int) *Gathering { return &Gathering{each: replications} }

// Add adds the piece that comes next.
func (g *Gathering) Add(p *Piece) error {
	plan, had := len(g.Plans), len(g.rows)/figures
	if p.Plan != plan || p.First != had || p.End > g.each || p.End <= p.First || len(p.Rows) != (p.End-p.First)*figures {
		return fmt.Errorf("replications %d to %d of plan %d come where replication %d of plan %d should", p.First, p.End-1, p.Plan+1, had, plan+1)
	}
	g.rows = append(g.rows, p.Rows...)
	if p.End == g.each {
		g.Plans, g.rows = append(g.Plans, figuresOf(g.rows)), g.rows[:0]
	}
	return nil
}
