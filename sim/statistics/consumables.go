package statistics

// Consumable is something that is used up.
type Consumable int

// The things, in the order in which they are listed.
const (
	Liners Consumable = iota
	Catchers
	Sections
	ShearPins
	RotaryBits
	Funnels
	Cones
	CasingJoints
	CasingCements
	Assemblies
	PipeJoints
	MudSweeps
	MudFillings
	CementPlugs
	Consumables
)

func (t Consumable) String() string {
	return [Consumables]string{"core liners", "core catchers", "sections of 1.5 m", "shear pins", "rotary bits", "free-fall funnels", "re-entry cones", "joints of casing", "casing cement jobs", "bottom-hole assemblies lost", "joints of pipe lost",
		"mud sweeps, 30 to 40 barrels each", "heavy-mud displacements", "cement plugs"}[t]
}

// Consumed counts what was used up.
type Consumed [Consumables]int
