package sim

import (
	"math"
	"slices"

	"golang.org/x/exp/stats"

	"coredays/model/logbook"
	"coredays/model/unit"
)

// curveSteps is how many equal steps of chance the curve of days needed has.
const curveSteps = 200

// Closely describes the results with what charts and tables draw beside: the curve of days needed,
// the way down of each hole, and each site's section by depth.
func (r *Results) Closely() *logbook.Summary {
	s := r.Summary()
	s.Needed.Curve = r.curve()
	for i, n := range r.columns.voyage.Plan.Order {
		site := &r.columns.voyage.Sites[n]
		s.Sites[i].Section = r.sectionOf(n)
		for _, l := range site.Site.Layers {
			s.Sites[i].Layers = append(s.Sites[i].Layers, logbook.Layer{Name: l.Lithology.Name, Bottom: l.Bottom})
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
	days := r.column(r.needed, colDays)
	if len(days) == 0 {
		return nil
	}
	slices.Sort(days)
	chances := make([]float64, curveSteps+1)
	for i := range chances {
		chances[i] = float64(i) / curveSteps
	}
	return stats.Quantiles(days, chances...)
}

// wayDown is when a hole of a site came how deep.
func (r *Results) wayDown(site, hole int) []logbook.DepthMark {
	v := r.columns.voyage
	item := &v.Sites[site].Items[hole]
	rows := r.needed
	if v.Sites[site].Alternate {
		rows = r.bound
	}
	arrived := r.column(rows, r.columns.site(site, siteArrived))
	visits := len(arrived) - count(arrived, math.IsNaN)
	var marks []logbook.DepthMark
	for m := range depthMarks {
		after := make([]float64, 0, len(arrived))
		for n, at := range r.marked(item.Number, m) {
			if !math.IsNaN(at) {
				after = append(after, at-arrived[n])
			}
		}
		mark := logbook.DepthMark{Depth: item.Item.AskedFor() * unit.Depth(m) / depthSteps, P10: math.NaN(), P50: math.NaN(), P90: math.NaN()}
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
	values := make([]float64, 0, len(r.done))
	for n, done := range r.done {
		if done {
			values = append(values, float64(r.marks[(n*r.columns.voyage.Items+item)*depthMarks+mark]))
		}
	}
	return values
}

// sectionOf is the section of a site by depth.
func (r *Results) sectionOf(site int) []logbook.Slice {
	all, bins := newSlices(r.columns.voyage), int(r.columns.voyage.Sites[site].Section/bin)
	visits := float64(r.section.visits[site])
	if visits == 0 {
		return nil
	}
	var list []logbook.Slice
	for i := all.from[site]; i < all.from[site+1]; i++ {
		k := i - all.from[site]
		in := min(bins, (k+1)*inSlice) - k*inSlice
		list = append(list, logbook.Slice{From: unit.Depth(k) * slice, To: unit.Depth(float64(k)*slice + float64(in)*bin),
			Cored: unit.Length(float64(r.section.cut[i]) / visits / 100), Recovered: unit.Length(float64(r.section.recovered[i]) / visits / 100),
			Covered: float64(r.section.covered[i]) / visits / float64(in)})
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
