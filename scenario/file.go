package scenario

// The structs here mirror a scenario file key by key and do nothing. What each key means is in
// the package documentation.

type expeditionFile struct {
	Version             text                  `mapstructure:"version"`
	Title               text                  `mapstructure:"title"`
	Sails               text                  `mapstructure:"sails"`
	SeaDays             text                  `mapstructure:"sea_days"`
	Ports               portsFile             `mapstructure:"ports"`
	InPortBeforeSailing *spreadFile           `mapstructure:"in_port_before_sailing"`
	Ship                text                  `mapstructure:"ship"`
	Rates               map[string]spreadFile `mapstructure:"rates"` // by the key of a rig.Rate, not by a user's name
	Limits              []limitFile           `mapstructure:"limits"`
	Storm               *stormFile            `mapstructure:"storm"`
	String              *stringFile           `mapstructure:"string"`
	Endurance           *spreadFile           `mapstructure:"endurance"`
	LeastWaterDepth     *spreadFile           `mapstructure:"least_water_depth"`
	PositionKeeping     *spreadFile           `mapstructure:"position_keeping"`
	MostCurrent         *spreadFile           `mapstructure:"most_current"`
	Sites               []siteFile            `mapstructure:"sites"`
	Order               []text                `mapstructure:"order"`
	OrderRules          []orderRuleFile       `mapstructure:"order_rules"`
	Trouble             text                  `mapstructure:"trouble"`
}

type portsFile struct {
	From portFile `mapstructure:"from"`
	To   portFile `mapstructure:"to"`
}

type portFile struct {
	Name     text `mapstructure:"name"`
	Position text `mapstructure:"position"`
}

type orderRuleFile struct {
	First text `mapstructure:"first"`
	Then  text `mapstructure:"then"`
}

type siteFile struct {
	Name       text          `mapstructure:"name"`
	Position   text          `mapstructure:"position"`
	Via        []text        `mapstructure:"via"`
	WaterDepth text          `mapstructure:"water_depth"`
	Datum      text          `mapstructure:"datum"`
	Priority   text          `mapstructure:"priority"`
	ApprovedTo text          `mapstructure:"approved_to"`
	Layers     []layerFile   `mapstructure:"layers"`
	Holes      []itemFile    `mapstructure:"holes"`
	Refusal    *refusalFile  `mapstructure:"refusal"`
	Cap        text          `mapstructure:"cap"`
	Weather    *weatherFile  `mapstructure:"weather"`
	Move       text          `mapstructure:"move"`
	Unusable   *unusableFile `mapstructure:"unusable"`
	Places     text          `mapstructure:"places"`
	NotBefore  text          `mapstructure:"not_before"`
	NotAfter   text          `mapstructure:"not_after"`
}

type unusableFile struct {
	Because text        `mapstructure:"because"`
	Every   *spreadFile `mapstructure:"every"`
	Lasts   *spreadFile `mapstructure:"lasts"`
}

type layerFile struct {
	Bottom            text                  `mapstructure:"bottom"`
	Lithology         text                  `mapstructure:"lithology"`
	SideShear         *spreadFile           `mapstructure:"side_shear"`
	RockStrength      *spreadFile           `mapstructure:"rock_strength"`
	DrillingRate      *spreadFile           `mapstructure:"drilling_rate"`
	DrillingAheadRate *spreadFile           `mapstructure:"drilling_ahead_rate"`
	Recovery          map[string]spreadFile `mapstructure:"recovery"` // by the key of a coring.Tool
}

// itemFile is a hole or a task: a task has the key task.
type itemFile struct {
	Name         text              `mapstructure:"name"`
	Rank         text              `mapstructure:"rank"`
	When         *whenFile         `mapstructure:"when"`
	StartOffset  text              `mapstructure:"start_offset"`
	DrillAheadTo text              `mapstructure:"drill_ahead_to"`
	Core         []stageFile       `mapstructure:"core"`
	Oriented     text              `mapstructure:"oriented"`
	Temperature  *temperatureFile  `mapstructure:"temperature"`
	Penetrometer *penetrometerFile `mapstructure:"penetrometer"`
	Logging      []text            `mapstructure:"logging"`
	Reentry      text              `mapstructure:"reentry"`
	Abandon      text              `mapstructure:"abandon"`
	IfLost       text              `mapstructure:"if_lost"`

	Task          text        `mapstructure:"task"`
	Takes         *spreadFile `mapstructure:"takes"`
	SeaLimit      text        `mapstructure:"sea_limit"`
	Interruptible text        `mapstructure:"interruptible"`
}

type stageFile struct {
	With text `mapstructure:"with"`
	To   text `mapstructure:"to"`
}

type whenFile struct {
	Hole    text `mapstructure:"hole"`
	Refused text `mapstructure:"refused"`
	Depth   text `mapstructure:"depth"`
}

type temperatureFile struct {
	Tool    text   `mapstructure:"tool"`
	OnCores []text `mapstructure:"on_cores"`
}

type penetrometerFile struct {
	At []text `mapstructure:"at"`
}

type refusalFile struct {
	Overpull       text `mapstructure:"overpull"`
	PartialStrokes text `mapstructure:"partial_strokes"`
	DrillOver      text `mapstructure:"drill_over"`
	Advance        text `mapstructure:"advance"`
	Then           text `mapstructure:"then"`
	Source         text `mapstructure:"source"`
}

type weatherFile struct {
	Climate text        `mapstructure:"climate"`
	Record  text        `mapstructure:"record"`
	Months  []monthFile `mapstructure:"months"`
	Source  text        `mapstructure:"source"`
}

type monthFile struct {
	Hs text `mapstructure:"hs"`
	SD text `mapstructure:"sd"`
}
