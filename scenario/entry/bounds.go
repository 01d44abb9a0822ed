package entry

import (
	"fmt"
	"strings"

	"coredays/model/rig"
)

// Bound is what a planner can mean by a kind of quantity: a row of the manual.
type Bound struct {
	Kind, Least, Most string     // with units
	Above             bool       // the least itself is too little
	Why               string     // empty where the bounds need no reason
	Rates             []rig.Rate // figures of the ship that are of this kind
}

// kinds are those of quantities that are no figures of the ship, in the order of the manual.
var kinds = []Measure{DepthMeasure, WaterMeasure, FillMeasure, OffsetMeasure, SeaDaysMeasure, CapMeasure, InPortMeasure, TaskMeasure, EveryMeasure, ClosingMeasure,
	CoreMeasure, RankMeasure, StrokesMeasure, HeightMeasure, WaterLimitMeasure, RockMeasure, StrengthMeasure, PenetrationRate, StickingMeasure, WearMeasure, RecoveryMeasure, FactorMeasure, weibullMeasure,
	ShareMeasure, quantileMeasure, persistMeasure, commonMeasure, HullLength, HullBeam, HullDraught, BlockMeasure, FloorMeasure, PassesMeasure, StockMeasure,
	CollarsMeasure, RatingMeasure, ReserveMeasure, OverpullMeasure, HornMeasure, EnduranceMeasure, StrokeMeasure, KeepingMeasure, CurrentMeasure, LeastMeasure}

// Bounds lists what can be meant by each kind of quantity.
func Bounds() (all []Bound) {
	for _, m := range kinds {
		all = append(all, m.bound())
	}
	for _, group := range rateGroups {
		b := group.kind.bound()
		b.Rates = group.rates
		all = append(all, b)
	}
	return all
}

func (m Measure) bound() Bound {
	return Bound{Kind: m.kind, Least: m.tell(m.Least), Most: m.tell(m.Most), Above: m.Above, Why: m.why}
}

// String is the row of the manual.
func (b Bound) String() string {
	text := fmt.Sprintf("%s: from %s to %s", b.Kind, b.Least, b.Most)
	if b.Above {
		text = fmt.Sprintf("%s: above %s, to %s", b.Kind, b.Least, b.Most)
	}
	if b.Why != "" {
		text += "; " + b.Why
	}
	var keys []string
	for _, r := range b.Rates {
		keys = append(keys, r.Of().Key)
	}
	if keys != nil {
		text += " (" + strings.Join(keys, ", ") + ")"
	}
	return text
}

// counted are the lists that may not be of any length.
var counted = []most{MostSites, MostItems, MostLayers, MostStages, MostWaypoints, MostStops, MostClosings, MostLimits, MostRules, mostQuantiles, MostStrings}

func (m most) String() string { return fmt.Sprintf("%s: at most %d; %s", m.things, m.number, m.why) }
