package chart

import (
	"strings"
	"testing"

	"coredays/model/result"
	"coredays/model/unit"
	"coredays/output/outputtest"
	"coredays/output/words"
)

func TestAnAxisThatDoesNotBeginAtZeroSaysSo(t *testing.T) {
	p := newPlot("days", "m")
	p.X.Min, p.Y.Min = 37.4, 0
	saysItsStart(&p.X)
	saysItsStart(&p.Y)
	if p.X.Label.Text != "days (axis from 37.4)" || p.Y.Label.Text != "m" {
		t.Errorf("the axes are named %q and %q", p.X.Label.Text, p.Y.Label.Text)
	}
}

func TestACurveThatIsClippedSaysSo(t *testing.T) {
	s := outputtest.Ordinary()
	s.Needed.Curve = nil
	for i := range 201 {
		s.Needed.Curve = append(s.Needed.Curve, (36+float64(i)/20)*words.SecondsOfDay)
	}
	whole := svgOf(t, curveChart(s))
	if strings.Contains(whole, "goes on to") {
		t.Error("a curve that is drawn to its end is said to go on")
	}
	s.Needed.Curve[len(s.Needed.Curve)-1] = 400 * words.SecondsOfDay
	if !strings.Contains(svgOf(t, curveChart(s)), "goes on to 400 d") {
		t.Error("a curve that is clipped does not say so")
	}
}

func TestDaysInHandAreSeenInTheCalendar(t *testing.T) {
	r := outputtest.ReportOn(outputtest.Ordinary())
	for _, c := range []struct {
		days float64
		want string
	}{{1.2, "1.2 d in hand"}, {0.01, ""}, {0, ""}} {
		r.Summary.Allotted.InHand = result.Spread{N: 400, P10: 0, P50: c.days * words.SecondsOfDay, P90: 9 * words.SecondsOfDay}
		svg := svgOf(t, calendarChart(r))
		if c.want == "" && strings.Contains(svg, "in hand<") || !strings.Contains(svg, c.want) {
			t.Errorf("%g days in hand are not told as %q", c.days, c.want)
		}
	}
}

func TestALineEndsAtTheMedianDepthOfTheHolesBegun(t *testing.T) {
	h := &result.Hole{}
	for i, share := range []float64{0.4, 0.38, 0.21, 0.19, 0} { // begun in 40 of 100 visits
		h.Marks = append(h.Marks, result.DepthMark{Depth: unit.Depth(50 * i), Share: share})
	}
	if marks := usualMarks(h); len(marks) != 3 || marks[2].Depth != 100 {
		t.Errorf("drawn are %v", marks)
	}
	if marks := usualMarks(&result.Hole{Marks: []result.DepthMark{{}, {Depth: 50}}}); len(marks) != 0 {
		t.Errorf("of a hole never begun are drawn %v", marks)
	}
}
