package sim

// thing is something that is used up.
type thing int

// The things, in the order in which they are listed.
const (
	liners thing = iota
	shearPins
	rotaryBits
	funnels
	assemblies
	mudSweeps
	cementPlugs
	usedThings
)

func (t thing) String() string {
	return [usedThings]string{"core liners", "shear pins", "rotary bits", "free-fall funnels", "bottom-hole assemblies lost",
		"mud sweeps", "cement plugs"}[t]
}

// used counts what was used up.
type used [usedThings]int
