package activity

// Stop says what becomes of an activity when the sea rises above its limit, or something
// breaks, in its midst.
type Stop int

// The rules.
const (
	Pause        Stop = iota // work stops at once and goes on later where it was
	NextUnit                 // the stand or joint in hand is finished first, then work pauses
	FinishFirst              // it can't be left: a barrel on the wire is recovered first
	Forfeit                  // what is left of it is given up: a temperature stop
	Restart                  // what was done is lost and begins again: a logging run
	RestartAtSea             // the same in a rough sea, but a breakdown is a pause: a task
)

// BeginsAgain reports whether what was done is lost by a stop: of the sea, or else of a breakdown.
func (s Stop) BeginsAgain(sea bool) bool { return s == Restart || sea && s == RestartAtSea }

func (s Stop) String() string {
	return [...]string{"pauses", "pauses after the unit in hand", "is finished first", "is given up", "begins again", "begins again after a rough sea"}[s]
}

// Limit names a class of work that has a limit of sea of its own.
type Limit int

// The classes of work with a limit.
const (
	AnySea       Limit = iota // sailing, port
	Positioning               // lowering thrusters, holding station before pipe is run
	PipeHandling              // drill collars and bottom-hole assemblies on the rig floor
	Tripping                  // running and pulling pipe
	PistonCoring              // piston corers: no compensation between ship and bit
	RotaryCoring              // extended and rotary barrels, drilling: compensated
	Logging                   // tool strings on the wire, re-entry by camera
	FreeTask                  // a task with a limit of its own
	Limits
)

var limitKeys = [Limits]string{"any_sea", "positioning", "pipe_handling", "tripping", "piston_coring", "rotary_coring", "logging", "free_task"}

// Key is the name of the class of work in a ship file.
func (l Limit) Key() string { return limitKeys[l] }
