package scenario

import (
	"errors"
	"testing"

	"coredays/scenario/fault"
	"coredays/scenario/lithology"
)

func FuzzRead(f *testing.F) {
	for _, text := range [][]byte{DemonstrationText(), Starter(), drillshipText, lithology.Text} {
		f.Add(".yaml", text, "sites[SB-01].cap=9 d")
	}
	f.Add(".json", []byte(`{"version": 1, "sites": [{"name": "A", "holes": [{"name": "A", "core": [{"with": "APC", "to": "refusal"}]}]}]}`), "sites[0].position=10N 20W")
	f.Add(".toml", []byte("version = 1\n[rates]\nconnection = \"6 min\"\n[[sites]]\nname = \"A\"\n"), "rates.bench={low: 1 min, mid: 2 min, high: 4 min}")
	f.Fuzz(func(t *testing.T, extension string, data []byte, setting string) {
		p, err := WithSettings(data, "fuzz"+extension, []string{setting})
		var faults fault.List
		switch {
		case err != nil && (p != nil || !errors.As(err, &faults) || len(faults) == 0 || err.Error() == ""):
			t.Errorf("an error that is no faults: %v", err)
		case err == nil && (len(p.Sites) == 0 || len(p.Order) != len(p.Sites)):
			t.Errorf("a plan without its sites: %+v", p)
		}
		if ship, faults := readShip("ship"+extension, data); len(faults) == 0 && (ship.Name == "" || !ship.Rates[0].Given()) {
			t.Errorf("a ship that lacks something: %+v", ship)
		}
	})
}
