package scores

import (
	"fmt"

	"coredays/model/score"
	"coredays/output/text"
	"coredays/output/words"
)

// resultUnits are the units of results.
var resultUnits = [score.AllResults]string{"d", "m", "cores"}

// hindcastResults prints days, metres and cores of sites and of whole legs.
func (p *printer) hindcastResults(h *score.Hindcast) error {
	if len(h.OfSites) == 0 {
		return nil
	}
	p.Heading("Sites and whole legs: the sites of a leg summed, with what an expedition shares")
	p.WriteByte('\n')
	var rows [][]string
	for _, part := range []struct {
		of   string
		list []score.Coverage
	}{{"site", h.OfSites}, {"leg", h.OfLegs}} {
		for _, c := range part.list {
			rows = append(rows, []string{part.of, c.Of.String() + " (" + resultUnits[c.Of] + ")", fmt.Sprint(c.Cases), words.Figures(c.CRPS) + " (" + interval(c.CRPSCI) + ")",
				shareIn(c.Inside50, c.Inside50CI), shareIn(c.Inside80, c.Inside80CI)})
		}
	}
	return p.Table([]text.Column{text.WordColumn("of a", 5), text.WordColumn("result", 20), text.NumberColumn("number"), text.NumberColumn("CRPS"),
		text.NumberColumn("inside\n50 % (%)"), text.NumberColumn("inside\n80 % (%)")}, rows)
}

func shareIn(share float64, ci [2]float64) string {
	return words.Fixed(100*share, 0) + " (" + words.Between(words.Fixed(100*ci[0], 0), words.Fixed(100*ci[1], 0)) + ")"
}
