package voyage

import (
	"testing"

	"coredays/model/chance"
	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/model/sea"
	"coredays/model/spread"
	"coredays/model/unit"
)

func TestTheFirstQuantitiesAreTheRatesInTheirOrder(t *testing.T) {
	p := transect(place("W", west))
	v := compiled(t, p)
	for r := range rig.Rates {
		want := p.Ship.Rates[r].Median()
		near(t, r.Of().Key, v.Quantities[r].At(0), want, 0)
		if v.Purposes[r] != chance.KeyOf("rate", r.Of().Key) {
			t.Errorf("%s has the key of another purpose", r.Of().Key)
		}
	}
	near(t, "time in port, s", v.Quantities[v.InPort].At(0), 86_400, 0)
	if len(v.Quantities) != len(v.Purposes) {
		t.Errorf("%d quantities, %d purposes", len(v.Quantities), len(v.Purposes))
	}
}

func TestVoyageHasTheFiguresOfItsPlan(t *testing.T) {
	v := compiled(t, transect(place("W", west), place("E", east)))
	near(t, "deadline, s", v.Deadline, 30*86_400, 0)
	near(t, "sea that clears the sea floor, m", v.ClearFloor, 8, 0)
	near(t, "sea that recovers pipe, m", v.Recover, 10, 0)
	near(t, "horizon of the forecast, s", float64(v.Forecast.Horizon), 172_800, 0)
	near(t, "skill of the forecast", v.Forecast.Skill, 0.6, 0)
	near(t, "items", float64(v.Items), 4, 0)
	for s := range v.Sites {
		site := &v.Sites[s]
		near(t, "sea floor, m", site.Floor, 3000, 0)
		near(t, "section, m", site.Section, 250, 0)
		for i := range site.Items {
			near(t, "number of the item", float64(site.Items[i].Number), float64(2*s+i), 0)
		}
	}
}

func TestLayersAndTasksPointAtTheirQuantities(t *testing.T) {
	v := compiled(t, transect(place("W", west)))
	site := &v.Sites[0]
	at := func(q Quantity) float64 { return v.Quantities[q].At(0) }
	for i, bottom := range []float64{150, 400} {
		l := site.Layers[i]
		near(t, "bottom, m", l.Bottom, bottom, 0)
		near(t, "strength, Pa/m", at(l.Strength), 600, 0)
		near(t, "rate, m/s", at(l.Rate), 0.008, 0)
		near(t, "drilling ahead, m/s", at(l.Ahead), 0.01, 0)
		near(t, "recovery", at(l.Recovery[coring.APC]), 1.02, 0)
		if l.Recovery[coring.RCB] != NoQuantity {
			t.Error("recovery of a tool for which none is stated")
		}
	}
	if site.Items[0].Takes != nil {
		t.Error("a hole takes the time of a task")
	}
	near(t, "time of the task, s", at(site.Items[1].Takes[0]), 7200, 0)
}

func TestWhatHasTheSameNameElsewhereHasAnotherKey(t *testing.T) {
	a := place("Near", west) // named as the port
	b := place("B", east)    // named as a task, with items named as those of the other site
	v := compiled(t, transect(a, b))
	seen := map[chance.Key]string{}
	put := func(k chance.Key, what string) {
		if other, twice := seen[k]; twice {
			t.Errorf("%s has the key of %s", what, other)
		}
		seen[k] = what
	}
	for s := range v.Sites {
		put(v.Sites[s].Key, "site "+v.Sites[s].Name)
		for i := range v.Sites[s].Items {
			put(v.Sites[s].Items[i].Key, "item "+v.Sites[s].Items[i].Name+" of "+v.Sites[s].Name)
		}
	}
	taken := map[Quantity]bool{}
	for s := range v.Sites {
		q := v.Sites[s].Items[1].Takes[0]
		if taken[q] {
			t.Error("two tasks share a quantity")
		}
		taken[q] = true
		put(v.Purposes[q], "time of the task at "+v.Sites[s].Name)
	}
}

// Another order of the sites, or one more of them, leaves the keys of the others as they are.
func TestKeysDoNotDependOnTheOrderOfTheSites(t *testing.T) {
	w, e := place("W", west), place("E", east)
	one, two := compiled(t, transect(w, e)), compiled(t, transect(e, w))
	for i, j := range []int{1, 0} {
		if one.Sites[i].Key != two.Sites[j].Key || one.Sites[i].Items[0].Key != two.Sites[j].Items[0].Key {
			t.Errorf("site %s has another key in another order", one.Sites[i].Name)
		}
	}
	if one.Leg(FromPort, SitePlace(0)).Key != two.Leg(FromPort, SitePlace(1)).Key {
		t.Error("a passage has another key in another order")
	}
}

func TestLayersOfASiteHavePurposesOfTheirOwn(t *testing.T) {
	v := compiled(t, transect(place("W", west)))
	a, b := v.Sites[0].Layers[0], v.Sites[0].Layers[1]
	seen := map[chance.Key]bool{}
	for _, q := range []Quantity{a.Strength, a.Rate, a.Ahead, a.Recovery[coring.APC], b.Strength, b.Rate, b.Ahead, b.Recovery[coring.APC]} {
		if seen[v.Purposes[q]] {
			t.Errorf("quantity %d has the purpose of another", int(q))
		}
		seen[v.Purposes[q]] = true
	}
}

// A crew that recovers well does so in all layers, each tool for itself; drilling rates are a layer's own.
func TestRecoveryAboveTheRunIsThatOfTheTool(t *testing.T) {
	v := compiled(t, transect(place("W", west)))
	a, b := v.Sites[0].Layers[0], v.Sites[0].Layers[1]
	if v.Above[a.Recovery[coring.APC]] != v.Above[b.Recovery[coring.APC]] {
		t.Error("recovery of a tool in two layers has nothing in common")
	}
	if v.Above[a.Recovery[coring.APC]] == chance.KeyOf("recovery", coring.XCB.String()) {
		t.Error("recovery of two tools is the same")
	}
	if v.Above[a.Rate] == v.Above[b.Rate] || v.Above[a.Rate] != v.Purposes[a.Rate] {
		t.Error("drilling rates of two layers go together")
	}
}

func TestPlanWithoutAFigureThatEveryVoyageNeedsIsRefused(t *testing.T) {
	p := transect(place("W", west))
	p.Ship.Rates[rig.Tripping] = spread.Quantity{}
	refused(t, p, "the ship has no tripping")
	p = transect(place("W", west))
	p.InPort = spread.Quantity{}
	refused(t, p, "the days in port before sailing are not stated")
}

func TestSiteWithoutASeaIsRefusedByName(t *testing.T) {
	site := place("W", west)
	site.Climate = sea.Climate{}
	refused(t, transect(place("E", east), site), "site W: month 1: mean wave height of 0 m, wanted above 0 and under 30 m")
}

// Compiling leaves the plan alone and takes nothing of it that a later change could move.
func TestCompilingTwiceGivesTheSame(t *testing.T) {
	p := transect(place("W", west))
	one, two := compiled(t, p), compiled(t, p)
	if one.Sites[0].Key != two.Sites[0].Key || len(one.Quantities) != len(two.Quantities) || *one.Leg(FromPort, ToPort).Waves != *two.Leg(FromPort, ToPort).Waves {
		t.Error("the second voyage differs from the first")
	}
	if p.SeaDays != 30*unit.Day || len(p.Sites) != 1 || p.Sites[0].Items[0].Target() != 250 {
		t.Error("the plan has changed")
	}
}
