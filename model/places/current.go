package places

import (
	_ "embed"
	"encoding/binary"
	"math"
	"sync"
	"time"

	"coredays/model/geo"
	"coredays/model/unit"
)

// CurrentSource says where currents come from, and how coarse they are.
const CurrentSource = "OSCAR monthly mean surface current 1992-2012 (ESR 2009, doi:10.5067/OSCAR-03D01) in cells of 1 degree; eddies and tides run well above a monthly mean"

// Twelve planes of the mean speed, twelve of the greatest monthly mean within the cell, the eastward and the
// northward part over the year: int16 little endian, cm/s; NoCurrent where nothing is known.
//
//go:embed currents.gz
var currentsPacked []byte

// NoCurrent marks a cell without a figure.
const NoCurrent = math.MinInt16

var currentTable = sync.OnceValue(func() []int16 {
	const planes = 12 + 12 + 2
	data := must(unpacked("currents", currentsPacked, planes*2*CurrentGrid.Cells()))
	speeds := make([]int16, len(data)/2)
	for i := range speeds {
		speeds[i] = int16(binary.LittleEndian.Uint16(data[2*i:]))
	}
	return speeds
})

// Current is the surface current of a cell in a month.
type Current struct {
	Mean    unit.Speed // of the monthly means within the cell; 0 means weak
	Most    unit.Speed // the greatest of them
	Towards float64    // degrees from north, clockwise, over the year; NaN where it has no direction
}

// CurrentAt is that of the cell which holds a place. It is not known on land, near some coasts, and poleward
// of some 75 degrees.
func CurrentAt(p geo.Position, month time.Month) (c Current, known bool) {
	speeds, cell, n := currentTable(), CurrentGrid.Of(p), CurrentGrid.Cells()
	of := func(plane int) int16 { return speeds[plane*n+cell] }
	m := int(month) - 1
	if of(m) == NoCurrent {
		return Current{}, false
	}
	c = Current{Mean: unit.Speed(of(m)) / 100, Most: unit.Speed(of(12+m)) / 100, Towards: math.NaN()}
	east, north := of(24), of(25)
	if east != NoCurrent && north != NoCurrent && (east != 0 || north != 0) {
		c.Towards = math.Mod(math.Atan2(float64(east), float64(north))*180/math.Pi+360, 360)
	}
	return c, true
}
