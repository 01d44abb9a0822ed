package scenario

// stringFile mirrors the section string of a ship file, and of a scenario that states otherwise.
type stringFile struct {
	Pipe              []pipeFile  `mapstructure:"pipe"`
	Collars           *spreadFile `mapstructure:"collars"`
	CollarsOnBoard    *spreadFile `mapstructure:"collars_on_board"`
	Assemblies        *spreadFile `mapstructure:"assemblies"`
	Derrick           *spreadFile `mapstructure:"derrick"`
	Hoist             *spreadFile `mapstructure:"hoist"`
	Overpull          *spreadFile `mapstructure:"overpull"`
	Roll              *spreadFile `mapstructure:"roll"`
	GuideHorn         *spreadFile `mapstructure:"guide_horn"`
	CompensatorLoad   *spreadFile `mapstructure:"compensator_load"`
	CompensatorStroke *spreadFile `mapstructure:"compensator_stroke"`
	MakeUpTorque      *spreadFile `mapstructure:"make_up_torque"`
	RotatingTorque    *spreadFile `mapstructure:"rotating_torque"`
}

type pipeFile struct {
	Name   text `mapstructure:"name"`
	Class  text `mapstructure:"class"`
	Length text `mapstructure:"length"`
	Source text `mapstructure:"source"`
}
