package plan

import (
	"fmt"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// threeSites has a hole that depends on another and all measurements at the first site.
func threeSites() *Plan {
	hole := func(name string) Item { return Item{Name: name, Rank: 1, Hole: &Hole{}} }
	a, c, d := hole("A"), hole("C"), hole("D")
	a.Hole = &Hole{Oriented: true, Temperature: []int{3}, Penetrometer: nil, Logging: []int{0}}
	c.When = &Condition{Hole: 0, Above: true, Depth: 100}
	d.When = &Condition{Hole: 1}
	return &Plan{
		Sites: []Site{
			{Name: "N", Items: []Item{a, hole("B"), c, d}},
			{Name: "E", Items: []Item{hole("A")}},
			{Name: "X", Alternate: true, Items: []Item{hole("A"), hole("B")}},
			{Name: "S", Items: []Item{hole("A"), {Name: "buoy", Task: &Task{}}}},
		},
		Order:  []int{3, 0, 1, 2},
		Before: []Precedence{{First: 0, Then: 1}, {First: 3, Then: 0}},
	}
}

func TestCutsListEachThingInTheOrderOfTheVisits(t *testing.T) {
	var got []string
	for _, c := range threeSites().Cuts() {
		got = append(got, fmt.Sprintf("%s %s %s %v", c.Kind, c.Site, c.What, c.Also))
	}
	want := []string{
		"hole S A []", "task S buoy []", "site S  []",
		"measurement N A orientation []", "measurement N A temperature []", "measurement N A logging []", "hole N A [C]",
		"hole N B [D]", "hole N C []", "hole N D []", "site N  []",
		"site E  []",
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}

func TestWhatIsLeftKeepsItsConditionsAndRules(t *testing.T) {
	p := threeSites()
	before := threeSites()
	cuts := map[string]*Plan{}
	for _, c := range p.Cuts() {
		cuts[c.Kind.String()+" "+c.Site+" "+c.What] = c.Plan
	}
	withoutA := cuts["hole N A"].Sites[0].Items
	if len(withoutA) != 2 || withoutA[0].Name != "B" || withoutA[1].Name != "D" || withoutA[1].When.Hole != 0 {
		t.Errorf("without A: %+v", withoutA)
	}
	if without := cuts["measurement N A logging"].Sites[0].Items[0].Hole; without.Logging != nil || !without.Oriented {
		t.Errorf("without logging: %+v", without)
	}
	withoutN := cuts["site N "]
	if diff := cmp.Diff([]int{2, 0, 1}, withoutN.Order); diff != "" || len(withoutN.Before) != 0 {
		t.Errorf("without N: %v, %v", withoutN.Order, withoutN.Before)
	}
	if diff := cmp.Diff([]Precedence{{First: 2, Then: 0}}, cuts["site E "].Before); diff != "" {
		t.Errorf("without E (-want +got):\n%s", diff)
	}
	if diff := cmp.Diff(before.Order, p.Order); diff != "" || len(p.Sites[0].Items) != 4 || !p.Sites[0].Items[0].Hole.Oriented {
		t.Error("the plan itself has changed")
	}
}

func TestTheOnlySiteAndItsOnlyItemAreNotCut(t *testing.T) {
	p := &Plan{Sites: []Site{{Name: "N", Items: []Item{{Name: "A", Hole: &Hole{}}}}}, Order: []int{0}}
	if cuts := p.Cuts(); len(cuts) > 0 {
		t.Errorf("%+v", cuts)
	}
}
