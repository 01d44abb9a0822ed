package places

import (
	_ "embed"
	"sync"
	"time"

	"coredays/model/geo"
)

// IceSource says where sea ice comes from, and how coarse it is.
const IceSource = "a boundary climatology of atmosphere models (AMIP kind) in cells of 2 degrees, fitted to mean monthly extents of 1981-2010 (from memory); too small in the Barents Sea, too large in bays: a caution, never a clearance"

// Twelve planes of an Ice each, one byte a cell.
//
//go:embed ice.gz
var icePacked []byte

var iceTable = sync.OnceValue(func() []byte { return must(unpacked("ice", icePacked, 12*IceGrid.Cells())) })

// Ice is how much sea ice a month has.
type Ice byte

// The kinds, in the order of their weight.
const (
	NoIce      Ice = iota
	IceAtEdge      // at the edge of it, or in some years
	IceAsARule     // closed to a ship that is no icebreaker
)

// IceAt is the ice of the cell which holds a place.
func IceAt(p geo.Position, month time.Month) Ice {
	return Ice(iceTable()[(int(month)-1)*IceGrid.Cells()+IceGrid.Of(p)])
}
