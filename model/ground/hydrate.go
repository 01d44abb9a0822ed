package ground

import (
	"math"

	"coredays/model/unit"
)

// HydrateBase is the depth below the sea floor down to which methane hydrate is stable in sea water, 0 where it
// is not stable at all: where a temperature that rises with depth meets the phase boundary at hydrostatic pressure.
func HydrateBase(water unit.Length) unit.Depth {
	stable := func(below float64) bool {
		return bottomTemperature+thermalGradient*below < hydrateTemperature(seawaterWeight*(float64(water)+below))
	}
	if !stable(0) {
		return 0
	}
	above, beneath := 0.0, 2000.0 // m; at a gradient of 40 K/km no ocean is deep enough for more
	for beneath-above > 0.1 {
		if middle := (above + beneath) / 2; stable(middle) {
			above = middle
		} else {
			beneath = middle
		}
	}
	return unit.Depth(above)
}

const (
	bottomTemperature = 276.15      // K, 3 degrees Celsius, from memory: 2 to 4 below 1 km of water
	thermalGradient   = 0.04        // K/m, from memory: 30 to 50 on margins
	seawaterWeight    = 1025 * 9.81 // Pa/m
)

// hydrateTemperature is the temperature below which methane hydrate is stable in sea water at a pressure in Pa, K:
// 1/T = 3.79e-3 - 2.83e-4 log10(P in MPa) (Dickens and Quinby-Hunt 1994, from memory).
func hydrateTemperature(pressure float64) float64 {
	return 1 / (3.79e-3 - 2.83e-4*math.Log10(pressure/1e6))
}
