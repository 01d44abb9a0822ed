package chance

import "math"

// Standard normal quantiles by table, since the inverse error function would be a sixth of all that a
// simulation costs. Between two entries the quantile runs straight, which is off by less than 0.0002; draws near
// 0 and 1 are worked out in full.
const (
	normalBits  = 12
	normalCells = 1 << normalBits
	exactCells  = 16 // at either end
)

// normals are the quantiles of the ends of the cells. They never change.
var normals = tabulated()

func tabulated() (t [normalCells + 1]float64) {
	for i := 1; i < normalCells; i++ {
		t[i] = quantile(float64(i) / normalCells)
	}
	return t
}

// quantile is that of the standard normal distribution.
func quantile(p float64) float64 { return math.Sqrt2 * math.Erfinv(2*p-1) }

// Normal is the n-th number as a standard normal draw, by quantile.
func (s Source) Normal(n int) float64 {
	bits := s.Bits(n)
	cell := bits >> (64 - normalBits)
	if cell-exactCells >= normalCells-2*exactCells {
		return quantile(s.Uniform(n))
	}
	part := float64(bits<<normalBits>>11) * 0x1p-53
	return normals[cell] + part*(normals[cell+1]-normals[cell])
}
