// Package plan holds an expedition as its planners mean it: validated, in SI units, with nothing
// left to crew estimate.
package plan

import (
	"cmp"
	"fmt"
	"strings"
	"time"

	"coredays/model/coring"
	"coredays/model/geo"
	"coredays/model/ground"
	"coredays/model/rig"
	"coredays/model/sea"
	"coredays/model/spread"
	"coredays/model/unit"
)

// Plan is an expedition.
type Plan struct {
	Title    string
	File     string // where it came from
	Sails    time.Time
	SeaDays  unit.Duration // from leaving the first port to reaching the last
	From, To Port
	InPort   spread.Quantity // days in port before sailing, apart from SeaDays
	Ship     rig.Ship
	Sites    []Site
	Order    []int // indices into Sites in the order of the visits, primary and alternate
	Before   []Precedence
	// Begun: sites were drilled before on this expedition: pipe is measured, rig and tools are tried out.
	Begun bool
	// Reached and LeavesHanging are for a single visit to a site on record: the assembly that hangs clear of the sea
	// floor on arrival, if any, and whether the visit ends so.
	Reached       coring.Assembly
	LeavesHanging bool
	// NoTrouble: nothing breaks, sticks or is lost but to the sea.
	NoTrouble bool
	// Where says file and line of all that the scenario states, by its path such as "sites[0].cap"; in
	// formats without lines, file and path.
	Where    map[string]string
	Warnings []string // what a planner should know though nothing is wrong
	Reads    []string // files beside it that it names: the ship, records of the sea
}

// Port is a port of call.
type Port struct {
	Name     string
	Position geo.Position
	Via      []geo.Position // waypoints on the way to it from the last site
}

// Precedence is a constraint on the order of two sites.
type Precedence struct {
	First, Then int // indices into Sites
}

// Site is a place to core.
type Site struct {
	Name       string
	Path       string // where it stands in the scenario, such as "sites[2]"; empty where it stands in none
	Position   geo.Position
	Via        []geo.Position // waypoints on the way to it
	WaterDepth unit.Length    // below sea level
	Alternate  bool           // only visited when time is left
	ApprovedTo unit.Depth     // 0 where none is stated
	Layers     []ground.Layer
	Items      []Item
	Refusal    Refusal
	Cap        unit.Duration // most time on site, 0 for none
	Climate    sea.Climate
	Likeness   *sea.Likeness // of a record of the sea there, in place of the climate; nil for none
	Unusable   Unusable
	More       []Unusable // what closes it besides
	Call       Call       // on the way to it
	Places     Places
	// NotBefore and NotAfter are the first and the last date for work here; zero for none. The ship
	// waits for the first; after the last nothing more is begun here.
	NotBefore, NotAfter time.Time
	// Hanging: the ship moves here with pipe hanging from the site before.
	Hanging bool
}

// Unusable is a hazard that closes a site for a while: ice, current, cyclones. The zero value is none.
type Unusable struct {
	Because string
	Every   spread.Quantity // mean time between closings while the ship is there
	Lasts   spread.Quantity
}

// Places is what the built-in tables of known places are used for at a site: cyclones, ice, currents, depth, land.
type Places int

// The uses.
const (
	PlacesChecked Places = iota // the site is held against them
	PlacesMet                   // and cyclones and ice close it
	PlacesOff                   // neither
)

// Item is one thing to do at a site: a hole or a task.
type Item struct {
	Name string
	Path string // where it stands in the scenario, such as "sites[2].holes[0]"; empty where it stands in none
	Rank int    // 1 is dropped last
	When *Condition
	Hole *Hole // exactly one of Hole and Task is set
	Task *Task
}

// Condition makes an item depend on where the piston corer was refused in an earlier hole of the site.
type Condition struct {
	Hole  int // index into Items
	Above bool
	Depth unit.Depth
}

// Hole is a hole to drill.
type Hole struct {
	StartOffset  unit.Length // how much higher than usual the bit starts, so that core gaps are staggered
	Existing     unit.Depth  // of a hole with a cone that is there already and is deepened; 0 for a new one
	Fill         unit.Length // that has gathered in an existing one
	CasedAlready unit.Depth  // how far an existing one is cased
	DrillAheadTo unit.Depth  // 0 for none, at least Existing
	Stages       []Stage
	Oriented     bool // piston cores are oriented
	Temperature  []int
	Penetrometer []unit.Depth // runs of a penetrometer before the core below that depth
	EndsEarly    *EndsEarly
	Logging      []int // indices into the ship's tool strings
	Reentry      Reentry
	Casing       []Casing // from the sea floor down; where Existing is 0, the first stands with a new cone
	Abandon      Abandon
	IfLost       IfLost
}

// Stage is one tool and how far it goes.
type Stage struct {
	With      coring.Tool
	From      unit.Depth  // drilled down to without coring below the stage before; 0 to go on where that ended
	To        unit.Depth  // the deepest it may go
	Advance   unit.Length // of each core where that is known; 0 for the stroke of the tool
	HardShoe  bool        // a cutting shoe, or bit, for hard ground
	ToRefusal bool        // no depth was given but the tool's refusal; To is then the deepest that is allowed
}

// Reentry is the hardware that makes a hole findable again.
type Reentry int

// The kinds of hardware.
const (
	NoReentry Reentry = iota
	Funnel            // free-fall funnel, dropped before pulling out
	Cone              // stands on the sea floor already, or is set with the first casing
)

// Abandon is how a hole is left.
type Abandon int

// The ways.
const (
	OpenHole Abandon = iota
	HeavyMud
	Cement
)

// IfLost is what is done about a hole that was lost to the sea or to trouble before its target.
type IfLost int

// The ways.
const (
	Retry  IfLost = iota // a new hole is drilled down to the depth reached and coring goes on
	GiveUp               // the rest is dropped
)

// Refusal is the rule by which a piston corer is given up.
type Refusal struct {
	Overpull       unit.Force
	PartialStrokes int // in a row
	DrillOver      bool
	// AdvanceByStroke: the next core starts where the stroke ended. Otherwise it starts, after an
	// incomplete stroke, where the core that was recovered would end.
	AdvanceByStroke bool
	Then            coring.Tool // the tool that follows a refused APC within the stage, HLAPC or APC for none
	Source          string
}

// SitePath is where a site stands in the scenario: sites before it may be left out.
func (p *Plan) SitePath(site int) string {
	return cmp.Or(p.Sites[site].Path, fmt.Sprintf("sites[%d]", site))
}

// ItemPath is where a hole or task of a site stands in the scenario.
func (p *Plan) ItemPath(site, item int) string {
	return cmp.Or(p.Sites[site].Items[item].Path, fmt.Sprintf("%s.holes[%d]", p.SitePath(site), item))
}

// Stated is where the scenario states what is at a path, or the nearest thing around it; empty where it is
// not stated at all.
func (p *Plan) Stated(path string) string {
	for path != "" {
		if where, found := p.Where[path]; found {
			return where
		}
		path = path[:max(strings.LastIndexAny(path, ".["), 0)]
	}
	return ""
}

// AskedFor is the depth down to which a hole is asked for: that which is stated, and only for a hole cored to
// refusal alone the deepest that is allowed; 0 for a task.
func (i *Item) AskedFor() unit.Depth {
	if stated := i.Stated(); stated > 0 {
		return stated
	}
	return i.Target()
}

// Stated is the deepest depth that is stated of a hole; 0 for one cored to refusal alone, and for a task.
func (i *Item) Stated() (stated unit.Depth) {
	if i.Hole == nil {
		return 0
	}
	stated = i.Hole.DrillAheadTo
	for _, stage := range i.Hole.Stages {
		if !stage.ToRefusal {
			stated = max(stated, stage.To)
		}
	}
	return stated
}

// SectionTo is the depth down to which a site's section is wanted: the deepest stated of its holes, and where
// all are cored to refusal alone the deepest allowed.
func (s *Site) SectionTo() (stated unit.Depth) {
	for i := range s.Items {
		stated = max(stated, s.Items[i].Stated())
	}
	if stated > 0 {
		return stated
	}
	return s.Deepest()
}

// Deepest is the deepest that any hole of a site may reach: what the string must bear.
func (s *Site) Deepest() (deepest unit.Depth) {
	for i := range s.Items {
		deepest = max(deepest, s.Items[i].Target())
	}
	return deepest
}

// Target is the deepest that an item may reach, 0 for a task: a corer that goes on to refusal may get there.
func (i *Item) Target() unit.Depth {
	if i.Hole == nil {
		return 0
	}
	target := i.Hole.DrillAheadTo
	for _, stage := range i.Hole.Stages {
		target = max(target, stage.To)
	}
	return target
}
