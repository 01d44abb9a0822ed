package random

import (
	"slices"
	"testing"
)

// Of twenty replications a place that counts in one is rare no more. By hand: 3 runs in one replication and 6 in two others make 5 in the mean.
func TestPlacesCountByTheirRuns(t *testing.T) {
	u := &uses{of: make([]map[Place]*use, 2)}
	often, once := Place{1, 2}, Place{1, 1}
	for u.at = 1; u.at <= 3; u.at++ {
		for n := range []int{3, 6, 6}[u.at-1] {
			u.note(1, often, n+1)
		}
	}
	u.note(1, once, 0)
	for replications, want := range map[int][]UsedAt{20: {{once, 0}, {often, 5}}, 21: {{often, 5}}} {
		if got := u.Worthwhile(replications); !slices.Equal(got[1], want) || len(got[0]) > 0 {
			t.Errorf("of %d replications %v, want %v", replications, got, want)
		}
	}
}
