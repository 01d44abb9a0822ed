package main

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"testing"
	"time"

	"golang.org/x/exp/stats"

	"coredays/model/geo"
	"coredays/model/record"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/scenario"
	"coredays/scenario/records"
	"coredays/sim"
	"coredays/sim/statistics"
)

// A hop is the way from a site on record to the next of its leg.
type hop struct {
	from, to record.Site
	takes    float64 // s from the end of the one to the start of the other
}

// hopsSince are the hops of legs that began in a year or later, short enough to hold no call at a port. Legs of which a site
// is missing have none.
func hopsSince(t *testing.T, year int) (hops []hop) {
	t.Helper()
	folder := os.Getenv("COREDAYS_DATA")
	if folder == "" {
		t.Skip("COREDAYS_DATA names no folder of records")
	}
	f, err := os.Open(filepath.Join(folder, "holes", "holes.csv"))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	sites, _, err := records.ReadHoles("holes.csv", f)
	if err != nil {
		t.Fatal(err)
	}
	slices.SortStableFunc(sites, func(a, b record.Site) int { return a.Start().Compare(b.Start()) })
	for i := 1; i < len(sites); i++ {
		a, b := sites[i-1], sites[i]
		last := a.Holes[len(a.Holes)-1]
		way := geo.Distance(last.Position, b.Holes[0].Position)
		takes := b.Start().Sub(last.End).Seconds()
		if a.LegName() == b.LegName() && !a.Partial && b.Start().Year() >= year && way >= 2*unit.NauticalMile && way <= 400*unit.NauticalMile &&
			takes > 0 && takes < float64(way)/5.3+3*86400 && !b.Partial && b.Reached == 0 {
			hops = append(hops, hop{a, b, takes})
		}
	}
	return hops
}

// What comes between leaving a site and standing over the next is the ship's own figure, fitted to the hops since 1998: from
// site to site through the simulator, with passage, waves and securing, four in five hops on record lie in the band.
func TestTheWayBetweenSitesIsAsOnRecord(t *testing.T) {
	hops := hopsSince(t, 1998)
	inside, below, n := 0, 0, 0
	for i := 0; i < len(hops); i += 3 {
		simulated := simulatedHop(t, hops[i])
		if simulated == nil {
			continue
		}
		q := stats.Quantiles(simulated, 0.1, 0.9)
		n++
		switch {
		case hops[i].takes < q[0]:
			below++
		case hops[i].takes <= q[1]:
			inside++
		}
	}
	t.Logf("%d of %d hops inside P10 to P90, %d below, %d above", inside, n, below, n-inside-below)
	// The binomial standard error of 0.8 is 0.045 of 80 hops; hops of a leg are alike, so that it is wider.
	if share := float64(inside) / float64(n); n < 50 || !(share > 0.8-0.12 && share < 0.8+0.12) {
		t.Errorf("%.2f of %d hops lie inside P10 to P90, want 0.8 ± 0.12", share, n)
	}
}

// simulatedHop is how long the way takes, s, replication by replication; nil where the sea of the place is not known.
func simulatedHop(t *testing.T, h hop) []float64 {
	t.Helper()
	site := func(name string, s record.Site) string {
		return fmt.Sprintf("  - {name: %s, position: %s, water_depth: 2000 m, layers: [{bottom: 20 mbsf, lithology: silty clay}], holes: [{task: look, takes: 1 h}]}\n",
			name, s.Holes[0].Position)
	}
	text := fmt.Sprintf(`version: 1
title: a hop
sails: %s
sea_days: 60 d
ports: {from: {name: Near, position: %s}, to: {name: Far, position: %s}}
sites:
`, h.to.Start().Add(-48*time.Hour).Format("2006-01-02T15:04Z"), h.from.Holes[0].Position, h.to.Holes[0].Position) + site("ONE", h.from) + site("TWO", h.to)
	p, err := scenario.Read("hop.yaml", []byte(text))
	if err != nil {
		return nil
	}
	v, err := voyage.Compile(p)
	if err != nil {
		t.Fatal(err)
	}
	r := sim.Replicate(context.Background(), v, sim.Run{Seed: 3, Replications: 200})
	var takes []float64
	for n := range r.Done {
		row := r.Row(r.Unconstrained, n)
		takes = append(takes, row[r.Layout.Site(1, statistics.SiteArrived)]-row[r.Layout.Site(0, statistics.SiteLeft)])
	}
	return takes
}
