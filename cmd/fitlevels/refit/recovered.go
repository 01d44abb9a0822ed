package refit

import (
	"io"
	"math"

	"golang.org/x/exp/stats"
	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"

	"coredays/cmd/fitlevels/printed"
	"coredays/model/coring"
	"coredays/model/record"
	"coredays/model/score"
	"coredays/scenario/records"
	"coredays/sim/hindcast"
)

// Metres and cores have no figures that the study turns: recovery, lengths of cores and their levels come from cores and holes of all
// legs. What the legs scored have given to them is taken out by leaving each part of the legs out in turn: their mean against the
// forecast's, and how far they scatter in it, by the deepest tool of a site, are those of the other legs.

// placed is how what came true lies in its forecasts.
type placed struct{ mean, spread float64 }

// placedOf is that of some sites by a tool: the sum against that of the forecasts' means, and the standard deviation of normal scores.
func placedOf(sites []record.Site, cases []score.Sampled, tool coring.Tool, of func(i int) bool) placed {
	actual, foreseen := 0.0, 0.0
	var scores []float64
	for i, c := range cases {
		if !of(i) || sites[i].DeepestTool() != tool || math.IsNaN(c.Actual) || c.Actual <= 0 {
			continue
		}
		actual += c.Actual
		foreseen += stat.Mean(c.Sample, nil)
		n := float64(len(c.Sample))
		rank := min(max(score.NewForecast(c.Sample).Rank(c.Actual), 0.5/n), 1-0.5/n)
		scores = append(scores, distuv.UnitNormal.Quantile(rank))
	}
	return placed{actual / foreseen, stat.StdDev(scores, nil)}
}

// byOthers moves and widens the samples of each part of the legs as the other parts say, against all of them.
func (j judged) byOthers(of score.Results, cases []score.Sampled) []score.Sampled {
	fold := j.fold()
	moved := make([]score.Sampled, len(cases))
	for _, tool := range []coring.Tool{coring.APC, coring.XCB, coring.RCB} {
		all := placedOf(j.Sites, cases, tool, func(int) bool { return true })
		for f := range folds {
			others := placedOf(j.Sites, cases, tool, func(i int) bool { return fold[j.Legs[i]] != f })
			for i, c := range cases {
				if fold[j.Legs[i]] != f || j.Sites[i].DeepestTool() != tool {
					continue
				}
				moved[i] = score.Sampled{Actual: c.Actual, Sample: widened(c.Sample, others.mean/all.mean, others.spread/all.spread)}
				for r := range moved[i].Sample {
					if of == score.Cores { // whole ones
						moved[i].Sample[r] = math.Round(moved[i].Sample[r])
					}
				}
			}
		}
	}
	return moved
}

// widened multiplies a sample, and its distance from the median on a logarithmic scale.
func widened(sample []float64, by, spread float64) []float64 {
	median := stats.Median(sample)
	wide := make([]float64, len(sample))
	for r, x := range sample {
		if median > 0 && x > 0 {
			wide[r] = by * median * math.Pow(x/median, spread)
		}
	}
	return wide
}

// Recovered is the study of metres and cores with the legs scored left out of what they gave.
func Recovered(holesFile string, out io.Writer) error {
	j, model, err := openStudy(holesFile)
	if err != nil {
		return err
	}
	visits, err := j.visits(model, records.Programme, heldReplications)
	if err != nil {
		return err
	}
	sampled := hindcast.Sampled(j.Sites, visits)
	var rows [][]string
	for _, of := range []score.Results{score.Recovered, score.Cores} {
		for k, cases := range [][]score.Sampled{sampled[of], j.byOthers(of, sampled[of])} {
			rows = append(rows, coverRows(of.String()+[]string{", built in", ", by other legs"}[k], of, cases, j.Legs)...)
		}
	}
	return printed.Table(out, "Metres and cores of sites and of legs, programme", []string{"forecast", "of", "number", "CRPS", "95 %", "in 50 %", "in 80 %", "95 %"}, rows)
}
