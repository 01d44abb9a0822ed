package share

import (
	"fmt"
	"strings"

	"coredays/model/listing"
)

// Head says what a share is of.
type Head struct {
	Call    Call
	Program string // name, version and machine of what sailed it
	Which   Which
	// Plans are what was sailed, as it was understood, ship, ground and records among it; for work on many
	// plans or on tables a line for each, with its digest.
	Plans [][]listing.Line
}

// Unlike says in what two shares differ that should not; empty where they don't.
func (h *Head) Unlike(o *Head) string {
	if what := h.Call.unlike(&o.Call); what != "" {
		return what
	}
	switch {
	case h.Program != o.Program:
		return fmt.Sprintf("sailed by %s, not by %s", o.Program, h.Program)
	case h.Which.Of != o.Which.Of:
		return fmt.Sprintf("one of %d shares, not of %d", o.Which.Of, h.Which.Of)
	}
	return PlansDiffer(h.Plans, o.Plans)
}

// PlansDiffer says in what two lists of plans differ; empty where they don't.
func PlansDiffer(one, other [][]listing.Line) string {
	if len(one) != len(other) {
		return fmt.Sprintf("there are %d plans in the one and %d in the other", len(one), len(other))
	}
	for i := range one {
		if listing.Digest(one[i]) != listing.Digest(other[i]) {
			return "the plans differ (figures in SI units): " + strings.Join(listing.Differences(one[i], other[i]), "; ")
		}
	}
	return ""
}
