package main

import (
	"context"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"os"
	"strconv"

	"golang.org/x/exp/stats"

	"coredays/cmd/fitlevels/refit"
	"coredays/model/record"
	"coredays/model/unit"
	"coredays/scenario/records"
	"coredays/sim"
	"coredays/sim/hindcast"
)

// What legs lost to weather and repairs, against what the simulator loses at the positions and dates
// of their sites. The records have one figure for both; legs of the earlier programme mostly show 0 in
// it and hide their losses elsewhere, so only the later one is compared.

// lostShares are, by leg of a programme, the recorded share of the days on site that was lost.
func lostShares(name, programme string) (map[string]float64, error) {
	f, err := os.Open(name)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil || len(rows) == 0 {
		return nil, errors.Join(err, errors.New(name+" has no rows"))
	}
	column := map[string]int{}
	for i, heading := range rows[0] {
		column[heading] = i
	}
	shares := map[string]float64{}
	for _, row := range rows[1:] {
		lost, err1 := strconv.ParseFloat(row[column["lost_weather_repair_days"]], 64)
		onSite, err2 := strconv.ParseFloat(row[column["on_site_days"]], 64)
		if row[column["program"]] == programme && err1 == nil && err2 == nil && onSite > 0 {
			shares[row[column["leg"]]] = lost / onSite
		}
	}
	return shares, nil
}

// lostReplications is how often each site is sailed.
const lostReplications = 200

// lostTime prints the comparison.
func lostTime(holesFile, legsFile string, out, notes io.Writer) error {
	recorded, err := lostShares(legsFile, "IODP")
	if err != nil {
		return err
	}
	j, err := refit.OpenSites(holesFile)
	if err != nil {
		return err
	}
	model, faults := records.Model()
	if len(faults) > 0 {
		return faults
	}
	days, lost := map[string][]float64{}, map[string][]float64{}
	for i, s := range j.Sites {
		if _, known := recorded[s.Leg]; !known || s.Program != "IODP" {
			continue
		}
		v, err := model.Voyages([]record.Site{s}, records.Programme)
		if err != nil {
			fmt.Fprintln(notes, err)
			continue
		}
		visit := hindcast.Sail(context.Background(), v, []string{j.Legs[i]}, sim.Run{Seed: 1, Replications: lostReplications})
		days[s.Leg] = added(days[s.Leg], visit.OnSite[0])
		lost[s.Leg] = added(lost[s.Leg], visit.Lost[0])
	}
	var simulated, those []float64
	for leg := range days {
		those = append(those, recorded[leg])
		for n := range days[leg] {
			simulated = append(simulated, lost[leg][n]/days[leg][n])
		}
	}
	if len(those) == 0 {
		return errors.New("no leg has both sites and a figure of lost days")
	}
	fmt.Fprintf(out, "Share of the days on site lost to weather and repairs, %d IODP legs of %.3g days there on average, each\nsimulated %d times at the positions and dates of its sites\n\n", len(those), stats.Mean(total(days))/float64(unit.Day), lostReplications)
	fmt.Fprintf(out, "%-22s %10s %10s %10s %10s\n", "", "P10 (%)", "P50 (%)", "P90 (%)", "mean (%)")
	for _, line := range []struct {
		name   string
		shares []float64
	}{{"recorded", those}, {"simulated", simulated}} {
		q := stats.Quantiles(line.shares, 0.1, 0.5, 0.9)
		fmt.Fprintf(out, "%-22s %10.1f %10.1f %10.1f %10.1f\n", line.name, 100*q[0], 100*q[1], 100*q[2], 100*stats.Mean(line.shares))
	}
	fmt.Fprint(out, lostCaveats)
	return nil
}

// lostCaveats is what the comparison can't tell.
const lostCaveats = `
The record's figure is what each operator chose to call lost; short waits stay in coring and trips. The
simulator's is all waiting for a sea below a limit, and breakdowns. Planners send ships to high latitudes
in their summer: the dates used here are those that were really sailed.
`

// added adds two series term by term; nil counts as zeros.
func added(a, b []float64) []float64 {
	sum := append([]float64(nil), b...)
	for i := range a {
		sum[i] += a[i]
	}
	return sum
}

// total flattens the series of all legs.
func total(by map[string][]float64) (all []float64) {
	for _, series := range by {
		all = append(all, series...)
	}
	return all
}
