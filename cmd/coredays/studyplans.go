package main

import (
	"cmp"
	"context"
	"encoding/hex"
	"errors"
	"fmt"
	"strings"
	"sync"
	"time"

	"coredays/model/listing"
	"coredays/model/plan"
	"coredays/model/result"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/model/workers"
	"coredays/output/words"
	"coredays/scenario"
	studyfile "coredays/scenario/study"
	"coredays/sim"
	"coredays/sim/study"
)

// plans are those of a study. What is read of a scenario is dropped and read again when it is sailed: the plans of a
// study would take much room.
type plans struct {
	study    *studyfile.Study
	variants []variant
	list     []dated
	warnings []checkedVariant
	each     int // replications

	compiling sync.Mutex
	compiled  *voyage.Voyage // of the variant compiled last
	which     int            // that one
}

// variant is a scenario with settings.
type variant struct {
	studyfile.Variant
	days     unit.Duration // at sea
	work     int           // of a replication
	digest   string        // of the plan, its date apart
	warnings []string      // of reading it
}

// dated is a variant on a date.
type dated struct {
	variant int
	sails   time.Time
}

// checkedVariant is what the check warns of.
type checkedVariant struct {
	Number   int
	Warnings []string
}

// read reads the study and all its scenarios.
func (s *studying) read(ctx context.Context, file string, run sim.Run) (*plans, error) {
	read, err := studyfile.Open(file)
	if err != nil {
		return nil, planFault{err}
	}
	p := &plans{study: read, each: run.Replications, which: -1}
	for _, v := range read.Variants() {
		p.variants = append(p.variants, variant{Variant: v})
	}
	sails, faults := make([]time.Time, len(p.variants)), make([]error, len(p.variants))
	workers.Share(ctx, run.Workers, 0, len(p.variants), func() func(int) {
		return func(i int) {
			var read *plan.Plan
			if read, faults[i] = p.variants[i].read(); faults[i] == nil {
				faults[i] = sparesInputs(s.cmd, append(read.Reads, p.variants[i].Scenario.Path, file))
				p.variants[i].note(read)
				sails[i] = read.Sails
			}
		}
	})
	if err := cmp.Or(ctx.Err(), onceEach(faults)); err != nil {
		return nil, asFault(err)
	}
	for i := range p.variants {
		dates, err := read.DatesOf(sails[i])
		if err != nil {
			return nil, planFault{err}
		}
		for _, at := range dates {
			p.list = append(p.list, dated{i, at})
		}
		if len(p.list) > studyfile.Most {
			return nil, planFault{fmt.Errorf("%s: there are more than %d plans: take fewer dates, settings or scenarios", read.File, studyfile.Most)}
		}
	}
	return p, nil
}

// read reads the plan of a variant.
func (v *variant) read() (*plan.Plan, error) { return scenario.Open(v.Scenario.Path, v.Settings...) }

// note keeps what is needed of a plan.
func (v *variant) note(p *plan.Plan) {
	v.days, v.work, v.warnings = p.SeaDays, study.WorkOf(p), p.Warnings
	sum := listing.Digest(listing.Of(p))
	v.digest = hex.EncodeToString(sum[:8])
}

// onceEach joins errors, each that says the same once: a fault of a scenario is one of all its variants.
func onceEach(list []error) error {
	var all []error
	said := map[string]bool{}
	for _, err := range list {
		if err != nil && !said[err.Error()] {
			said[err.Error()] = true
			all = append(all, err)
		}
	}
	return errors.Join(all...)
}

// check checks the variants of some replications, counted plan after plan, as simulate checks a plan.
func (s *studying) check(ctx context.Context, p *plans, first, end int) error {
	if first == end {
		return nil
	}
	from, to := p.list[first/p.each].variant, p.list[(end-1)/p.each].variant+1
	checked, faults := make([]checkedVariant, to-from), make([]error, to-from)
	workers.Share(ctx, s.runs.workers, from, to, func() func(int) {
		return func(i int) {
			v, err := p.variants[i].compile()
			if err == nil {
				checked[i-from].Number = i
				_, checked[i-from].Warnings, err = s.pass(v)
			}
			faults[i-from] = err
		}
	})
	p.warnings = checked
	return cmp.Or(ctx.Err(), onceEach(faults))
}

// compile compiles the plan of a variant.
func (v *variant) compile() (*voyage.Voyage, error) {
	p, err := v.read()
	if err != nil {
		return nil, planFault{err}
	}
	compiled, err := voyage.Compile(p)
	if err != nil {
		return nil, planFault{fmt.Errorf("%s: %w", p.File, err)}
	}
	return compiled, nil
}

// sailed are the plans as they are sailed.
func (p *plans) sailed() (list []study.Plan) {
	for _, d := range p.list {
		list = append(list, study.Plan{Work: p.variants[d.variant].work, Voyage: func() (*voyage.Voyage, error) { return p.voyage(d) }})
	}
	return list
}

// voyage is that of a plan. The dates of a variant share what is compiled of it.
func (p *plans) voyage(d dated) (*voyage.Voyage, error) {
	p.compiling.Lock()
	defer p.compiling.Unlock()
	if p.which != d.variant {
		v, err := p.variants[d.variant].compile()
		if err != nil {
			return nil, err
		}
		p.compiled, p.which = v, d.variant
	}
	return p.compiled.Sailing(d.sails), nil
}

// listing has a line for each plan, with its digest.
func (p *plans) listing() [][]listing.Line {
	lines := []listing.Line{}
	for i, d := range p.list {
		v := &p.variants[d.variant]
		name := fmt.Sprintf("plan %d (%s, %s)", i+1, strings.Join(append([]string{v.Scenario.Name}, v.Settings...), ", "), words.Date(d.sails))
		lines = append(lines, listing.Line{Path: name, Value: v.digest + d.sails.UTC().Format(" "+time.RFC3339)})
	}
	return [][]listing.Line{lines}
}

// result is the answer for the plans of which there are figures, the first ones.
func (p *plans) result(figures []result.PlanFigures) *result.Study {
	r := &result.Study{Title: p.study.Title, File: p.study.File, Of: len(p.list)}
	for _, vary := range p.study.Vary {
		r.Varied = append(r.Varied, vary.Path)
	}
	for i := range figures {
		v := &p.variants[p.list[i].variant]
		r.Plans = append(r.Plans, result.StudiedPlan{Scenario: v.Scenario.Name, Settings: v.Values, Sails: p.list[i].sails, SeaDays: v.days, PlanFigures: figures[i]})
	}
	r.Warnings = p.allWarnings()
	return r
}

// allWarnings are those of all scenarios, each once: most are of all variants of one.
func (p *plans) allWarnings() (list []string) {
	said := map[string]bool{}
	add := func(v *variant, warnings []string) {
		for _, w := range warnings {
			if line := v.Scenario.Name + ": " + w; !said[line] {
				said[line] = true
				list = append(list, line)
			}
		}
	}
	for i := range p.variants {
		add(&p.variants[i], p.variants[i].warnings)
	}
	for _, c := range p.warnings {
		add(&p.variants[c.Number], c.Warnings)
	}
	return list
}
