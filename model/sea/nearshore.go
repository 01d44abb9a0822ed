package sea

import "coredays/model/unit"

// The built-in climate reads about twice too high at two sheltered buoys near the shore (NDBC 44007 and 44008):
// a cell of five degrees is mostly open sea. With it as it is half of the simulated days of 24 sites on record
// in less than 300 m of water are waiting (hole summaries, doi:10.5281/zenodo.10498831). That the depth of water
// says which sites are near the shore, and 300 m, are judgement.
const (
	nearShoreTo    = 300 // m of water
	nearShoreWaves = 0.5 // of those of the built-in climate
)

// NearShore is the built-in climate at a site in a depth of water: in shallow water half of its waves.
func (c Climate) NearShore(water unit.Length) Climate {
	if water > nearShoreTo {
		return c
	}
	for m := range c.Mean {
		c.Mean[m] *= nearShoreWaves
	}
	c.Source += "; half of its waves, as the water is at most 300 m deep (reads twice too high at NDBC 44007 and 44008)"
	return c
}
