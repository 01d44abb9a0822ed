package learn

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/mat"

	"coredays/model/spread"
)

// Posterior is what the evidence tells: a Gaussian over all factors that something was observed of, and the common
// one. A factor that is not in it, such as of a site still to come, is as it was, and independent of the rest.
type Posterior struct {
	Factors []Factor
	Mean    *mat.VecDense
	Cov     *mat.SymDense
	Outside []int // of each evidence, how many values lie beyond what its shape allows
	root    *mat.TriDense
	index   map[Factor]int
	drawn   []spread.Drawn
	above   []int // of each evidence, the first that has its levels above the run
}

// From conditions the spreads on the evidence. It is an error where nothing can be learned because a quantity
// has no spread, or where values contradict each other, as two different values of a quantity whose spread has
// no share for the run.
func From(evidence ...Evidence) (*Posterior, error) {
	p := &Posterior{Outside: make([]int, len(evidence)), index: map[Factor]int{}}
	var exact, bounded []observed
	named := map[uint64]int{}
	for n := range evidence {
		q := &evidence[n].Of
		if q.Shape == nil || q.IsFixed() {
			return nil, fmt.Errorf("evidence %d: a quantity without spread learns nothing", n+1)
		}
		p.drawn = append(p.drawn, q.Compile())
		above, known := named[evidence[n].Above]
		if !known || evidence[n].Above == 0 {
			above = n
			named[evidence[n].Above] = n
		}
		p.above = append(p.above, above)
		e, b, outside := observe(n, above, &p.drawn[n], evidence[n].Seen)
		exact, bounded = append(exact, e...), append(bounded, b...)
		p.Outside[n] = outside
	}
	items := p.collect(append(append([]observed(nil), exact...), bounded...))
	mean, cov, err := condition(items, exact, bounded)
	if err != nil {
		return nil, err
	}
	propagate(mean, cov, len(items), bounded)
	return p, p.keep(mean, cov)
}

// collect lists the factors of all that was observed, and their items.
func (p *Posterior) collect(all []observed) (items []item) {
	last := map[Factor]int{}
	for i := range all {
		x := &all[i].item
		if f := (Factor{x.of, spread.Run, x.at}); !x.alone {
			if n, known := last[f]; !known || x.run > n {
				last[f] = x.run
			}
		}
	}
	add := func(f Factor, q *spread.Drawn) {
		if _, known := p.index[f]; known {
			return
		}
		p.index[f] = len(p.Factors)
		p.Factors = append(p.Factors, f)
		above := f.Of
		if f.Of != Common {
			above = p.above[f.Of]
		}
		items = append(items, factorItem(f, above, last[f], q))
	}
	add(Factor{Of: Common}, nil)
	for n := range p.drawn {
		add(Factor{p.above[n], spread.Expedition, Place{}}, &p.drawn[n])
	}
	for i := range all {
		x := &all[i].item
		q := &p.drawn[x.of]
		add(Factor{x.above, spread.Site, Place{Site: x.at.Site}}, q)
		add(Factor{x.above, spread.Hole, x.at}, q)
		if _, known := last[Factor{x.of, spread.Run, x.at}]; known && q.Persistence != 0 {
			add(Factor{x.of, spread.Run, x.at}, q)
		}
	}
	return items
}

// condition is the Gaussian of the items, and of the scores of which a bound is known, given those known exactly.
func condition(items []item, exact, bounded []observed) (mean *mat.VecDense, cov *mat.SymDense, err error) {
	for i := range bounded {
		items = append(items, bounded[i].item)
	}
	n, m := len(items), len(exact)
	mean, cov = mat.NewVecDense(n, nil), mat.NewSymDense(n, nil)
	for i := range items {
		for j := i; j < n; j++ {
			cov.SetSym(i, j, covariance(&items[i], &items[j]))
		}
		cov.SetSym(i, i, cov.At(i, i)+items[i].own)
	}
	if m == 0 {
		return mean, cov, nil
	}
	seen, across, y := mat.NewSymDense(m, nil), mat.NewDense(m, n, nil), mat.NewVecDense(m, nil)
	for i := range exact {
		for j := i; j < m; j++ {
			seen.SetSym(i, j, covariance(&exact[i].item, &exact[j].item))
		}
		seen.SetSym(i, i, seen.At(i, i)+exact[i].own)
		for j := range items {
			across.Set(i, j, covariance(&exact[i].item, &items[j]))
		}
		y.SetVec(i, exact[i].score)
	}
	var root mat.Cholesky
	if !root.Factorize(seen) {
		return nil, nil, fmt.Errorf("the values contradict each other: their spread has no share for the run, and they have no error")
	}
	var gain mat.Dense
	if err := root.SolveTo(&gain, across); err != nil {
		return nil, nil, fmt.Errorf("the values contradict each other: %w", err)
	}
	mean.MulVec(gain.T(), y) // Rasmussen and Williams 2006, eq. A.6 (from memory)
	var explained mat.Dense
	explained.Mul(across.T(), &gain)
	for i := range n {
		for j := i; j < n; j++ {
			cov.SetSym(i, j, cov.At(i, j)-explained.At(i, j)) // same
		}
	}
	return mean, cov, nil
}

// keep takes over the factors' part of a Gaussian, and its root for drawing.
func (p *Posterior) keep(mean *mat.VecDense, cov *mat.SymDense) error {
	n := len(p.Factors)
	p.Mean, p.Cov = mat.VecDenseCopyOf(mean.SliceVec(0, n)), mat.NewSymDense(n, nil)
	p.Cov.CopySym(cov.SliceSym(0, n))
	steady := mat.NewSymDense(n, nil)
	steady.CopySym(p.Cov)
	for i := range n { // a factor that is known for certain has no variance left, which rounding may turn below 0
		steady.SetSym(i, i, steady.At(i, i)+1e-12)
	}
	var root mat.Cholesky
	if !root.Factorize(steady) {
		return fmt.Errorf("what the values say is within rounding")
	}
	p.root = mat.NewTriDense(n, mat.Lower, nil)
	root.LTo(p.root)
	return nil
}

// Of is what is known of a factor: mean 0 and sd 1 where nothing was observed of it.
func (p *Posterior) Of(f Factor) Score {
	i, known := p.index[f]
	if !known {
		return Score{0, 1}
	}
	return Score{p.Mean.AtVec(i), math.Sqrt(math.Max(0, p.Cov.At(i, i)))}
}

// Draw gives a value of each factor from what is known of all of them together, in the order of Factors. The
// argument gives the n-th standard normal number.
func (p *Posterior) Draw(normal func(n int) float64) []float64 {
	n := len(p.Factors)
	z, x := mat.NewVecDense(n, nil), mat.NewVecDense(n, nil)
	for i := range n {
		z.SetVec(i, normal(i))
	}
	x.MulVec(p.root, z)
	x.AddVec(x, p.Mean)
	return x.RawVector().Data
}
