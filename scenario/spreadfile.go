package scenario

// spreadFile is a quantity as it stands in a file: one value, or one of the forms of a spread.
type spreadFile struct {
	Value          text           `mapstructure:"value"`
	Low            text           `mapstructure:"low"`
	Mid            text           `mapstructure:"mid"`
	High           text           `mapstructure:"high"`
	Shape          text           `mapstructure:"shape"`
	Median         text           `mapstructure:"median"`
	Factor         text           `mapstructure:"factor"`
	Lowest         text           `mapstructure:"lowest"`
	Mode           text           `mapstructure:"mode"`
	Highest        text           `mapstructure:"highest"`
	Scale          text           `mapstructure:"scale"`
	ShapeParameter text           `mapstructure:"shape_parameter"`
	Mean           text           `mapstructure:"mean"`
	Quantiles      []quantileFile `mapstructure:"quantiles"`
	Varies         *variesFile    `mapstructure:"varies"`
	Persistence    text           `mapstructure:"persistence"`
	Common         text           `mapstructure:"common"`
	Source         text           `mapstructure:"source"`

	short bool // written as one value without keys
}

type quantileFile struct {
	P     text `mapstructure:"p"`
	Value text `mapstructure:"value"`
}

// variesFile is the level at which a spread lives, or the shares of several.
type variesFile struct {
	Expedition text `mapstructure:"expedition"`
	Site       text `mapstructure:"site"`
	Hole       text `mapstructure:"hole"`
	Run        text `mapstructure:"run"`

	level text // written as one level without keys
}

// number is what stands at a key of a spread.
func (s *spreadFile) number(key string) text {
	return map[string]text{"value": s.Value, "low": s.Low, "mid": s.Mid, "high": s.High, "median": s.Median, "factor": s.Factor, "lowest": s.Lowest,
		"mode": s.Mode, "highest": s.Highest, "scale": s.Scale, "shape_parameter": s.ShapeParameter, "mean": s.Mean}[key]
}
