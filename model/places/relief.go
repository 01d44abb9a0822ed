package places

import (
	_ "embed"
	"encoding/binary"
	"sync"

	"coredays/model/geo"
	"coredays/model/unit"
)

// ReliefSource says where depths and land come from, and how coarse they are.
const ReliefSource = "ETOPO5 relief of 5 arc-minutes (NOAA/NGDC 1988, Data Announcement 88-MGG-02) in cells of half a degree; errors of 300 m and more are usual"

// Three planes of elevations in metres, int16 little endian: least, mean and greatest of each cell.
//
//go:embed relief.gz
var reliefPacked []byte

var reliefTable = sync.OnceValue(func() []int16 {
	const planes = 3
	data := must(unpacked("relief", reliefPacked, planes*2*ReliefGrid.Cells()))
	heights := make([]int16, len(data)/2)
	for i := range heights {
		heights[i] = int16(binary.LittleEndian.Uint16(data[2*i:]))
	}
	return heights
})

// Relief is the height of the ground in a cell, above sea level.
type Relief struct{ Lowest, Mean, Highest unit.Length }

// ReliefAt is that of the cell which holds a place.
func ReliefAt(p geo.Position) Relief {
	heights, cell, n := reliefTable(), ReliefGrid.Of(p), ReliefGrid.Cells()
	return Relief{unit.Length(heights[cell]), unit.Length(heights[n+cell]), unit.Length(heights[2*n+cell])}
}

// How far a depth may be outside the range of its cell before anything is said: a fifth of it or 600 m,
// whichever is more. The relief is that old: of six drilled sites three lie outside their cell, by up to
// 310 m.
const (
	doubtShare             = 0.2
	doubtLeast unit.Length = 600
)

// Depths is the widened range of the depth of water in the cell; both are 0 where all of it is land higher
// than the doubt.
func (r Relief) Depths() (least, most unit.Length) {
	shallow, deep := -r.Highest, -r.Lowest
	least = shallow - max(doubtLeast, doubtShare*shallow)
	most = deep + max(doubtLeast, doubtShare*deep)
	return max(0, least), max(0, most)
}

// Dry says that all of the cell is land.
func (r Relief) Dry() bool { return r.Lowest >= 0 }

// MostlyLand says that the mean height of the cell is above the sea: a coast, or land.
func (r Relief) MostlyLand() bool { return r.Mean >= 0 }
