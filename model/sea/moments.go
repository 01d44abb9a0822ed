package sea

import (
	"math"
	"time"
)

// Moments are the mean and standard deviation of heights by month, m.
type Moments struct{ n, sum, squares [12]float64 }

// add takes in a series hour by hour from start, NaN in a gap.
func (m *Moments) add(start time.Time, series []float32) {
	month := newMonths(start)
	for i, h := range series {
		if k := month.of(i); h == h {
			x := float64(h)
			m.n[k], m.sum[k], m.squares[k] = m.n[k]+1, m.sum[k]+x, m.squares[k]+x*x
		}
	}
}

func (m *Moments) merge(o *Moments) {
	for k := range m.n {
		m.n[k], m.sum[k], m.squares[k] = m.n[k]+o.n[k], m.sum[k]+o.sum[k], m.squares[k]+o.squares[k]
	}
}

// Mean is the mean of a month, January being 0; NaN without heights.
func (m *Moments) Mean(month int) float64 { return m.sum[month] / m.n[month] }

// Deviation is the standard deviation of a month.
func (m *Moments) Deviation(month int) float64 {
	mean := m.Mean(month)
	return math.Sqrt(max(0, m.squares[month]/m.n[month]-mean*mean))
}
