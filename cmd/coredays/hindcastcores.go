package main

import (
	"cmp"
	"fmt"
	"slices"
	"time"

	"golang.org/x/exp/stats"

	"coredays/model/coring"
	"coredays/model/record"
	"coredays/model/score"
	"coredays/model/unit"
	"coredays/scenario/document"
	"coredays/scenario/records"
	"coredays/sim"
	"coredays/sim/ship"
)

// coreReplications bounds how often sites are sailed for their cores: every core is kept, and the
// medians over holes are known well enough.
const coreReplications = 40

// coreRun is how sites are sailed for their cores.
func coreRun(run sim.Run) sim.Run {
	run.Replications = min(run.Replications, coreReplications)
	return run
}

// cored is a table of cores with the sites that have some.
type cored struct {
	cores map[record.CoreHole][]record.Core
	out   []record.LeftOut
	f     *foreseen // with the cores of each tool known
}

// readCores reads a table of cores of sites.
func readCores(file string, sites []record.Site) (*cored, error) {
	r, err := document.OpenFile(file)
	if err != nil {
		return nil, fmt.Errorf("the table of cores can't be read: %w", err)
	}
	defer r.Close()
	c := &cored{}
	if c.cores, c.out, err = records.ReadCores(file, r); err != nil {
		return nil, err
	}
	c.f, err = foresee(withCores(sites, c.cores), records.Counts)
	return c, err
}

// score adds cycles and recovery to a score: the same holes on record and simulated.
func (c *cored) score(result *score.Hindcast, simulated [][][]ship.Core) {
	for _, o := range c.out {
		result.LeftOut = append(result.LeftOut, record.LeftOut{Row: o.Row, Why: "core: " + o.Why})
	}
	var holes []coredHole
	for i := range c.f.sites {
		holes = append(holes, coredHoles(&c.f.sites[i], c.cores, simulated[i])...)
	}
	for tool := range coring.Tools {
		result.Cycles = append(result.Cycles, cyclesOf(holes, tool)...)
		result.Recovery = append(result.Recovery, recoveryOf(holes, tool)...)
	}
}

// withCores keeps the sites of which there are cores.
func withCores(sites []record.Site, cores map[record.CoreHole][]record.Core) (kept []record.Site) {
	for _, s := range sites {
		if slices.ContainsFunc(s.Holes, func(h record.Hole) bool { return len(cores[coreHole(&s, h.Name)]) > 0 }) {
			kept = append(kept, s)
		}
	}
	return kept
}

func coreHole(s *record.Site, hole string) record.CoreHole {
	return record.CoreHole{Program: s.Program, Leg: s.Leg, Site: s.Name, Hole: hole}
}

// coredHole is a hole with its cores on record and as simulated, by replication.
type coredHole struct {
	water     unit.Length
	recorded  []record.Core
	simulated [][]record.Core
}

// coredHoles are the holes of a site that have cores on record.
func coredHoles(s *record.Site, cores map[record.CoreHole][]record.Core, simulated [][]ship.Core) (holes []coredHole) {
	for i := range s.Holes {
		recorded := cores[coreHole(s, s.Holes[i].Name)]
		if len(recorded) == 0 {
			continue
		}
		h := coredHole{water: s.Holes[i].Water, recorded: recorded}
		for _, replication := range simulated {
			h.simulated = append(h.simulated, ofHole(replication, s.Holes[i].Name, s.Start()))
		}
		holes = append(holes, h)
	}
	return holes
}

// ofHole are the simulated cores of a hole in the form of the record.
func ofHole(cores []ship.Core, hole string, start time.Time) (list []record.Core) {
	for _, c := range cores {
		if c.Hole == hole {
			list = append(list, record.Core{Number: len(list) + 1, Tool: c.Tool, Cored: unit.Length(c.Cored), Recovered: unit.Length(c.Recovered),
				OnDeck: start.Add(time.Duration(c.OnDeck * float64(time.Second)))})
		}
	}
	return list
}

// figureOf is a figure of the cores of a tool in a hole, false where there are too few.
type figureOf func(cores []record.Core, t coring.Tool) (float64, bool)

// both gathers a figure of the holes in which the record has it: on record and over all replications.
func both(holes []coredHole, tool coring.Tool, of figureOf) (recorded, simulated []float64) {
	for _, h := range holes {
		x, enough := of(h.recorded, tool)
		if !enough {
			continue
		}
		recorded = append(recorded, x)
		for _, cores := range h.simulated {
			if y, enough := of(cores, tool); enough {
				simulated = append(simulated, y)
			}
		}
	}
	return recorded, simulated
}

// cyclesOf are the cycles of a tool by class of water depth.
func cyclesOf(holes []coredHole, tool coring.Tool) (list []score.Cycle) {
	classes := map[string][]coredHole{}
	for _, h := range holes {
		class := record.WaterClass(h.water)
		classes[class] = append(classes[class], h)
	}
	for class, members := range classes {
		if recorded, simulated := both(members, tool, record.Cycle); len(recorded) > 0 && len(simulated) > 0 {
			list = append(list, score.Cycle{Tool: tool.String(), DepthClass: class, Holes: len(recorded),
				Record: stats.Median(recorded), Simulated: stats.Median(simulated)})
		}
	}
	slices.SortFunc(list, func(a, b score.Cycle) int { return cmp.Compare(a.DepthClass, b.DepthClass) })
	return list
}

// recoveryOf is the recovery of holes by a tool.
func recoveryOf(holes []coredHole, tool coring.Tool) []score.Recovery {
	recorded, simulated := both(holes, tool, record.Recovery)
	if len(recorded) == 0 || len(simulated) == 0 {
		return nil
	}
	return []score.Recovery{{Tool: tool.String(), Holes: len(recorded), Record: spreadOf(recorded), Simulated: spreadOf(simulated)}}
}

func spreadOf(x []float64) [3]float64 {
	return [3]float64(stats.Quantiles(x, 0.1, 0.5, 0.9))
}
