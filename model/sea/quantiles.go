package sea

import (
	"fmt"
	"math"
	"time"

	"gonum.org/v1/gonum/stat/distuv"
)

// quantiles are ln h at equally spaced standard normal scores. Between them ln h runs straight,
// beyond them it goes on as steeply as over the last of them.
type quantiles [knots]float64

const (
	knots     = 33
	knotStep  = 0.25
	knotFirst = -knotStep * (knots - 1) / 2 // -4
)

// at is ln h at a score.
func (q *quantiles) at(z float64) float64 {
	x := (z - knotFirst) / knotStep
	i := min(max(int(x), 0), knots-2)
	return q[i] + (x-float64(i))*(q[i+1]-q[i])
}

// score is the score of ln h: the inverse of at.
func (q *quantiles) score(lnH float64) float64 {
	low, high := 0, knots-1
	for high-low > 1 {
		if mid := (low + high) / 2; q[mid] <= lnH {
			low = mid
		} else {
			high = mid
		}
	}
	return knotFirst + knotStep*(float64(low)+(lnH-q[low])/(q[low+1]-q[low]))
}

const (
	window    = 20    // days to either side of a day whose heights are taken as that day's
	leastSeen = 100   // hours that must be known around a day
	bins      = 1400  // of ln h
	binWidth  = 0.005 // 0.5 % of the height
)

// lowestBin is ln h at the lower edge of the first bin; the last ends at 54 m.
var lowestBin = math.Log(stillest) - binWidth/2

// TableOf is the distribution of the heights in a record by day of the year: each day has the
// heights of all years within 20 days of it, as normal scores. It fails where a time of the year
// is missing.
func TableOf(r *Record) (*Table, error) {
	counts := r.countedByDay()
	t := &Table{seen: new([366]quantiles), powers: powerTable()}
	for d := range t.seen {
		var around [bins]float64
		total := 0.0
		for off := -window; off <= window; off++ {
			for b, n := range counts[((d+off)%366+366)%366] {
				around[b] += float64(n)
				total += float64(n)
			}
		}
		if total < leastSeen {
			return nil, fmt.Errorf("the record has next to no heights within %d days of %s: every season is wanted",
				window, time.Date(2024, 1, d+1, 0, 0, 0, 0, time.UTC).Format("2 January"))
		}
		t.seen[d] = quantilesOf(&around, total)
	}
	return t, nil
}

// countedByDay counts the hours of each day of the year by height.
func (r *Record) countedByDay() *[366][bins]int32 {
	counts := new([366][bins]int32)
	for i, h := range r.Heights {
		if h == h {
			b := int((math.Log(float64(h)) - lowestBin) / binWidth)
			counts[r.at(i).YearDay()-1][min(max(b, 0), bins-1)]++
		}
	}
	return counts
}

var normal = distuv.UnitNormal

// quantilesOf turns counts into quantiles.
func quantilesOf(counts *[bins]float64, total float64) quantiles {
	var q quantiles
	b, below := 0, 0.0
	first, last := knots, -1
	for k := range q {
		p := normal.CDF(knotFirst + knotStep*float64(k))
		if p*total < 0.5 || (1-p)*total < 0.5 {
			continue // beyond the record
		}
		for below+counts[b] < p*total {
			below += counts[b]
			b++
		}
		q[k] = lowestBin + binWidth*(float64(b)+(p*total-below)/counts[b])
		first, last = min(first, k), k
	}
	q.extend(first, last)
	return q
}

// tail is how many knots the slope beyond the record is taken over: one unit of the score.
const tail = 4

// extend goes on beyond the known knots, and makes ln h rise everywhere so that it can be inverted.
func (q *quantiles) extend(first, last int) {
	least := 0.01 * knotStep // of ln h from knot to knot: a height stated so coarsely still has its scores
	for k := first + 1; k <= last; k++ {
		q[k] = max(q[k], q[k-1]+least/100)
	}
	up := max(least, (q[last]-q[last-tail])/tail)
	down := max(least, (q[first+tail]-q[first])/tail)
	for k := last + 1; k < knots; k++ {
		q[k] = q[k-1] + up
	}
	for k := first - 1; k >= 0; k-- {
		q[k] = q[k+1] - down
	}
}
