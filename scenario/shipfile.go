package scenario

// The structs here mirror a ship file and the file of lithologies.

type shipFile struct {
	Version             text                  `mapstructure:"version"`
	Name                text                  `mapstructure:"name"`
	Source              text                  `mapstructure:"source"`
	InPortBeforeSailing *spreadFile           `mapstructure:"in_port_before_sailing"`
	Hull                hullFile              `mapstructure:"hull"`
	RigFloor            text                  `mapstructure:"rig_floor"`
	Heading             text                  `mapstructure:"heading"`
	Rates               map[string]spreadFile `mapstructure:"rates"`
	Limits              []limitFile           `mapstructure:"limits"`
	Storm               *stormFile            `mapstructure:"storm"`
	Refusal             *refusalFile          `mapstructure:"refusal"`
	ToolStrings         []toolStringFile      `mapstructure:"tool_strings"`
	String              *stringFile           `mapstructure:"string"`
	Endurance           *spreadFile           `mapstructure:"endurance"`
	LeastWaterDepth     *spreadFile           `mapstructure:"least_water_depth"`
	PositionKeeping     *spreadFile           `mapstructure:"position_keeping"`
	MostCurrent         *spreadFile           `mapstructure:"most_current"`
}

type hullFile struct {
	Length  text `mapstructure:"length"`
	Beam    text `mapstructure:"beam"`
	Draught text `mapstructure:"draught"`
	Block   text `mapstructure:"block"`
	Source  text `mapstructure:"source"`
}

type limitFile struct {
	For       text `mapstructure:"for"`
	Of        text `mapstructure:"of"`
	FromDepth text `mapstructure:"from_depth"`
	Most      text `mapstructure:"most"`
	Source    text `mapstructure:"source"`
}

type stormFile struct {
	ClearSeaFloor text `mapstructure:"clear_sea_floor"`
	RecoverPipe   text `mapstructure:"recover_pipe"`
	Source        text `mapstructure:"source"`
}

type toolStringFile struct {
	Name    text `mapstructure:"name"`
	Passes  text `mapstructure:"passes"`
	Seismic text `mapstructure:"seismic"`
	Source  text `mapstructure:"source"`
}
