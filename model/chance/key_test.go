package chance

import "testing"

func TestKeysKeepNamesApart(t *testing.T) {
	seen := map[Key][]string{}
	for _, names := range [][]string{{}, {""}, {"", ""}, {"ab", "c"}, {"a", "bc"}, {"abc"}, {"abc", ""}, {"", "abc"}, {"c", "ab"}} {
		k := KeyOf(names...)
		if other, twice := seen[k]; twice {
			t.Errorf("%q has the key of %q", names, other)
		}
		seen[k] = names
	}
}

// FNV-1a by hand: without a name its offset basis, as published by Fowler, Noll and Vo; the name "a" with
// the nought behind it by two steps of xor and times 2^40 + 2^8 + 0xb3.
func TestKeysAreFNV1a(t *testing.T) {
	basis, prime := uint64(0xcbf29ce484222325), uint64(1<<40+1<<8+0xb3)
	if got := KeyOf(); got != Key(basis) {
		t.Errorf("key of no name is %x", got)
	}
	want := (basis ^ 'a') * prime
	want *= prime
	if got := KeyOf("a"); got != Key(want) {
		t.Errorf("key of a is %x, want %x", got, want)
	}
}

func TestOrderOfKeysMatters(t *testing.T) {
	s, a, b := Replication(1, 1), KeyOf("a"), KeyOf("b")
	if s.For(a).For(b) == s.For(b).For(a) || s.For(a).For(a) == s {
		t.Error("keys cancel or change places")
	}
}

func TestNoTwoReplicationsShareASource(t *testing.T) {
	seen := map[Source][2]int{}
	for seed := range 8 {
		for n := range 20_000 {
			s := Replication(uint64(seed), n)
			if other, twice := seen[s]; twice {
				t.Fatalf("seed and number %v have the source of %v", [2]int{seed, n}, other)
			}
			seen[s] = [2]int{seed, n}
		}
	}
}

// voyage draws so many runs at each of the sites, in the order given, and notes every number.
func voyage(order []string, runs map[string]int) map[string][]float64 {
	stream := Replication(3, 14)
	drawn := map[string][]float64{}
	for _, name := range order {
		source := stream.For(KeyOf("core")).For(KeyOf("site", name))
		for n := range runs[name] {
			drawn[name] = append(drawn[name], source.Normal(n))
		}
	}
	return drawn
}

func TestMoreDrawsOrAnotherOrderMoveNoOtherDraw(t *testing.T) {
	few := voyage([]string{"A", "B", "C"}, map[string]int{"A": 2, "B": 3, "C": 4})
	lots := voyage([]string{"C", "A", "B"}, map[string]int{"A": 200, "B": 3, "C": 7})
	for name, draws := range few {
		for n, want := range draws {
			if got := lots[name][n]; got != want {
				t.Errorf("draw %d at %s moved from %g to %g", n, name, want, got)
			}
		}
	}
	if few["A"][0] == few["B"][0] || few["A"][0] == few["A"][1] {
		t.Error("draws repeat")
	}
}

func BenchmarkNormal(b *testing.B) {
	s := Replication(1, 1).For(KeyOf("core"))
	sum := 0.0
	for n := 0; b.Loop(); n++ {
		sum += s.Normal(n)
	}
	if sum == 0 {
		b.Error("no draw")
	}
}

func BenchmarkBits(b *testing.B) {
	s := Replication(1, 1).For(KeyOf("core"))
	var all uint64
	for n := 0; b.Loop(); n++ {
		all |= s.Bits(n)
	}
	if all == 0 {
		b.Error("no bits")
	}
}
