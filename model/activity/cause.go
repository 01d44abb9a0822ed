package activity

// Cause groups kinds of activity by what makes them long or short, to tell what drives the
// spread of an expedition.
type Cause int

// The causes.
const (
	OfSailing Cause = iota
	OfRigUp
	OfTrips
	OfMudline
	OfPiston
	OfRotating
	OfConnections
	OfDrilling
	OfDeck
	OfMeasuring
	OfReentry
	OfLeaving
	OfOtherWork
	OfTasks
	OfTrouble
	OfBreakdowns
	OfWeather
	Causes
)

func (c Cause) String() string {
	return [Causes]string{"sailing speed", "rig-up, BHA and moves", "pipe trips", "finding the mudline", "piston coring", "extended and rotary coring",
		"connections", "drilling ahead", "barrel bench and catwalk", "measuring", "re-entry", "leaving the hole", "other work on site", "tasks", "trouble in the hole",
		"breakdowns", "weather"}[c]
}
