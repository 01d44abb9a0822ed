package statistics

import (
	"math"
	"slices"

	"golang.org/x/exp/stats"

	"coredays/model/result"
	"coredays/model/unit"
)

// CurveSteps is how many equal steps of chance the curve of days needed has.
const CurveSteps = 200

// Closely describes the results with what charts and tables draw beside: the curve of days needed,
// the way down of each hole, and each site's section by depth.
func (r *Results) Closely() *result.Summary {
	s := r.Summary()
	s.Needed.Curve = r.curve()
	for i, n := range r.Layout.Voyage.Plan.Order {
		site := &r.Layout.Voyage.Sites[n]
		s.Sites[i].Section = r.sectionOf(n)
		for _, l := range site.Site.Layers {
			s.Sites[i].Layers = append(s.Sites[i].Layers, result.Layer{Name: l.Lithology.Name, Bottom: l.Bottom})
		}
		for h := range s.Sites[i].Holes {
			if !s.Sites[i].Holes[h].Task {
				s.Sites[i].Holes[h].Marks = r.wayDown(n, h)
			}
		}
	}
	return s
}

// curve is the quantiles of days needed.
func (r *Results) curve() []float64 {
	days := r.Column(r.Unconstrained, ColDays)
	if len(days) == 0 {
		return nil
	}
	slices.Sort(days)
	chances := make([]float64, CurveSteps+1)
	for i := range chances {
		chances[i] = float64(i) / CurveSteps
	}
	return stats.Quantiles(days, chances...)
}

// wayDown is when a hole of a site came how deep.
func (r *Results) wayDown(site, hole int) []result.DepthMark {
	v := r.Layout.Voyage
	item := &v.Sites[site].Items[hole]
	rows := r.Unconstrained
	if v.Sites[site].Alternate {
		rows = r.Constrained
	}
	arrived := r.Column(rows, r.Layout.Site(site, SiteArrived))
	visits := len(arrived) - count(arrived, math.IsNaN)
	var marks []result.DepthMark
	for m := range DepthMarks {
		after := make([]float64, 0, len(arrived))
		for n, at := range r.marked(item.Number, m) {
			if !math.IsNaN(at) {
				after = append(after, at-arrived[n])
			}
		}
		mark := result.DepthMark{Depth: item.Item.AskedFor() * unit.Depth(m) / DepthSteps, P10: math.NaN(), P50: math.NaN(), P90: math.NaN()}
		if len(after) > 0 {
			slices.Sort(after)
			q := stats.Quantiles(after, 0.1, 0.5, 0.9)
			mark.Share, mark.P10, mark.P50, mark.P90 = float64(len(after))/float64(visits), q[0], q[1], q[2]
		}
		marks = append(marks, mark)
	}
	return marks
}

// marked collects the moments of a mark over the replications that were done.
func (r *Results) marked(item, mark int) []float64 {
	values := make([]float64, 0, len(r.Done))
	for n, done := range r.Done {
		if done {
			values = append(values, float64(r.Marks[(n*r.Layout.Voyage.Items+item)*DepthMarks+mark]))
		}
	}
	return values
}

// sectionOf is the section of a site by depth.
func (r *Results) sectionOf(site int) []result.Slice {
	all, bins := NewSlices(r.Layout.Voyage), int(r.Layout.Voyage.Sites[site].Section/Bin)
	visits := float64(r.Section.Visits[site])
	if visits == 0 {
		return nil
	}
	var list []result.Slice
	for i := all.From[site]; i < all.From[site+1]; i++ {
		k := i - all.From[site]
		in := min(bins, (k+1)*InSlice) - k*InSlice
		list = append(list, result.Slice{From: unit.Depth(k) * Slice, To: unit.Depth(float64(k)*Slice + float64(in)*Bin),
			Cored: unit.Length(float64(r.Section.Cut[i]) / visits / 100), Recovered: unit.Length(float64(r.Section.Recovered[i]) / visits / 100),
			Covered: float64(r.Section.Covered[i]) / visits / float64(in)})
	}
	return list
}

func count(values []float64, of func(float64) bool) (n int) {
	for _, x := range values {
		if of(x) {
			n++
		}
	}
	return n
}
