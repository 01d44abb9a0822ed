package entry

import (
	"fmt"
	"os"
	"regexp"
	"strings"
	"testing"

	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/scenario/document"
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
	for _, want := range []string{fmt.Sprintf("from %d to %d", FirstYear, LastYear), fmt.Sprintf("%d letters", MostName), fmt.Sprintf("%d letters", MostTitle)} {
		if !strings.Contains(manual, want) {
			t.Errorf("doc.go does not say %q", want)
		}
	}
}

func TestEveryFigureOfTheShipHasItsKindAndRoundBounds(t *testing.T) {
	for r := range rig.Rates {
		if m := rateKinds[r]; m.kind == "" || m.Of != r.Of().Of || !(m.Least < m.Most) {
			t.Errorf("%s has no bounds of its own dimension", r.Of().Key)
		}
	}
	long := regexp.MustCompile(`\d\.\d{4}|\d{7}`)
	for r := range rig.Rates {
		if m := RateMeasure(r); long.MatchString(m.tell(m.Least) + " " + m.tell(m.Most)) {
			t.Errorf("%s: %s to %s is hard to read", r.Of().Key, m.tell(m.Least), m.tell(m.Most))
		}
	}
	for _, m := range kinds {
		if long.MatchString(m.tell(m.Least)+" "+m.tell(m.Most)) || m.kind == "" {
			t.Errorf("%s: %s to %s is hard to read", m.kind, m.tell(m.Least), m.tell(m.Most))
		}
	}
}

// A value at a bound is taken, one a hundredth beyond is not.
func TestBoundsAreWhereTheyAreSaidToBe(t *testing.T) {
	for r := range rig.Rates {
		m := RateMeasure(r)
		if m.Of.Wanted() == "" || m.Whole {
			continue
		}
		for _, c := range []struct {
			value float64
			taken bool
		}{{m.Least, !m.Above}, {m.Most, true}, {m.Most * 1.01, false}, {m.Least - m.Most/100, false}} {
			if m.holds(c.value) != c.taken {
				t.Errorf("%s of %s: taken %v", r.Of().Key, m.tell(c.value), !c.taken)
			}
		}
		beyond := m.Of.Format(m.Most*1.01, m.Symbol)
		c, path := &Reader{Outline: document.NewOutline("plan.yaml")}, "rates."+r.Of().Key
		c.Quantity(path, &document.Spread{Value: document.Text{Value: beyond, Given: true}, Short: true}, m, spread.Quantity{})
		if len(c.Faults) != 1 || c.Faults[0].Path != path || !strings.Contains(c.Faults[0].Wanted, m.limits()) {
			t.Errorf("%s of %s: %v", r.Of().Key, beyond, c.Faults)
		}
	}
}
