// Package chance gives random numbers that are keyed, not drawn in order: each is a function of
// the seed, the replication, the place, the purpose and a count. Adding a draw in one part of
// the model, or coming to the sites in another order, moves no other draw.
package chance

import "hash/fnv"

// Key stands for a place or purpose. Keys are worked out once, when a plan is compiled.
type Key uint64

// KeyOf hashes names such as a site, a hole and a purpose.
func KeyOf(names ...string) Key {
	h := fnv.New64a()
	for _, name := range names {
		h.Write([]byte(name))
		h.Write([]byte{0}) // "ab","c" is not "a","bc"
	}
	return Key(h.Sum64())
}

// golden is the increment of SplitMix64: 2^64 divided by the golden ratio, made odd.
const golden = 0x9e3779b97f4a7c15

// mix is the output function of SplitMix64 (Steele, Lea and Flood 2014, fig. 17, constants of
// variant 13).
func mix(x uint64) uint64 {
	x = (x ^ x>>30) * 0xbf58476d1ce4e5b9
	x = (x ^ x>>27) * 0x94d049bb133111eb
	return x ^ x>>31
}

// Source is a sequence of random numbers that can be entered anywhere. It is a plain value.
type Source uint64

// Replication is the source of one replication of one seed.
func Replication(seed uint64, number int) Source {
	return Source(mix(mix(seed+golden) ^ mix(uint64(number)*golden+1)))
}

// For is the source for one key within this source.
func (s Source) For(k Key) Source { return Source(mix(uint64(s) ^ uint64(k))) }

// Bits is the n-th number of the source, 64 random bits, n from 0: the n-th output of SplitMix64
// seeded with the source.
func (s Source) Bits(n int) uint64 { return mix(uint64(s) + golden*(uint64(n)+1)) }

// Uniform is the n-th number as a uniform draw, above 0 and below 1: the middle of one of 2^52 equal
// cells. Of 2^53 cells the last middle would round up to 1, whose normal score is infinite.
func (s Source) Uniform(n int) float64 {
	return (float64(s.Bits(n)>>12) + 0.5) / (1 << 52)
}
