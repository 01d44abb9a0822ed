package score

import "slices"

// Leg is a leg's sites as one: their results summed, on record and in the forecast.
type Leg struct {
	Program, Leg string
	Sites        int
	Results      [AllResults]Quantiles
}

// Summed adds up the cases of each group replication by replication, so that what the members of a group
// share is kept; the groups come in the order of their first members. Every sample must be as long as the
// others of its group. A blank record of one member makes that of the group blank.
func Summed(cases []Sampled, groups []string) (sums []Sampled, of []string) {
	place := map[string]int{}
	for i, c := range cases {
		n, known := place[groups[i]]
		if !known {
			place[groups[i]] = len(sums)
			sums, of = append(sums, Sampled{c.Actual, slices.Clone(c.Sample)}), append(of, groups[i])
			continue
		}
		sums[n].Actual += c.Actual
		for r, x := range c.Sample {
			sums[n].Sample[r] += x
		}
	}
	return sums, of
}
