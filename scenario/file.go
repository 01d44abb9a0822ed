package scenario

import "coredays/scenario/document"

// The structs here mirror a scenario file key by key and do nothing. What each key means is in
// the package documentation.

type expeditionFile struct {
	Version             document.Text              `mapstructure:"version"`
	Title               document.Text              `mapstructure:"title"`
	Sails               document.Text              `mapstructure:"sails"`
	SeaDays             document.Text              `mapstructure:"sea_days"`
	Ports               portsFile                  `mapstructure:"ports"`
	InPortBeforeSailing *document.Spread           `mapstructure:"in_port_before_sailing"`
	Ship                document.Text              `mapstructure:"ship"`
	Rates               map[string]document.Spread `mapstructure:"rates"` // by the key of a rig.Rate, not by a user's name
	Limits              []limitFile                `mapstructure:"limits"`
	Storm               *stormFile                 `mapstructure:"storm"`
	String              *stringFile                `mapstructure:"string"`
	Endurance           *document.Spread           `mapstructure:"endurance"`
	LeastWaterDepth     *document.Spread           `mapstructure:"least_water_depth"`
	PositionKeeping     *document.Spread           `mapstructure:"position_keeping"`
	MostCurrent         *document.Spread           `mapstructure:"most_current"`
	Stops               []unusableFile             `mapstructure:"stops"`
	Sites               []siteFile                 `mapstructure:"sites"`
	Order               []document.Text            `mapstructure:"order"`
	OrderRules          []orderRuleFile            `mapstructure:"order_rules"`
	Trouble             document.Text              `mapstructure:"trouble"`
}

type portsFile struct {
	From portFile `mapstructure:"from"`
	To   portFile `mapstructure:"to"`
}

type portFile struct {
	Name     document.Text   `mapstructure:"name"`
	Position document.Text   `mapstructure:"position"`
	Via      []document.Text `mapstructure:"via"`
}

type callFile struct {
	Port     document.Text    `mapstructure:"port"`
	Position document.Text    `mapstructure:"position"`
	Takes    *document.Spread `mapstructure:"takes"`
}

type endsFile struct {
	Because document.Text `mapstructure:"because"`
	Chance  document.Text `mapstructure:"chance"`
	From    document.Text `mapstructure:"from"`
	Waits   document.Text `mapstructure:"waits"`
	Plugged document.Text `mapstructure:"plugged"`
}

type orderRuleFile struct {
	First document.Text `mapstructure:"first"`
	Then  document.Text `mapstructure:"then"`
}

type siteFile struct {
	Name       document.Text   `mapstructure:"name"`
	LeftOut    document.Text   `mapstructure:"left_out"`
	Position   document.Text   `mapstructure:"position"`
	Via        []document.Text `mapstructure:"via"`
	WaterDepth document.Text   `mapstructure:"water_depth"`
	Datum      document.Text   `mapstructure:"datum"`
	Priority   document.Text   `mapstructure:"priority"`
	ApprovedTo document.Text   `mapstructure:"approved_to"`
	Layers     []layerFile     `mapstructure:"layers"`
	Holes      []itemFile      `mapstructure:"holes"`
	Refusal    *refusalFile    `mapstructure:"refusal"`
	Cap        document.Text   `mapstructure:"cap"`
	Weather    *weatherFile    `mapstructure:"weather"`
	Move       document.Text   `mapstructure:"move"`
	Unusable   *unusableFile   `mapstructure:"unusable"`
	Closings   []unusableFile  `mapstructure:"closings"`
	Call       *callFile       `mapstructure:"call"`
	Places     document.Text   `mapstructure:"places"`
	NotBefore  document.Text   `mapstructure:"not_before"`
	NotAfter   document.Text   `mapstructure:"not_after"`
}

type unusableFile struct {
	Because document.Text    `mapstructure:"because"`
	Every   *document.Spread `mapstructure:"every"`
	Lasts   *document.Spread `mapstructure:"lasts"`
}

type layerFile struct {
	Bottom            document.Text              `mapstructure:"bottom"`
	Lithology         document.Text              `mapstructure:"lithology"`
	SideShear         *document.Spread           `mapstructure:"side_shear"`
	RockStrength      *document.Spread           `mapstructure:"rock_strength"`
	DrillingRate      *document.Spread           `mapstructure:"drilling_rate"`
	DrillingAheadRate *document.Spread           `mapstructure:"drilling_ahead_rate"`
	Sticking          *document.Spread           `mapstructure:"sticking"`
	BitWear           *document.Spread           `mapstructure:"bit_wear"`
	Recovery          map[string]document.Spread `mapstructure:"recovery"` // by the key of a coring.Tool
}

// itemFile is a hole or a task: a task has the key task.
type itemFile struct {
	Name         document.Text     `mapstructure:"name"`
	LeftOut      document.Text     `mapstructure:"left_out"`
	Rank         document.Text     `mapstructure:"rank"`
	When         *whenFile         `mapstructure:"when"`
	StartOffset  document.Text     `mapstructure:"start_offset"`
	Existing     document.Text     `mapstructure:"existing"`
	Fill         document.Text     `mapstructure:"fill"`
	CasedTo      document.Text     `mapstructure:"cased_to"`
	DrillAheadTo document.Text     `mapstructure:"drill_ahead_to"`
	Core         []stageFile       `mapstructure:"core"`
	Oriented     document.Text     `mapstructure:"oriented"`
	Temperature  *temperatureFile  `mapstructure:"temperature"`
	Penetrometer *penetrometerFile `mapstructure:"penetrometer"`
	EndsEarly    *endsFile         `mapstructure:"ends_early"`
	Logging      []document.Text   `mapstructure:"logging"`
	Reentry      document.Text     `mapstructure:"reentry"`
	Casing       []casingFile      `mapstructure:"casing"`
	Abandon      document.Text     `mapstructure:"abandon"`
	IfLost       document.Text     `mapstructure:"if_lost"`

	Task          document.Text    `mapstructure:"task"`
	Takes         *document.Spread `mapstructure:"takes"`
	SeaLimit      document.Text    `mapstructure:"sea_limit"`
	Interruptible document.Text    `mapstructure:"interruptible"`
	Breakdown     document.Text    `mapstructure:"breakdown"`
	Pipe          document.Text    `mapstructure:"pipe"`
	Steps         []stepFile       `mapstructure:"steps"`
}

// stepFile is a step of a task.
type stepFile struct {
	Step          document.Text    `mapstructure:"step"`
	Takes         *document.Spread `mapstructure:"takes"`
	SeaLimit      document.Text    `mapstructure:"sea_limit"`
	Interruptible document.Text    `mapstructure:"interruptible"`
	Breakdown     document.Text    `mapstructure:"breakdown"`
	Pipe          document.Text    `mapstructure:"pipe"`
}

type stageFile struct {
	With    document.Text `mapstructure:"with"`
	From    document.Text `mapstructure:"from"`
	To      document.Text `mapstructure:"to"`
	Advance document.Text `mapstructure:"advance"`
	Shoe    document.Text `mapstructure:"shoe"`
}

type casingFile struct {
	String   document.Text `mapstructure:"string"`
	To       document.Text `mapstructure:"to"`
	By       document.Text `mapstructure:"by"`
	Cemented document.Text `mapstructure:"cemented"`
}

type whenFile struct {
	Hole    document.Text `mapstructure:"hole"`
	Refused document.Text `mapstructure:"refused"`
	Depth   document.Text `mapstructure:"depth"`
}

type temperatureFile struct {
	Tool    document.Text   `mapstructure:"tool"`
	OnCores []document.Text `mapstructure:"on_cores"`
}

type penetrometerFile struct {
	At []document.Text `mapstructure:"at"`
}

type refusalFile struct {
	Overpull       document.Text `mapstructure:"overpull"`
	PartialStrokes document.Text `mapstructure:"partial_strokes"`
	DrillOver      document.Text `mapstructure:"drill_over"`
	Advance        document.Text `mapstructure:"advance"`
	Then           document.Text `mapstructure:"then"`
	Source         document.Text `mapstructure:"source"`
}

type weatherFile struct {
	Climate document.Text `mapstructure:"climate"`
	Record  document.Text `mapstructure:"record"`
	Months  []monthFile   `mapstructure:"months"`
	Source  document.Text `mapstructure:"source"`
}

type monthFile struct {
	Hs document.Text `mapstructure:"hs"`
	SD document.Text `mapstructure:"sd"`
}
