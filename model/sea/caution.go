package sea

import (
	"fmt"
	"math"
)

const (
	nearShore = 0.75 // a cell with less water than this is taken as near shore [judgement]
	icePole   = 45.0 // degrees; sea ice comes as far in the Sea of Okhotsk [from memory]
)

// cautions are what a user of the built-in climate should know at a place in the given cell (nil
// beyond the table). The figures are from a comparison with five NDBC buoys.
func cautions(c *cell, latitude float64, oneSeason bool) []string {
	list := []string{"the built-in climate is coarse: monthly means on 5-degree cells, within about 0.2 m of open-ocean buoys; " +
		"its spread within a month is modelled"}
	switch {
	case c == nil || c.water == 0:
		list = append(list, "the 5-degree cell here holds no open water: heights are those of the cells beside it")
	case c.coastal || c.water < nearShore:
		list = append(list, fmt.Sprintf("near shore (%.0f %% of the 5-degree cell is water): sheltered waters read far too high, "+
			"about twice at a coastal buoy; give monthly heights or a record", 100*c.water))
	}
	if oneSeason {
		list = append(list, "only some months are known near here, mostly for ice: the others repeat their mean")
	}
	if math.Abs(latitude) >= icePole {
		list = append(list, "sea ice is not considered")
	}
	if latitude < 0 {
		list = append(list, "nothing was checked south of the equator; the spread within a month there is from memory")
	}
	return list
}
