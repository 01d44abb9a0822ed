// Package studied reads the plans of a study: each scenario with each setting on each date.
package studied

import (
	"cmp"
	"context"
	"encoding/hex"
	"errors"
	"fmt"
	"slices"
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
	"coredays/sim/study"
)

// Plans are those of a study. What is read of a scenario is dropped and read again when it is simulated: the plans of a
// study would take much room.
type Plans struct {
	Study    *studyfile.Study
	Warnings []Checked // of the check
	variants []variant
	list     []dated
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
	reads    []string      // files beside the scenario
}

// dated is a variant on a date.
type dated struct {
	variant int
	sails   time.Time
}

// Checked is what the check warns of, of a variant of the study.
type Checked struct {
	Number   int
	Warnings []string
}

// Read reads a study and all its scenarios, by so many workers. Each plan is to have so many replications.
func Read(ctx context.Context, file string, replications, processors int) (*Plans, error) {
	read, err := studyfile.Open(file)
	if err != nil {
		return nil, err
	}
	p := &Plans{Study: read, each: replications, which: -1}
	for _, v := range read.Variants() {
		p.variants = append(p.variants, variant{Variant: v})
	}
	sails, faults := make([]time.Time, len(p.variants)), make([]error, len(p.variants))
	workers.Share(ctx, processors, 0, len(p.variants), func() func(int) {
		return func(i int) {
			v := &p.variants[i]
			var read *plan.Plan
			if read, faults[i] = v.read(); faults[i] == nil {
				v.note(read)
				sails[i] = read.Sails
			}
		}
	})
	if err := cmp.Or(ctx.Err(), onceEach(faults)); err != nil {
		return nil, err
	}
	return p, p.date(sails)
}

// date lists the plans: each variant on each date.
func (p *Plans) date(sails []time.Time) error {
	for i := range p.variants {
		dates, err := p.Study.DatesOf(sails[i])
		if err != nil {
			return err
		}
		for _, at := range dates {
			p.list = append(p.list, dated{i, at})
		}
		if len(p.list) > studyfile.Most {
			return fmt.Errorf("%s: there are more than %d plans: take fewer dates, settings or scenarios", p.Study.File, studyfile.Most)
		}
	}
	return nil
}

// Reads are the files that the study reads.
func (p *Plans) Reads() (list []string) {
	for i := range p.variants {
		list = append(append(list, p.variants[i].Scenario.Path), p.variants[i].reads...)
	}
	slices.Sort(list)
	return slices.Compact(append(list, p.Study.File))
}

// Count is how many plans there are.
func (p *Plans) Count() int { return len(p.list) }

// read reads the plan of a variant.
func (v *variant) read() (*plan.Plan, error) { return scenario.Open(v.Scenario.Path, v.Settings...) }

// note keeps what is needed of a plan.
func (v *variant) note(p *plan.Plan) {
	v.days, v.work, v.warnings, v.reads = p.SeaDays, study.WorkOf(p), p.Warnings, p.Reads
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

// Check holds the variants of some replications, counted plan after plan, against what can be done: pass says what it
// warns of, or why one can't be.
func (p *Plans) Check(ctx context.Context, first, end, processors int, pass func(*voyage.Voyage) (warnings []string, err error)) error {
	if first == end {
		return nil
	}
	from, to := p.list[first/p.each].variant, p.list[(end-1)/p.each].variant+1
	p.Warnings = make([]Checked, to-from)
	faults := make([]error, to-from)
	workers.Share(ctx, processors, from, to, func() func(int) {
		return func(i int) {
			v, err := p.variants[i].compile()
			if err == nil {
				p.Warnings[i-from].Number = i
				p.Warnings[i-from].Warnings, err = pass(v)
			}
			faults[i-from] = err
		}
	})
	return cmp.Or(ctx.Err(), onceEach(faults))
}

// compile compiles the plan of a variant.
func (v *variant) compile() (*voyage.Voyage, error) {
	p, err := v.read()
	if err != nil {
		return nil, err
	}
	compiled, err := voyage.Compile(p)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", p.File, err)
	}
	return compiled, nil
}

// Sailed are the plans as they are sailed.
func (p *Plans) Sailed() (list []study.Plan) {
	for _, d := range p.list {
		list = append(list, study.Plan{Work: p.variants[d.variant].work, Voyage: func() (*voyage.Voyage, error) { return p.voyage(d) }})
	}
	return list
}

// voyage is that of a plan. The dates of a variant share what is compiled of it.
func (p *Plans) voyage(d dated) (*voyage.Voyage, error) {
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

// Listing has a line for each plan, with its digest.
func (p *Plans) Listing() [][]listing.Line {
	lines := []listing.Line{}
	for i, d := range p.list {
		v := &p.variants[d.variant]
		name := fmt.Sprintf("plan %d (%s, %s)", i+1, strings.Join(append([]string{v.Scenario.Name}, v.Settings...), ", "), words.Date(d.sails))
		lines = append(lines, listing.Line{Path: name, Value: v.digest + d.sails.UTC().Format(" "+time.RFC3339)})
	}
	return [][]listing.Line{lines}
}

// Result is the answer for the plans of which there are figures, the first ones.
func (p *Plans) Result(figures []result.PlanFigures) *result.Study {
	r := &result.Study{Title: p.Study.Title, File: p.Study.File, Of: len(p.list)}
	for _, vary := range p.Study.Vary {
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
func (p *Plans) allWarnings() (list []string) {
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
	for _, c := range p.Warnings {
		add(&p.variants[c.Number], c.Warnings)
	}
	return list
}
