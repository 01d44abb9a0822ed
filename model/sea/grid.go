package sea

import (
	"fmt"
	"math"
	"slices"
	"time"

	"coredays/model/unit"
)

const (
	hourlyUpTo  = 1.5 * 3600 // s between readings that are averaged into hours
	mostBetween = 6.5 * 3600 // s between readings of a usable record
	shortGap    = 4          // h between two heights up to which the hours between are filled
	stillest    = 0.05       // m: lower seas count as this, since scores need a logarithm
)

// gridded lays readings out hour by hour on the basis of 3-hour means. Readings about hourly or
// closer are averaged into hours and those over three; rarer ones are taken as means already, as
// those of a hindcast are, and joined on the scale of ln h.
func gridded(readings []reading, report Report) (*Record, error) {
	if len(readings) < 2 {
		return nil, fmt.Errorf("%s usable: at least a year of heights is wanted", counted(len(readings), "row"))
	}
	between := interval(readings)
	report.Interval = unit.Duration(between)
	if between > mostBetween {
		return nil, fmt.Errorf("the readings are %.3g h apart: 6 h at most are wanted, hourly is best", between/3600)
	}
	first, last := hourOf(readings[0].at), hourOf(readings[len(readings)-1].at)
	reach := max(shortGap, int(math.Round(1.5*between/3600)))
	if most := len(readings) * reach; most < leastHours {
		return nil, tooShort(int(last-first)+1, most) // before room is made for centuries
	}
	r := &Record{Start: time.Unix(first*3600, 0).UTC(), PeriodFactor: periodFactor(readings)}
	hours := averaged(readings, first, int(last-first)+1)
	joined(hours, reach)
	if r.Heights = hours; between <= hourlyUpTo {
		r.Heights = smoothed(hours)
	}
	for i, h := range r.Heights {
		r.Heights[i] = max(h, stillest) // max keeps NaN
	}
	report.From, report.To = r.Start, r.at(len(r.Heights)-1)
	r.Report = report
	r.Report.count(r)
	return r, r.check()
}

// hourOf is the hour nearest to a moment, from 1970.
func hourOf(at int64) int64 { return int64(math.Floor(float64(at)/3600 + 0.5)) }

// interval is the usual time between readings, s.
func interval(readings []reading) float64 {
	gaps := make([]int64, len(readings)-1)
	for i := range gaps {
		gaps[i] = readings[i+1].at - readings[i].at
	}
	slices.Sort(gaps)
	return float64(gaps[len(gaps)/2])
}

// averaged is the mean of the readings nearest to each hour, NaN where there is none.
func averaged(readings []reading, first int64, n int) []float32 {
	sum, count := make([]float32, n), make([]float32, n)
	for _, r := range readings {
		i := hourOf(r.at) - first
		sum[i] += float32(r.height)
		count[i]++
	}
	for i := range sum {
		sum[i] /= count[i] // 0/0 is the NaN of a gap
	}
	return sum
}

// smoothed is the running mean over three hours.
func smoothed(hours []float32) []float32 {
	means := make([]float32, len(hours))
	for i := range means {
		var sum, n float32
		for j := max(0, i-1); j <= min(len(hours)-1, i+1); j++ {
			if h := hours[j]; h == h {
				sum, n = sum+h, n+1
			}
		}
		means[i] = float32(math.NaN())
		if n >= leastOfThree {
			means[i] = sum / n
		}
	}
	return means
}

// leastOfThree is how many of its three hours a mean needs.
const leastOfThree = 2

// joined fills the hours between heights up to so many hours apart, on the scale of ln h.
func joined(hours []float32, most int) {
	last := -1
	for i, h := range hours {
		if h != h {
			continue
		}
		if last >= 0 && i-last <= most {
			from, to := math.Log(max(float64(hours[last]), stillest)), math.Log(max(float64(h), stillest))
			for j := last + 1; j < i; j++ {
				hours[j] = float32(math.Exp(from + (to-from)*float64(j-last)/float64(i-last)))
			}
		}
		last = i
	}
}

// periodFactor is the median of peak period over the root of the height, 0 where there are none.
func periodFactor(readings []reading) float64 {
	var factors []float64
	for _, r := range readings {
		if r.height >= 2 && r.period > 0 && r.period < 30 {
			factors = append(factors, r.period/math.Sqrt(r.height))
		}
	}
	if len(factors) < 100 {
		return 0
	}
	slices.Sort(factors)
	return factors[len(factors)/2]
}

// count takes stock of hours and gaps.
func (r *Report) count(record *Record) {
	last := -1
	for i, h := range record.Heights {
		if h != h {
			continue
		}
		r.Hours++
		if gap := i - last - 1; gap > 0 && last >= 0 {
			r.Gaps++
			if gap > r.Longest.Hours {
				r.Longest = Gap{From: record.at(last + 1), Hours: gap}
			}
		}
		last = i
	}
}
