package result

import (
	"time"

	"coredays/model/unit"
)

// Study is many plans, each simulated as it is by itself.
type Study struct {
	Title        string
	File         string
	Call         []string // what was given after "coredays study", without seed and replications
	Seed         uint64
	Replications int      // of each plan
	StoppedEarly bool     // Plans are then those that were done
	Of           int      // plans in all
	Varied       []string // paths of the settings that vary
	Plans        []StudiedPlan
	Warnings     []string
}

// StudiedPlan is a plan of a study.
type StudiedPlan struct {
	Scenario string   // as the study names it
	Settings []string // values of what is varied, in its order
	Sails    time.Time
	SeaDays  unit.Duration
	PlanFigures
}

// PlanFigures are what came of a plan.
type PlanFigures struct {
	Needed        Spread  // s of the whole programme
	Waiting       Spread  // of these, on weather
	ChancePrimary float64 // of everything of rank 1 at the primary sites within the days
	ChanceAll     float64
	ChanceLate    float64 // of reaching port after the sea days
	InHand        Spread  // s left of the sea days
	Recovered     Spread  // m within the days
}
