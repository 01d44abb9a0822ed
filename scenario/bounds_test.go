package scenario

import (
	"fmt"
	"os"
	"regexp"
	"strings"
	"testing"

	"coredays/model/rig"
	"coredays/model/spread"
)

// manualBounds is the table of the manual, as it has to stand there.
func manualBounds() string {
	var rows []string
	for _, b := range Bounds() {
		rows = append(rows, b.String())
	}
	for _, m := range counted {
		rows = append(rows, m.String())
	}
	return "//\t" + strings.Join(rows, "\n//\t")
}

func TestTheManualListsAllBounds(t *testing.T) {
	data, err := os.ReadFile("../doc.go")
	if err != nil {
		t.Fatal(err)
	}
	manual := string(data)
	if want := manualBounds(); !strings.Contains(manual, want) {
		t.Errorf("doc.go does not have the table of bounds as it is:\n%s", want)
	}
	for _, want := range []string{fmt.Sprintf("from %d to %d", FirstYear, LastYear), fmt.Sprintf("%d letters", mostName), fmt.Sprintf("%d letters", mostTitle)} {
		if !strings.Contains(manual, want) {
			t.Errorf("doc.go does not say %q", want)
		}
	}
}

func TestEveryFigureOfTheShipHasItsKindAndRoundBounds(t *testing.T) {
	for r := range rig.Rates {
		if m := rateKinds[r]; m.kind == "" || m.of != r.Of().Of || !(m.least < m.most) {
			t.Errorf("%s has no bounds of its own dimension", r.Of().Key)
		}
	}
	long := regexp.MustCompile(`\d\.\d{4}|\d{7}`)
	for r := range rig.Rates {
		if m := rateMeasure(r); long.MatchString(m.tell(m.least) + " " + m.tell(m.most)) {
			t.Errorf("%s: %s to %s is hard to read", r.Of().Key, m.tell(m.least), m.tell(m.most))
		}
	}
	for _, m := range kinds {
		if long.MatchString(m.tell(m.least)+" "+m.tell(m.most)) || m.kind == "" {
			t.Errorf("%s: %s to %s is hard to read", m.kind, m.tell(m.least), m.tell(m.most))
		}
	}
}

// A value at a bound is taken, one a hundredth beyond is not.
func TestBoundsAreWhereTheyAreSaidToBe(t *testing.T) {
	for r := range rig.Rates {
		m := rateMeasure(r)
		if m.of.Wanted() == "" || m.whole {
			continue
		}
		for _, c := range []struct {
			value float64
			taken bool
		}{{m.least, !m.above}, {m.most, true}, {m.most * 1.01, false}, {m.least - m.most/100, false}} {
			if m.holds(c.value) != c.taken {
				t.Errorf("%s of %s: taken %v", r.Of().Key, m.tell(c.value), !c.taken)
			}
		}
		beyond := m.of.Format(m.most*1.01, m.symbol)
		c, path := &reader{outline: newOutline("plan.yaml")}, "rates."+r.Of().Key
		c.quantity(path, &spreadFile{Value: text{value: beyond, given: true}, short: true}, m, spread.Quantity{})
		if len(c.faults) != 1 || c.faults[0].Path != path || !strings.Contains(c.faults[0].Wanted, m.limits()) {
			t.Errorf("%s of %s: %v", r.Of().Key, beyond, c.faults)
		}
	}
}
