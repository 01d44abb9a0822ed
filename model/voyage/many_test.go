package voyage

import (
	"reflect"
	"testing"

	"coredays/model/activity"
	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/spread"
)

func TestPlansCompiledTogetherAreThoseCompiledOneByOne(t *testing.T) {
	var plans []*plan.Plan
	for range 4 {
		plans = append(plans, transect(place("S", geo.Position{Latitude: -20, Longitude: 100})))
	}
	plans[1].Ship.Rates[rig.Tripping] = spread.Just(0.005)
	plans[2].Ship.Rates[rig.Connection] = spread.Quantity{Shape: spread.Table{P: []float64{0.1, 0.9}, Value: []float64{200, 600}}, Shares: spread.All(spread.Run)}
	plans[3].Ship.Hull.Length *= 1.2
	for _, p := range plans {
		p.Ship.Limits = []rig.SeaLimit{{For: activity.Tripping, Of: rig.LargestHeave, Most: 3}}
	}
	together, errs := CompileAll(plans)
	for i, p := range plans {
		alone, err := Compile(p)
		if err != nil || errs[i] != nil {
			t.Fatal(err, errs[i])
		}
		if !reflect.DeepEqual(alone.Quantities, together[i].Quantities) {
			t.Errorf("quantities of plan %d differ", i)
		}
		if alone.Sites[0].Most != together[i].Sites[0].Most {
			t.Errorf("limits of plan %d: %v alone and %v together", i, alone.Sites[0].Most, together[i].Sites[0].Most)
		}
	}
	if reflect.DeepEqual(together[0].Quantities, together[1].Quantities) || together[0].Sites[0].Most == together[3].Sites[0].Most {
		t.Error("plans that differ are compiled alike: this tests nothing")
	}
}

func TestAPlanThatFailsLeavesTheOthers(t *testing.T) {
	good, bad := transect(place("S", geo.Position{Latitude: -20, Longitude: 100})), transect(place("S", geo.Position{Latitude: -20, Longitude: 100}))
	bad.Ship.Rates[rig.Tripping] = spread.Quantity{}
	voyages, errs := CompileAll([]*plan.Plan{bad, good})
	if voyages[0] != nil || errs[0] == nil || voyages[1] == nil || errs[1] != nil {
		t.Errorf("voyages %v, errors %v", voyages, errs)
	}
}
