package record

import (
	"fmt"

	"coredays/model/unit"
)

// Classification sorts sites into classes.
type Classification struct {
	By    string
	Class func(s *Site) string
}

// Classifications are the classes in which scores are given apart. Within each the names sort in
// their order.
var Classifications = []Classification{
	{"deepest tool", func(s *Site) string { return s.DeepestTool().String() }},
	{"depth of the deepest hole, m", func(s *Site) string { return between(float64(s.Deepest()), 0, 150, 300, 500, 800) }},
	{"water depth, m", func(s *Site) string { return between(float64(s.Water()), 0, 1000, 2000, 3000, 4000, 5000) }},
	{"year", func(s *Site) string { return between(float64(s.Start().Year()), 1985, 1991, 1998, 2004, 2012) }},
}

// between names the class of a value between rising bounds.
func between(x float64, bounds ...float64) string {
	for i := len(bounds) - 1; i >= 0; i-- {
		switch {
		case x < bounds[i]:
		case i == len(bounds)-1:
			return fmt.Sprintf("%.0f and more", bounds[i])
		default:
			return fmt.Sprintf("%.0f to %.0f", bounds[i], bounds[i+1])
		}
	}
	return fmt.Sprintf("below %.0f", bounds[0])
}

// WaterClass is the class of water depth in which cycles are given apart.
func WaterClass(depth unit.Length) string {
	km := int(depth / 1000)
	return fmt.Sprintf("%d to %d km", km, km+1)
}
