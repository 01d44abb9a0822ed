package spread

import "testing"

func TestEveryLevelIsReadByItsName(t *testing.T) {
	for l := range Levels {
		if got, err := ParseLevel(l.String()); err != nil || got != l {
			t.Errorf("%v reads as %v, %v", l, got, err)
		}
	}
	for _, text := range []string{"", "Run", "core"} {
		if _, err := ParseLevel(text); err == nil || err.Error() != "is none of expedition, site, hole, run" {
			t.Errorf("%q: %v", text, err)
		}
	}
}

func TestSharesAreToldInPercentWithoutTheEmptyOnes(t *testing.T) {
	for want, s := range map[string]Shares{
		"100 % run":                            All(Run),
		"33 % expedition, 44 % hole, 23 % run": {0.33, 0, 0.44, 0.23},
		"":                                     {},
	} {
		if got := s.String(); got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}

func TestAllPutsEverythingAtOneLevel(t *testing.T) {
	for l := range Levels {
		s, sum := All(l), 0.0
		for _, share := range s {
			sum += share
		}
		if s[l] != 1 || sum != 1 {
			t.Errorf("all at %v is %v", l, [Levels]float64(s))
		}
	}
}
