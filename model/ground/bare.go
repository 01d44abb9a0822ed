package ground

import "math"

// Bare is how much sediment on hard rock counts as none, m: holes on record that began in 6 to 48 m of it went on as those in
// more, and most of those on less did not (hole summaries, doi:10.5281/zenodo.10498831, with lithology of eODP,
// doi:10.1029/2022PA004572).
const Bare = 5.0

// Buried is how deep a hole has to be for the collars of a rotary assembly to stand in it, so that all their weight can be put
// on the bit, m [common practice, from memory].
const Buried = 50.0

// leastWeight is the share of the full weight with which a hole on bare rock begins [from memory].
const leastWeight = 0.3

// Hard reports whether a lithology is rock that only weight on the bit cuts.
func Hard(lithology string) bool {
	switch lithology {
	case "chert", "basalt", "gabbro", "massive gabbro":
		return true
	}
	return false
}

// SoftAbove is the thickness of what lies above the first hard rock, m; infinite where there is none.
func SoftAbove(layers []Layer) (thick float64) {
	for _, l := range layers {
		if Hard(l.Lithology.Name) {
			return thick
		}
		thick = float64(l.Bottom)
	}
	return math.Inf(1)
}

// Weighted is the share of its rate at which hard rock is cut at a depth below the sea floor, m: as the collars come to stand in
// the hole the weight on the bit rises, and the rate with it (in proportion: Teale 1965 at the same torque factor).
func Weighted(depth float64) float64 { return min(1, max(leastWeight, depth/Buried)) }

// Rock reports whether a lithology is more than soft sediment to a cutting shoe.
func Rock(lithology string) bool {
	switch lithology {
	case "limestone", "claystone", "volcaniclastic":
		return true
	}
	return Hard(lithology)
}
