package document

// Spread is a quantity as it stands in a file: one value, or one of the forms of a spread.
type Spread struct {
	Value          Text          `mapstructure:"value"`
	Low            Text          `mapstructure:"low"`
	Mid            Text          `mapstructure:"mid"`
	High           Text          `mapstructure:"high"`
	Shape          Text          `mapstructure:"shape"`
	Median         Text          `mapstructure:"median"`
	Factor         Text          `mapstructure:"factor"`
	Lowest         Text          `mapstructure:"lowest"`
	Mode           Text          `mapstructure:"mode"`
	Highest        Text          `mapstructure:"highest"`
	Scale          Text          `mapstructure:"scale"`
	ShapeParameter Text          `mapstructure:"shape_parameter"`
	Mean           Text          `mapstructure:"mean"`
	Quantiles      []QuantileRow `mapstructure:"quantiles"`
	Varies         *Levels       `mapstructure:"varies"`
	Persistence    Text          `mapstructure:"persistence"`
	Common         Text          `mapstructure:"common"`
	Source         Text          `mapstructure:"source"`

	Short bool // written as one value without keys
}

// QuantileRow is one quantile of a spread given by several.
type QuantileRow struct {
	P     Text `mapstructure:"p"`
	Value Text `mapstructure:"value"`
}

// Levels is the level at which a spread lives, or the shares of several.
type Levels struct {
	Expedition Text `mapstructure:"expedition"`
	Site       Text `mapstructure:"site"`
	Hole       Text `mapstructure:"hole"`
	Run        Text `mapstructure:"run"`

	Level Text // written as one level without keys
}

// Number is what stands at a key of a spread.
func (s *Spread) Number(key string) Text {
	return map[string]Text{"value": s.Value, "low": s.Low, "mid": s.Mid, "high": s.High, "median": s.Median, "factor": s.Factor, "lowest": s.Lowest,
		"mode": s.Mode, "highest": s.Highest, "scale": s.Scale, "shape_parameter": s.ShapeParameter, "mean": s.Mean}[key]
}
