package places

import (
	"bytes"
	"compress/gzip"
	"fmt"
	"io"
	"math"

	"coredays/model/geo"
)

// A Grid is a division of the globe into cells of so many degrees, in rows from the south and columns from
// the date line.
type Grid struct{ Degrees float64 }

// The grids of the tables.
var (
	ReliefGrid  = Grid{0.5}
	CurrentGrid = Grid{1}
	CycloneGrid = Grid{2.5}
	IceGrid     = Grid{2}
)

// Rows is the count of rows from pole to pole.
func (g Grid) Rows() int { return int(math.Round(180 / g.Degrees)) }

// Columns is the count of columns around the globe.
func (g Grid) Columns() int { return 2 * g.Rows() }

// Cells is the count of cells of the globe.
func (g Grid) Cells() int { return g.Rows() * g.Columns() }

// Of is the number of the cell that holds a place. The poles belong to the last rows, the date line to the
// cells east of it; longitudes go round.
func (g Grid) Of(p geo.Position) int {
	row := int(math.Floor((p.Latitude + 90) / g.Degrees))
	column := int(math.Floor((p.Longitude + 180) / g.Degrees))
	n := g.Columns()
	return min(max(row, 0), g.Rows()-1)*n + (column%n+n)%n
}

// Centre is the middle of a cell.
func (g Grid) Centre(cell int) geo.Position {
	row, column := cell/g.Columns(), cell%g.Columns()
	return geo.Position{Latitude: (float64(row)+0.5)*g.Degrees - 90, Longitude: (float64(column)+0.5)*g.Degrees - 180}
}

// unpacked reads a whole embedded file of a known size.
func unpacked(name string, packed []byte, size int) ([]byte, error) {
	r, err := gzip.NewReader(bytes.NewReader(packed))
	if err != nil {
		return nil, fmt.Errorf("built-in %s: %w", name, err)
	}
	data, err := io.ReadAll(r)
	if err != nil {
		return nil, fmt.Errorf("built-in %s: %w", name, err)
	}
	if len(data) != size {
		return nil, fmt.Errorf("built-in %s: %d bytes, %d wanted", name, len(data), size)
	}
	return data, nil
}

// must is what an embedded file holds; a broken one is a slip of the build, which any test meets.
func must(data []byte, err error) []byte {
	if err != nil {
		panic(err)
	}
	return data
}
