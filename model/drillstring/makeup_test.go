package drillstring

import (
	"strings"
	"testing"
)

func TestMakeUpTorqueOfTheErrataIsFound(t *testing.T) {
	m, err := table(t).MakeUp(Connection{"5-1/2 FH", inches(7.5, 3)})
	if err != nil {
		t.Fatal(err)
	}
	published(t, "ft lb", m.Torque, Torque(lbf(1))*Torque(ft(1)), 52_302, 0.01) // API RP 7G errata of May 2000, item 6
	if m.Check(m.Torque*1.05, 0.1) != nil || m.Check(m.Torque*1.2, 0.1) == nil || m.Check(m.Torque*0.8, 0.1) == nil {
		t.Error("a tolerance of 10 % lets 20 % pass, or keeps 5 % out")
	}
}

func TestNoTorqueIsGivenForAConnectionOfAnotherBore(t *testing.T) {
	joint := kind(t, "5-1/2 in 21.90 lb/ft S-140").Joint
	if _, err := table(t).MakeUp(joint); err == nil || !strings.Contains(err.Error(), "maker's current table") {
		t.Errorf("5-1/2 FH with a core bore: %v", err)
	}
	for _, m := range table(t).MakeUps {
		if !strings.Contains(m.Source, "maker") {
			t.Errorf("%s: no warning in its source, %q", m.Joint.Name, m.Source)
		}
	}
}
