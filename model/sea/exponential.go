package sea

import (
	"math"
	"sync"
)

const (
	powerBits = 8
	powers    = 1 << powerBits
)

// powerTable holds 2 to the powers of 0, 1/256 and so on, made once; it never changes afterwards.
var powerTable = sync.OnceValue(func() *[powers]float64 {
	t := new([powers]float64)
	for i := range t {
		t[i] = math.Exp2(float64(i) / powers)
	}
	return t
})

// exponential is e to the x by a table of powers, [powers]float64 from powerTable: the library's
// was half of what the sea costs. It is good to 12 figures.
func exponential(t *[powers]float64, x float64) float64 {
	if !(math.Abs(x) < 100) {
		return math.Exp(x)
	}
	y := x * (powers * math.Log2E)
	whole := math.Floor(y)
	r := (y - whole) * (math.Ln2 / powers)
	n := int(whole)
	power := math.Float64frombits(uint64(1023+n>>powerBits) << 52)
	return power * t[n&(powers-1)] * (1 + r*(1+r/2*(1+r/3*(1+r/4)))) // e^r = 1 + r + r^2/2 + ..., r below 0.003
}
