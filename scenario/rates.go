package scenario

import (
	"maps"
	"slices"

	"coredays/model/rig"
	"coredays/model/spread"
)

// rates reads figures of the ship over those in base: what is not stated stays as it is.
func (c *clerk) rates(path string, given map[string]spreadFile, base [rig.Rates]spread.Quantity) [rig.Rates]spread.Quantity {
	base = c.ratesBeside(path, given, base)
	for _, key := range slices.Sorted(maps.Keys(given)) {
		if key == fileKey {
			continue
		}
		s := given[key]
		r, known := rig.ParseRate(key)
		if !known {
			wanted, _ := suggest(key, rateKeys(), "rate")
			c.fault(join(path, key), "", wanted)
			continue
		}
		base[r] = c.quantity(join(path, key), &s, rateMeasure(r), base[r])
	}
	return base
}

// statedPace: a pace of the piston cycle that a plan states holds at all sites, whatever tools are used there.
func statedPace(given map[string]spreadFile, rates *[rig.Rates]spread.Quantity) {
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
