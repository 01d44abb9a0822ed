// Package activity names what a ship can be doing: each kind of activity with the class of time
// it counts to, the sea it needs, and what stopping in its midst means.
package activity

// Class is a class of time. The classes of an expedition add up to its length.
type Class int

// The classes.
const (
	Sailing   Class = iota // passages between ports and sites
	Port                   // pilotage and calls on the way; days in port before sailing are apart
	Trips                  // rigging up, running and pulling pipe, bottom-hole assemblies, moving between holes
	Coring                 // cutting and fetching core, drilling ahead, clearing a hole
	Measuring              // logging, temperature, penetrometers, tasks that observe
	Waiting                // for the sea
	Repair                 // of ship and rig, and trouble in the hole
	Other                  // what belongs to none of these
	Classes
)

// Names of the classes as the JSON has them.
var classKeys = [Classes]string{"sailing", "port", "rig_up_and_trips", "coring", "measuring", "waiting", "repair", "other"}

// Names of the classes for people.
var classNames = [Classes]string{"sailing", "port", "rig-up and trips", "coring", "measuring", "waiting on weather", "repair and trouble", "other"}

// Key is the name of the class in JSON.
func (c Class) Key() string { return classKeys[c] }

func (c Class) String() string { return classNames[c] }
