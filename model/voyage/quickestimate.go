package voyage

import "coredays/model/unit"

// QuickEstimate is a voyage estimated once: every quantity at its median, the sea calm, nothing going
// wrong, the whole programme of the primary sites. The zero value is one that was not estimated.
type QuickEstimate struct {
	Total           unit.Duration   // port to port
	Items           []unit.Duration // by number; 0 for what is not done
	Arrives, Leaves []unit.Duration // by site, after sailing; both 0 for a site that is not visited
	Home            bool            // the last port is reached
}

// Known reports whether the voyage was estimated.
func (r *QuickEstimate) Known() bool { return r.Total > 0 }
