package alternatives

import (
	"fmt"
	"slices"

	"coredays/model/result"
	"coredays/model/unit"
	"coredays/output/text"
	"coredays/output/words"
)

// searched says what was looked at to find the first order.
func (p *printer) searched(c *result.Comparison) error {
	p.Heading("What was searched")
	for _, line := range SearchLines(c) {
		p.Item(line)
	}
	return nil
}

// SearchLines tell it in sentences.
func SearchLines(c *result.Comparison) (lines []string) {
	s := c.Search
	say := func(text string) { lines = append(lines, text) }
	switch {
	case s.Uncounted:
		say(fmt.Sprintf("More than %d orders keep the rules. Of beginnings of orders, those with the fewest days by estimate were followed up; %d orders were "+
			"estimated from single visits to each site.", s.Allowed, s.Estimated))
	case s.Estimated > 0:
		say(fmt.Sprintf("%d orders by the rules of the scenario. All were estimated from single visits to each site on each day.", s.Allowed))
	default:
		say(text.Counted(s.Allowed, "order") + " in all by the rules of the scenario, and all were sailed.")
	}
	if a := &c.Alternatives[c.Best]; slices.ContainsFunc(a.Summary.Sites, func(s result.Site) bool { return s.Alternate }) {
		say("Alternates come after the primary sites in any order, where time is left.")
	}
	for _, stage := range s.Stages {
		say(fmt.Sprintf("%d orders were sailed in %s.", stage.Orders, text.Counted(stage.Replications, "replication")))
	}
	if s.Estimated > 0 {
		next := words.DaysInterval(s.NextDays)
		say(fmt.Sprintf("The next order, which was not sailed, is behind the first by %s points of chance and %s d by estimate. "+
			"Sailed less estimated, the orders above differ among themselves by %s points and %s d (standard deviation): the estimate is no proof.",
			words.SignedFixed(100*s.NextFirst, 0), words.SignedFixed(next.Mean, 1), words.Figures(100*s.ErrorFirst), words.Figures(s.ErrorDays/float64(unit.Day))))
	}
	if s.LeftOut > 0 {
		say(fmt.Sprintf("%d orders were left out that nothing had ruled out, for being behind by the estimates so far.", s.LeftOut))
	}
	say(fmt.Sprintf("The %d orders above were sailed in %s with random numbers that none of them was picked for.", len(c.Alternatives), text.Counted(c.Replications, "replication")))
	say("Ruled out by: " + s.Rule + ".")
	return lines
}
