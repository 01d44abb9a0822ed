package score

import (
	"maps"
	"slices"
	"strings"

	"golang.org/x/exp/stats"
)

// Class is how the cases of a class did.
type Class struct {
	By, Class string
	Cases     int
	Ratio     float64 // median of what came true over the forecast's median
	CRPS      float64
	Inside80  float64
}

// Classes scores cases by class, in the order of the classes' names; the lowest numbers of names with
// numbers come first.
func Classes(by string, cases []Case, class func(i int) string) []Class {
	members := map[string][]Case{}
	for i, c := range cases {
		members[class(i)] = append(members[class(i)], c)
	}
	names := slices.SortedFunc(maps.Keys(members), func(a, b string) int {
		if len(number(a)) != len(number(b)) {
			return len(number(a)) - len(number(b))
		}
		return strings.Compare(a, b)
	})
	var all []Class
	for _, name := range names {
		all = append(all, scoreClass(by, name, members[name]))
	}
	return all
}

// number is the number with which a name begins.
func number(name string) string { return name[:len(name)-len(strings.TrimLeft(name, "0123456789"))] }

func scoreClass(by, name string, cases []Case) Class {
	var ratios, inside, crps []float64
	for _, c := range cases {
		q := c.Forecast.Quantiles(0.1, 0.5, 0.9)
		ratios = append(ratios, c.Actual/q[1])
		inside = append(inside, within(c.Actual, q[0], q[2]))
		crps = append(crps, c.Forecast.CRPS(c.Actual))
	}
	return Class{by, name, len(cases), stats.Median(ratios), stats.Mean(crps), stats.Mean(inside)}
}
