package scenario

import (
	"strings"
	"testing"

	"coredays/scenario/document"
	"coredays/scenario/entry"
	"coredays/scenario/fault"
)

// taken reports whether the starter is read with settings.
func taken(t *testing.T, sets ...string) bool {
	t.Helper()
	_, err := WithSettings(Starter(), "starter.yaml", sets)
	return err == nil
}

// The starter sails on 1 June 2027 at 8 h for 56 days, to 27 July.
func TestFiguresThatGoTogetherAreHeldAgainstEachOther(t *testing.T) {
	for _, c := range []struct {
		set  string
		want bool
	}{
		{"sites[0].not_after=2027-06-01T08:00Z", false}, {"sites[0].not_after=2027-06-01T09:00Z", true},
		{"sites[0].not_before=2027-07-27T08:00Z", false}, {"sites[0].not_before=2027-07-27T07:00Z", true},
		{"sites[0].unusable={because: ice, every: 1 d, lasts: 1.1 d}", false}, {"sites[0].unusable={because: ice, every: 1 d, lasts: 1 d}", true},
		{"rates={breakdown_every: 20 h, repair_time: 10.1 h}", false}, {"rates={breakdown_every: 20 h, repair_time: 10 h}", true},
		{"rates={breakdown_every: 20 h, repair_time: {shape: uniform, lowest: 0 h, highest: 21 h}}", false}, // 10.5 h on average
		{"rates={breakdown_every: 20 h, repair_time: {shape: uniform, lowest: 0 h, highest: 19 h}}", true},
		{"rates={rig_service_every: 5 h, rig_service: 5 h}", false}, {"rates={rig_service_every: 5 h, rig_service: 4.9 h}", true},
		{"sails=1949-12-31T23:00Z", false}, {"sails=1950-01-01T00:00Z", true}, {"sails=2150-12-31T23:00Z", true}, {"sails=2151-01-01T00:00Z", false},
	} {
		if got := taken(t, c.set); got != c.want {
			t.Errorf("%s: taken %v", c.set, got)
		}
	}
}

func TestNamesThatCannotBePrintedAreRefused(t *testing.T) {
	const joiner, nonJoiner = "\u200d", "\u200c"
	for letter, want := range map[string]bool{
		"\x00": false, "\x1b": false, "\x7f": false, "\u0085": false, "\u200b": false, "\u200e": false, "\u202e": false, "\u2066": false, "\u2028": false, "\u2029": false, "\ufeff": false,
		"\n": false, "\t": false, "é": true, "深": true, "می" + nonJoiner + "خواهم": true, "क्" + joiner + "ष": true, "'": true, "=": true,
	} {
		c := &entry.Reader{Outline: document.NewOutline("starter.yaml")}
		c.Name("title", document.Text{Value: "A" + letter + "B", Given: true})
		if (len(c.Faults) == 0) != want {
			t.Errorf("%q in a name: %v", letter, c.Faults)
		}
	}
	if taken(t, "title="+strings.Repeat("é", entry.MostTitle+1)) || !taken(t, "title="+strings.Repeat("é", entry.MostTitle)) {
		t.Errorf("a title may have %d letters", entry.MostTitle)
	}
	if taken(t, "sites[0].name="+strings.Repeat("é", entry.MostName+1)) || !taken(t, "sites[0].name="+strings.Repeat("é", entry.MostName)) {
		t.Errorf("a name may have %d letters", entry.MostName)
	}
}

func TestAFaultSteersNoTerminalAndIsShort(t *testing.T) {
	f := fault.Fault{File: "a.yaml", Line: 3, Path: "sites[0].\x1b[2J", Value: strings.Repeat("x", 10_000), Wanted: "no \u202e such"}
	want := `a.yaml:3: sites[0].\x1b[2J: "` + strings.Repeat("x", 80) + `…": no \u202e such`
	if f.Error() != want {
		t.Errorf("%s, want %s", f.Error(), want)
	}
	many := make(fault.List, 5000)
	if lines := strings.Split(many.Error(), "\n"); len(lines) != 101 || lines[100] != "and 4900 more: mend these first" {
		t.Errorf("%d lines, the last %q", len(lines), lines[len(lines)-1])
	}
}

// A source may be a block of lines; it is given on one.
func TestTheLinesOfASourceAreMadeOne(t *testing.T) {
	p, err := WithSettings(Starter(), "starter.yaml", []string{"rates={connection: {value: 6 min, source: \"the driller,\\nby radio\"}}"})
	if err != nil {
		t.Fatal(err)
	}
	for _, q := range p.Ship.Rates {
		if q.Source == "the driller, by radio" {
			return
		}
	}
	t.Error("the source is not there")
}

func TestAShipFileIsHeldToTheSameBounds(t *testing.T) {
	for old, c := range map[string]struct{ with, want string }{
		"repair_time: {shape: lognormal, median: 3.2 h, factor: 4, varies: run,": {"repair_time: {value: 15 d,", "rates.repair_time: \"15 d\": on average at most half of breakdown_every (12 d)"},
		"stand_length: {value: 28.5 m,":                                          {"stand_length: {value: 28.5 mm,", "rates.stand_length.value: \"28.5 mm\": from 5 m to 60 m"},
		"name: riserless drillship":                                              {"name: \"riser\\eless\"", "the control character U+001B"},
		"length: 140 m":                                                          {"length: 140 km", "hull.length: \"140 km\": from 20 m to 500 m"},
	} {
		if strings.Count(string(drillshipText), old) != 1 {
			t.Fatalf("%q does not stand once in the ship file", old)
		}
		_, faults := readShip("ship.yaml", []byte(strings.Replace(string(drillshipText), old, c.with, 1)))
		if text := faults.Error(); !strings.Contains(text, c.want) || !strings.HasPrefix(text, "ship.yaml:") {
			t.Errorf("%s: %s", c.with, text)
		}
	}
}
