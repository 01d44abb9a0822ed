package scenario

import "coredays/scenario/document"

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
