package sea

import (
	"math"
	"sync"

	"coredays/model/chance"
)

// normals is a table of standard normal quantiles, since the inverse error function would be most
// of what the sea costs. Between two entries the quantile runs straight, which is off by less than
// 0.0002; draws near 0 and 1 are worked out in full.
type normals [normalCells + 1]float64

const (
	normalBits  = 12
	normalCells = 1 << normalBits
	exactCells  = 16 // at either end
)

// normalTable makes the table once; it never changes afterwards.
var normalTable = sync.OnceValue(func() *normals {
	n := new(normals)
	for i := 1; i < normalCells; i++ {
		n[i] = math.Sqrt2 * math.Erfinv(2*float64(i)/normalCells-1)
	}
	return n
})

// draw is the n-th number of a source as a standard normal draw.
func (t *normals) draw(luck chance.Source, n int) float64 {
	bits := luck.Bits(n)
	cell := bits >> (64 - normalBits)
	if cell-exactCells >= normalCells-2*exactCells {
		return luck.Normal(n)
	}
	part := float64(bits<<normalBits>>11) * 0x1p-53
	return t[cell] + part*(t[cell+1]-t[cell])
}
