package chance

import (
	"math"
	"math/bits"
	"testing"
)

// First outputs for the seed 1234567 as the Rosetta Code page "Pseudo-random numbers/Splitmix64" lists
// them, from Vigna's splitmix64.c.
var published = []uint64{6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821}

func TestBitsAreThePublishedSplitMix64(t *testing.T) {
	for n, want := range published {
		if got := Source(1234567).Bits(n); got != want {
			t.Errorf("number %d is %d, want %d", n, got, want)
		}
	}
}

// sequential is the generator as its authors run it: a state that the increment moves on.
func sequential(state *uint64) uint64 {
	*state += 0x9e3779b97f4a7c15
	z := *state
	z ^= z >> 30
	z *= 0xbf58476d1ce4e5b9
	z ^= z >> 27
	z *= 0x94d049bb133111eb
	return z ^ z>>31
}

func TestEnteringAnywhereIsTheSameAsDrawingInOrder(t *testing.T) {
	for _, seed := range []uint64{0, 1, 1234567, math.MaxUint64} {
		state := seed
		for n := range 1000 {
			if want, got := sequential(&state), Source(seed).Bits(n); got != want {
				t.Fatalf("seed %d, number %d is %d, want %d", seed, n, got, want)
			}
		}
	}
}

func TestIncrementIsTheGoldenRatioMadeOdd(t *testing.T) {
	const ratio = 1.6180339887498948482045868343656381177203091798057628
	if off := float64(golden - (1<<64)/ratio); math.Abs(off) >= 1 || golden%2 == 0 { // the difference is exact, of constants
		t.Errorf("%x is off by %g", uint64(golden), off)
	}
}

// unmixed is the source whose first number is given: the output function step by step backwards.
func unmixed(out uint64) Source {
	x := unshifted(out, 31) * inverse(0x94d049bb133111eb)
	x = unshifted(x, 27) * inverse(0xbf58476d1ce4e5b9)
	return Source(unshifted(x, 30) - golden)
}

// unshifted undoes y = x ^ x>>by.
func unshifted(y uint64, by int) uint64 {
	x := y
	for range 64 / by {
		x = y ^ x>>by
	}
	return x
}

// inverse is the number whose product with an odd one is 1, by Newton's iteration.
func inverse(odd uint64) uint64 {
	x := odd
	for range 6 {
		x *= 2 - odd*x
	}
	return x
}

func TestNoBitsMakeADrawOfNoughtOrOne(t *testing.T) {
	for _, out := range []uint64{0, 1, math.MaxUint64, math.MaxUint64 - 1, math.MaxUint64 - 1<<11, math.MaxUint64 - 1<<12, 1 << 63} {
		s := unmixed(out)
		if got := s.Bits(0); got != out {
			t.Fatalf("bits are %x, want %x", got, out)
		}
		if u, z := s.Uniform(0), s.Normal(0); !(u > 0 && u < 1) || math.IsInf(z, 0) || math.IsNaN(z) {
			t.Errorf("bits %x make %g, whose normal score is %g", out, u, z)
		}
	}
}

// The lowest and the highest draw are as far from the ends, and so are their scores.
func TestDrawsAreSymmetric(t *testing.T) {
	for _, out := range []uint64{0, 1 << 12, 1 << 40, 12345 << 45} {
		low, high := unmixed(out), unmixed(^out)
		if low.Uniform(0) != 1-high.Uniform(0) || low.Normal(0) != -high.Normal(0) {
			t.Errorf("bits %x make %g and %g", out, low.Uniform(0), high.Uniform(0))
		}
	}
}

// A change of one bit of the seed should change each bit of a number half the times: the count of changed
// bits among n*64 is binomial.
func TestNeighbouringSeedsShareNothing(t *testing.T) {
	const n = 2000
	changed := 0
	for seed := range uint64(n) {
		a, b := Replication(seed, 1).Bits(0), Replication(seed^1, 1).Bits(0)
		changed += bits.OnesCount64(a ^ b)
	}
	if want, sd := n*32.0, math.Sqrt(n*64)/2*math.Sqrt2; math.Abs(float64(changed)-want) > 4*sd { // each pair comes twice
		t.Errorf("%d bits changed, want %.0f ± %.0f", changed, want, sd)
	}
}
