package sim

// thing is something that is used up.
type thing int

// The things, in the order in which they are listed.
const (
	liners thing = iota
	catchers
	sections
	shearPins
	rotaryBits
	funnels
	assemblies
	mudSweeps
	mudFillings
	cementPlugs
	usedThings
)

func (t thing) String() string {
	return [usedThings]string{"core liners", "core catchers", "sections of 1.5 m", "shear pins", "rotary bits", "free-fall funnels", "bottom-hole assemblies lost",
		"mud sweeps, 30 to 40 barrels each", "fillings with heavy mud", "cement plugs"}[t]
}

// used counts what was used up.
type used [usedThings]int
