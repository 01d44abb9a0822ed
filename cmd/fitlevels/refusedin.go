package main

import (
	"cmp"
	"fmt"
	"io"
	"maps"
	"math"
	"os"
	"slices"
	"strings"

	"coredays/cmd/fitlevels/printed"
	"coredays/model/record"
	"coredays/scenario/records"
)

// Where piston corers are refused, by what they went through: the summaries of holes joined with the runs of lithology that
// were described in them. A hole tells by the metres of its tools: it began at the sea floor with the piston corer, and the
// extended barrel that goes on says that it was refused. Few of the holes with single cores have lithology; more of these do.

// pistonHole is a hole cored from the sea floor with the piston corer.
type pistonHole struct {
	Stop
	Leg    string
	Ground string // the class of lithology that it went through most; empty where that is not known
}

const (
	leastPistonCores = 3
	leastPistonDepth = 20.0 // m below sea floor: less is a failed start
	mostDrilled      = 20.0 // m drilled without coring: more, and it is not known where the piston corer was
	leastDescribed   = 0.3  // share of the metres that must be described
)

// readPistonHoles are the holes of the summaries that began with the piston corer and took no rotary core.
func readPistonHoles(r io.Reader) (holes []pistonHole, faults []string, err error) {
	s, err := openSheet("holes", r, "leg", "site", "hole", "n_apc", "n_hlapc", "n_xcb", "n_rcb", "drilled_m", "cored_apc_m")
	if err != nil {
		return nil, nil, err
	}
	for s.next() {
		h := pistonHole{Leg: s.text("leg"), Stop: Stop{Depth: s.known("cored_apc_m"), Changed: s.known("n_xcb") > 0 || s.known("n_hlapc") > 1}}
		h.Site = h.Leg + "-" + strings.TrimPrefix(s.text("site"), "U")
		h.Hole = h.Site + s.text("hole")
		if !s.rowBad && h.Depth >= leastPistonDepth && s.known("n_apc") >= leastPistonCores && !(s.known("n_rcb") > 0) && !(s.known("drilled_m") > mostDrilled) {
			holes = append(holes, h)
		}
	}
	return holes, s.faults, nil
}

// mostly is the class that fills most of what is described down to a depth; empty where too little is.
func mostly(runs []record.Described, depth float64) string {
	metres, described := map[string]float64{}, 0.0
	for _, x := range runs {
		if m := min(float64(x.Bottom), depth) - max(float64(x.Top), 0); m > 0 {
			metres[x.Class] += m
			described += m
		}
	}
	if described < leastDescribed*depth {
		return ""
	}
	return slices.MaxFunc(slices.Sorted(maps.Keys(metres)), func(a, b string) int { return cmp.Compare(metres[a], metres[b]) })
}

// refusedIn prints the depth of refusal by ground, and how much of it the holes of a site and the sites of a leg share.
func refusedIn(holesFile, lithologyFile string, out, notes io.Writer) error {
	holes, err := openPistonHoles(holesFile, lithologyFile, notes)
	if err != nil {
		return err
	}
	var rows [][]string
	for _, ground := range []string{"", "calcareous_ooze", "clay_silt_mud", "siliceous_ooze"} {
		name, those := cmp.Or(ground, "all, lithology known or not"), holes
		if ground != "" {
			those = slices.DeleteFunc(slices.Clone(holes), func(h pistonHole) bool { return h.Ground != ground })
		}
		stops := column(those, func(h pistonHole) Stop { return h.Stop })
		legs := column(those, func(h pistonHole) string { return h.Leg })
		fit := fitCensored(stops)
		km := kaplanMeier(stops, 0.1, 0.5, 0.9)
		off := legBootstrap(legs, func(pick []int) []float64 {
			return []float64{math.Log(kaplanMeier(column(pick, func(i int) Stop { return stops[i] }), 0.5)[0])}
		})
		rows = append(rows, slices.Concat([]string{name, fmt.Sprint(len(those)), fmt.Sprint(len(groupRows(legs, len(legs))))}, figures(km...), figures(off...),
			figures(math.Exp(fit.mean), math.Hypot(fit.site, fit.hole))))
	}
	return printed.Table(out, "Refusal of the piston corer, m below sea floor, by the lithology that fills most of what it cored",
		[]string{"lithology", "holes", "legs", "survival P10", "P50", "P90", "std. error of ln P50", "censored lognormal: median", "sd of ln"}, rows)
}

// openPistonHoles reads both files.
func openPistonHoles(holesFile, lithologyFile string, notes io.Writer) ([]pistonHole, error) {
	h, err := os.Open(holesFile)
	if err != nil {
		return nil, err
	}
	defer h.Close()
	holes, faults, err := readPistonHoles(h)
	if err != nil {
		return nil, err
	}
	described, out, err := records.DescribedIn(lithologyFile)
	if err != nil {
		return nil, err
	}
	for _, x := range out {
		faults = append(faults, fmt.Sprintf("%s line %d: %s", lithologyFile, x.Row, x.Why))
	}
	for _, fault := range faults {
		fmt.Fprintln(notes, fault)
	}
	for i := range holes {
		leg, hole, _ := strings.Cut(holes[i].Hole, "-")
		holes[i].Ground = mostly(described[records.DescribedHole{Leg: leg, Hole: hole}], holes[i].Depth)
	}
	return holes, nil
}
