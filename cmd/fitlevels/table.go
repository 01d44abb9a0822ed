package main

import (
	"fmt"

	"coredays/cmd/fitlevels/printed"
)

func figures(xs ...float64) []string { return column(xs, printed.Figure) }

func percents(xs ...float64) []string { return column(xs, printed.Percent) }

func (s Spread) figures() []string {
	if s.N == 0 {
		return []string{"0", "-", "-", "-"}
	}
	return append([]string{fmt.Sprint(s.N)}, figures(s.P10, s.P50, s.P90)...)
}

func (s Spread) percents() []string {
	return Spread{s.N, 100 * s.P10, 100 * s.P50, 100 * s.P90}.figures()
}
