package main

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"time"
)

// Steps of the extracts: every so many sites in file order, whichever their results.
const (
	coreStep  = 4
	visitStep = 8
	siteCores = 10 // fewest cores of a site of the core extract
)

const coreSource = `# Cores of scientific ocean drilling, legs 114-209: depth, length, recovery, tool, time on deck.
# Source: NCEI/NGDC ODP core summary (JANUS export), as compiled in doi:10.5281/zenodo.10498831 (MIT). Rows unchanged.
# Rule: of the sites with at least %d cores, in file order, every %dth; all rows of those sites.
# type: H piston, X extended barrel, R rotary, other letters other tools, digits drilled intervals. Blank: not in the source
# (a blank recovery is a core that brought nothing: the holes' published totals equal the sums without them).
`

const visitSource = `# Holes of scientific ocean drilling, 1985-2023: depth, cores and metres by tool, start, end, days on hole.
# Source: ODP/IODP hole details and coring summaries (JANUS) and IODP hole summaries (LIMS), compiled tables
# doi:10.5281/zenodo.10498831 (MIT) and R. Berg, ocean drilling database (MIT, 2017). Rows unchanged,
# with a column first_of_leg: whether no other site of the leg was begun before.
# Rule: of the sites with at least one core and with start and end of every hole, expeditions that did not core left out,
# in file order, every %dth; all holes of those sites. Sum a site before comparing days: the trip in falls to the first
# hole, the trip out to the last. Blank: not in the source.
`

// extract writes core_cycles.csv and site_days.csv to a directory.
func (r twoTables) extract(dir string) error {
	if len(r.holes) == 0 {
		return fmt.Errorf("%w: -extract needs -holes FILE too", errCall)
	}
	cores := pick(r.cores, func(c Core) string { return c.Site }, enoughCores, coreStep)
	holes := pick(r.holes, func(h Hole) string { return h.Site }, timed, visitStep)
	return errors.Join(
		save(filepath.Join(dir, "core_cycles.csv"), fmt.Sprintf(coreSource, siteCores, coreStep), r.coreHead,
			rowsOf(cores, func(c Core) []string { return c.Record })),
		save(filepath.Join(dir, "site_days.csv"), fmt.Sprintf(visitSource, visitStep), append(slices.Clone(r.holeHead), "first_of_leg"),
			rowsOf(holes, func(h Hole) []string { return append(slices.Clone(h.Record), firstOfLeg(r.holes, h)) })))
}

// firstOfLeg reports whether no other site of its leg was begun before that of a hole.
func firstOfLeg(all []Hole, h Hole) string {
	began := map[string]time.Time{}
	for _, o := range all {
		if at, known := began[o.Site]; o.Leg == h.Leg && !o.Start.IsZero() && (!known || o.Start.Before(at)) {
			began[o.Site] = o.Start
		}
	}
	for site, at := range began {
		if site != h.Site && at.Before(began[h.Site]) {
			return "no"
		}
	}
	return "yes"
}

func enoughCores(site []Core) bool { return len(site) >= siteCores }

func timed(site []Hole) bool {
	cored := false
	for _, h := range site {
		if h.Start.IsZero() || h.End.IsZero() {
			return false
		}
		cored = cored || h.Cores > 0
	}
	return cored
}

// pick keeps every step-th site that qualifies, in the order of first appearance.
func pick[T any](rows []T, site func(T) string, qualifies func([]T) bool, step int) []T {
	var kept []T
	n := 0
	for _, group := range groupRows(column(rows, site), len(rows)) {
		members := make([]T, len(group))
		for i, g := range group {
			members[i] = rows[g]
		}
		if !qualifies(members) {
			continue
		}
		if n++; n%step == 0 {
			kept = append(kept, members...)
		}
	}
	return kept
}

func rowsOf[T any](rows []T, record func(T) []string) [][]string {
	out := make([][]string, len(rows))
	for i, r := range rows {
		out[i] = record(r)
	}
	return out
}

func save(name, comment string, head []string, rows [][]string) error {
	f, err := os.Create(name)
	if err != nil {
		return err
	}
	_, err = io.WriteString(f, comment)
	w := csv.NewWriter(f)
	return errors.Join(err, w.Write(head), w.WriteAll(rows), f.Close())
}
