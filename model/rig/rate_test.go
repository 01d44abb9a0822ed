package rig

import (
	"regexp"
	"slices"
	"testing"
)

var word = regexp.MustCompile(`^[a-z]+(_[a-z]+)*$`)

func TestEveryRateSaysWhatItIs(t *testing.T) {
	for r := range Rates {
		m := r.Of()
		if !word.MatchString(m.Key) || m.What == "" {
			t.Errorf("rate %d is %q: %q", int(r), m.Key, m.What)
		}
	}
}

func TestTheUnitOfEveryRateIsOneOfItsDimension(t *testing.T) {
	for r := range Rates {
		m := r.Of()
		if !slices.Contains(m.Of.Symbols(), m.Unit) {
			t.Errorf("%s has the unit %q, of its dimension are %q", m.Key, m.Unit, m.Of.Symbols())
			continue
		}
		text := m.Of.Format(0.25, m.Unit)
		if got, err := m.Of.Parse(text); err != nil || got != 0.25 {
			t.Errorf("%s: %q reads back as %g, %v", m.Key, text, got, err)
		}
	}
}

func TestEveryRateIsFoundByAKeyOfItsOwn(t *testing.T) {
	for r := range Rates {
		if got, found := ParseRate(r.Of().Key); !found || got != r {
			t.Errorf("%s finds rate %d, want %d", r.Of().Key, int(got), int(r))
		}
	}
	for _, key := range []string{"", "Tripping", "trip", "rates"} {
		if got, found := ParseRate(key); found {
			t.Errorf("%q finds %s", key, got.Of().Key)
		}
	}
}

// From each group one: a row in the wrong place would give a figure to another rate.
func TestRatesStandBesideTheirKeys(t *testing.T) {
	for r, key := range map[Rate]string{SailingSpeed: "sailing_speed", Tripping: "tripping", OffsetMove: "offset_move", Shot: "shot",
		Connection: "connection", TipFactor: "tip_factor", Bridge: "bridge", HangOffDepth: "hang_off_depth"} {
		if got := r.Of().Key; got != key {
			t.Errorf("rate %d has the key %s, want %s", int(r), got, key)
		}
	}
}
