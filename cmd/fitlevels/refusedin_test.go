package main

import (
	"strings"
	"testing"

	"coredays/model/record"
)

// Down to 50 m there are 30 m of ooze and 10 of mud; down to 200 m too little is described.
func TestAHoleIsOfWhatFillsMostOfIt(t *testing.T) {
	runs := []record.Described{{Top: 0, Bottom: 10, Class: "mud"}, {Top: 20, Bottom: 80, Class: "ooze"}}
	for depth, want := range map[float64]string{50: "ooze", 12: "mud", 300: ""} {
		if got := mostly(runs, depth); got != want {
			t.Errorf("down to %g m it is of %q, want %q", depth, got, want)
		}
	}
}

// Of five holes one changed to the extended barrel, one did not, and three say nothing: a rotary core, few cores, drilled through.
func TestHolesThatBeganWithThePistonCorerTellOfRefusal(t *testing.T) {
	holes, faults, err := readPistonHoles(strings.NewReader(`leg,site,hole,n_apc,n_hlapc,n_xcb,n_rcb,drilled_m,cored_apc_m
101,U1,A,8,0,3,0,,76
101,1,B,8,0,0,0,,75
101,1,C,8,0,0,2,,74
101,1,D,2,0,0,0,,30
101,1,E,8,0,0,0,100,76
`))
	if err != nil || len(faults) > 0 {
		t.Fatal(err, faults)
	}
	if len(holes) != 2 || !holes[0].Changed || holes[1].Changed || holes[0].Hole != "101-1A" || holes[0].Depth != 76 {
		t.Errorf("%+v", holes)
	}
}
