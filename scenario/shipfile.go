package scenario

import "coredays/scenario/document"

// The structs here mirror a ship file and the file of lithologies.

type shipFile struct {
	Version             document.Text              `mapstructure:"version"`
	Name                document.Text              `mapstructure:"name"`
	Source              document.Text              `mapstructure:"source"`
	InPortBeforeSailing *document.Spread           `mapstructure:"in_port_before_sailing"`
	Hull                hullFile                   `mapstructure:"hull"`
	RigFloor            document.Text              `mapstructure:"rig_floor"`
	Heading             document.Text              `mapstructure:"heading"`
	Rates               map[string]document.Spread `mapstructure:"rates"`
	Limits              []limitFile                `mapstructure:"limits"`
	Storm               *stormFile                 `mapstructure:"storm"`
	Refusal             *refusalFile               `mapstructure:"refusal"`
	ToolStrings         []toolStringFile           `mapstructure:"tool_strings"`
	String              *stringFile                `mapstructure:"string"`
	Endurance           *document.Spread           `mapstructure:"endurance"`
	LeastWaterDepth     *document.Spread           `mapstructure:"least_water_depth"`
	PositionKeeping     *document.Spread           `mapstructure:"position_keeping"`
	MostCurrent         *document.Spread           `mapstructure:"most_current"`
}

type hullFile struct {
	Length  document.Text `mapstructure:"length"`
	Beam    document.Text `mapstructure:"beam"`
	Draught document.Text `mapstructure:"draught"`
	Block   document.Text `mapstructure:"block"`
	Source  document.Text `mapstructure:"source"`
}

type limitFile struct {
	For       document.Text `mapstructure:"for"`
	Of        document.Text `mapstructure:"of"`
	FromDepth document.Text `mapstructure:"from_depth"`
	Most      document.Text `mapstructure:"most"`
	Source    document.Text `mapstructure:"source"`
}

type stormFile struct {
	ClearSeaFloor document.Text `mapstructure:"clear_sea_floor"`
	RecoverPipe   document.Text `mapstructure:"recover_pipe"`
	Source        document.Text `mapstructure:"source"`
}

type toolStringFile struct {
	Name    document.Text `mapstructure:"name"`
	Passes  document.Text `mapstructure:"passes"`
	Seismic document.Text `mapstructure:"seismic"`
	Source  document.Text `mapstructure:"source"`
}

// stringFile mirrors the section string of a ship file, and of a scenario that states otherwise.
type stringFile struct {
	Pipe              []pipeFile       `mapstructure:"pipe"`
	Collars           *document.Spread `mapstructure:"collars"`
	CollarsOnBoard    *document.Spread `mapstructure:"collars_on_board"`
	Assemblies        *document.Spread `mapstructure:"assemblies"`
	Derrick           *document.Spread `mapstructure:"derrick"`
	Hoist             *document.Spread `mapstructure:"hoist"`
	Overpull          *document.Spread `mapstructure:"overpull"`
	Roll              *document.Spread `mapstructure:"roll"`
	GuideHorn         *document.Spread `mapstructure:"guide_horn"`
	CompensatorLoad   *document.Spread `mapstructure:"compensator_load"`
	CompensatorStroke *document.Spread `mapstructure:"compensator_stroke"`
	MakeUpTorque      *document.Spread `mapstructure:"make_up_torque"`
	RotatingTorque    *document.Spread `mapstructure:"rotating_torque"`
}

type pipeFile struct {
	Name   document.Text `mapstructure:"name"`
	Class  document.Text `mapstructure:"class"`
	Length document.Text `mapstructure:"length"`
	Source document.Text `mapstructure:"source"`
}
