package scenario

import (
	"maps"
	"slices"

	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/scenario/document"
	"coredays/scenario/entry"
	"coredays/scenario/fault"
)

// rates reads figures of the ship over those in base: what is not stated stays as it is.
func (c *clerk) rates(path string, given map[string]document.Spread, base [rig.Rates]spread.Quantity) [rig.Rates]spread.Quantity {
	base = c.ratesBeside(path, given, base)
	for _, key := range slices.Sorted(maps.Keys(given)) {
		if key == fileKey {
			continue
		}
		s := given[key]
		r, known := rig.ParseRate(key)
		if !known {
			wanted, _ := fault.Suggest(key, rateKeys(), "rate")
			c.Fault(document.Join(path, key), "", wanted)
			continue
		}
		base[r] = c.Quantity(document.Join(path, key), &s, entry.RateMeasure(r), base[r])
	}
	return base
}

// statedPace: a pace of the piston cycle that a plan states holds at all sites, whatever tools are used there.
func statedPace(given map[string]document.Spread, rates *[rig.Rates]spread.Quantity) {
	_, pace := given[rig.PistonDurationFactor.Of().Key]
	_, alone := given[rig.PistonAlone.Of().Key]
	if pace && !alone {
		rates[rig.PistonAlone] = spread.Just(1)
	}
}

func rateKeys() (keys []string) {
	for r := range rig.Rates {
		keys = append(keys, r.Of().Key)
	}
	return keys
}
