package output_test

import (
	"bytes"
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"coredays/model/result"
	jsonout "coredays/output/json"
	"coredays/output/outputtest"
	"coredays/output/text"
	"coredays/output/words"
)

// drawSpread draws figures between 0 and the largest of their sort.
func drawSpread(t *rapid.T, largest float64) result.Spread {
	values := rapid.SliceOfN(rapid.Float64Range(0, largest), 3, 3).Draw(t, "quantiles")
	slices.Sort(values)
	return outputtest.Spread(rapid.IntRange(0, 100_000).Draw(t, "n"), values[1], values[0], values[1], values[2], largest/100)
}

// drawSite draws a site with a hole; no programme has 400 days or cores 100 km.
func drawSite(t *rapid.T) result.Site {
	s := result.Site{Name: rapid.String().Draw(t, "name"), Alternate: rapid.Bool().Draw(t, "alternate"),
		ChanceReached: rapid.Float64Range(0, 1).Draw(t, "reached")}
	for _, days := range []*result.Spread{&s.Days, &s.Waiting, &s.Arrives, &s.Leaves} {
		*days = drawSpread(t, 400*outputtest.Day)
	}
	s.Cored, s.Recovered, s.Percent, s.Coverage = drawSpread(t, 1e5), drawSpread(t, 1e5), drawSpread(t, 150), drawSpread(t, 1)
	s.Holes = []result.Hole{{Name: rapid.String().Draw(t, "hole"), Rank: rapid.IntRange(1, 99).Draw(t, "rank"),
		Days: drawSpread(t, 400*outputtest.Day), Depth: drawSpread(t, 3000), Refusal: drawSpread(t, 1000)}}
	return s
}

func TestAnySiteFitsThePage(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := outputtest.Ordinary()
		s.Sites = append(s.Sites, drawSite(t))
		s.Replications = rapid.IntRange(0, 100_000).Draw(t, "replications")
		var printout, values bytes.Buffer
		if err := text.Simulation(&printout, s, text.Detail{All: true}); err != nil {
			t.Fatal(err)
		}
		for line := range strings.Lines(printout.String()) {
			if words.Displayed(strings.TrimSuffix(line, "\n")) > text.PageWidth {
				t.Fatalf("%d columns: %q", words.Displayed(line), line)
			}
		}
		if err := jsonout.Simulation(&values, s); err != nil || !json.Valid(values.Bytes()) {
			t.Fatalf("%v: %s", err, values.String())
		}
	})
}
