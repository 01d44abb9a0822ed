package refit

import (
	"fmt"
	"io"

	"coredays/cmd/fitlevels/printed"
	"coredays/model/record"
	"coredays/model/rig"
	"coredays/model/score"
	"coredays/scenario/records"
)

// FitToDays is the study of what a record of holes leaves open: the figures fitted to all sites, and
// how figures fitted on other legs do.
func FitToDays(holesFile, chartDir string, out, notes io.Writer) error {
	j, err := OpenSites(holesFile)
	if err != nil {
		return err
	}
	x, err := j.fit(notes)
	if err != nil {
		return err
	}
	if err := reportFigures(out, x); err != nil {
		return err
	}
	rotated, err := j.rotated(notes)
	if err != nil {
		return err
	}
	later, err := j.later(notes)
	if err != nil {
		return err
	}
	if chartDir != "" {
		if err := charts(chartDir, j, rotated[records.Programme].cases); err != nil {
			return err
		}
	}
	if err := reportSiteClasses(out, j, [2][]score.Case{rotated[0].cases, rotated[1].cases}); err != nil {
		return err
	}
	if err := reportYardsticks(out, j, rotated[records.Programme]); err != nil {
		return err
	}
	told := [2]held{j.told(rotated[0]), j.told(rotated[1])}
	return printed.Table(out, "Days on site, forecast by figures fitted on other legs (five parts of the legs in turn) and on older sites",
		[]string{"forecast", "sites", "CRPS d", "95 %", "skill", "CRPS log", "abs %", "actual/median", "95 %", "in 50 %", "95 %", "in 80 %", "95 %"},
		[][]string{cardRow("programme, other legs", rotated[records.Programme].cases), cardRow("counts, other legs", rotated[records.Counts].cases),
			cardRow("programme, told the time of legs", told[records.Programme].cases), cardRow("counts, told the time of legs", told[records.Counts].cases),
			cardRow("legs, programme", rotated[records.Programme].ofLegs(j.Legs)), cardRow("legs, counts", rotated[records.Counts].ofLegs(j.Legs)),
			cardRow("legs, programme, told their time", told[records.Programme].ofLegs(j.Legs)), cardRow("legs, counts, told their time", told[records.Counts].ofLegs(j.Legs)),
			cardRow("programme, older half", later)})
}

// reportSiteClasses prints how classes of sites do under figures fitted on other legs.
func reportSiteClasses(out io.Writer, j judged, rotated [2][]score.Case) error {
	var rows [][]string
	for _, by := range record.Classifications {
		class := func(i int) string { return by.Class(&j.Sites[i]) }
		counts := score.Classes(by.By, rotated[records.Counts], class)
		for i, c := range score.Classes(by.By, rotated[records.Programme], class) {
			rows = append(rows, []string{by.By, c.Class, fmt.Sprint(c.Cases), fmt.Sprintf("%.2f", c.Ratio), fmt.Sprintf("%.2f", c.CRPS), fmt.Sprintf("%.2f", c.Inside80),
				fmt.Sprintf("%.2f", counts[i].Ratio), fmt.Sprintf("%.2f", counts[i].CRPS)})
		}
	}
	return printed.Table(out, "By class, other legs", []string{"by", "class", "sites", "actual/median", "CRPS d", "in 80 %", "counts: ratio", "CRPS d"}, rows)
}

func cardRow(name string, cases []score.Case) []string {
	c := score.Judge(cases)
	pair := func(ci [2]float64) string { return fmt.Sprintf("%.3f-%.3f", ci[0], ci[1]) }
	return []string{name, fmt.Sprint(c.Cases), fmt.Sprintf("%.3f", c.CRPS), pair(c.CRPSCI), fmt.Sprintf("%.3f", c.Skill), fmt.Sprintf("%.3f", c.CRPSLog),
		fmt.Sprintf("%.1f", c.AbsPercent), fmt.Sprintf("%.3f", c.Ratio), pair(c.RatioCI), fmt.Sprintf("%.3f", c.Inside50), pair(c.Inside50CI),
		fmt.Sprintf("%.3f", c.Inside80), pair(c.Inside80CI)}
}

// reportFigures prints what is fitted, as record.yaml has it.
func reportFigures(out io.Writer, x []float64) error {
	var rows [][]string
	for i, k := range knobs {
		rows = append(rows, []string{k.name, fmt.Sprintf("%+.2f", x[i]), fmt.Sprintf("%.2f", k.prior)})
	}
	if err := printed.Table(out, "Figures of what a record leaves open: moves from the round figures (logarithm or logit), and their prior", []string{"figure", "move", "prior"}, rows); err != nil {
		return err
	}
	u := turned(x)
	rows = nil
	for i, g := range u.Ground {
		rows = append(rows, []string{g.Name, fmt.Sprintf("%.3g", g.Rate.Median()/perHour), fmt.Sprintf("%.3g", g.Rate.Shape.Quantile(0.9)/g.Rate.Median()),
			fmt.Sprintf("%.3g", u.Ground[i].Ahead.Median()/perHour)})
	}
	if err := printed.Table(out, "Ground", []string{"ground", "m/h cutting", "factor", "m/h ahead"}, rows); err != nil {
		return err
	}
	rows = nil
	for c, w := range u.Work {
		rows = append(rows, []string{fmt.Sprint(c), fmt.Sprintf("%.1f", 100*w.Chance), fmt.Sprintf("%.3g", w.Median/3600), fmt.Sprintf("%.3g", w.Factor)})
	}
	if err := printed.Table(out, "Work not on record, by class of holes in the order of record.yaml", []string{"class", "chance %", "median h", "factor"}, rows); err != nil {
		return err
	}
	rows = nil
	for _, e := range u.Eras {
		rows = append(rows, []string{fmt.Sprint(e.From), fmt.Sprintf("%.0f", 100*e.Piston), fmt.Sprintf("%.0f", 100*e.Rotated)})
	}
	if err := printed.Table(out, "Cycles by era, % of those of the built-in ship", []string{"from", "piston", "rotated"}, rows); err != nil {
		return err
	}
	other, first := u.Ship.Rates[rig.OtherWork], u.Ship.Rates[rig.FirstSiteWork]
	_, err := fmt.Fprintf(out, "\nother work %.3g %%, factor %.3g; at the first site %.3g h; drilling ahead, factor %.3g; rotary in more than %.0f m of water at %.0f %%; powers of water %.2f, of depth %.2f; piston without other tools %.0f %%\n",
		100*other.Median(), other.Shape.Quantile(0.9)/other.Median(), first.Median()/3600, u.Ground[0].Ahead.Shape.Quantile(0.9)/u.Ground[0].Ahead.Median(),
		u.InWater.From, 100*u.InWater.Rate, u.WithWater, u.WithDepth, 100*u.Ship.Rates[rig.PistonAlone].Median())
	return err
}
