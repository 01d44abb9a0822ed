package sea

import (
	_ "embed"
	"encoding/csv"
	"fmt"
	"math"
	"strconv"
	"strings"
	"sync"
)

// Source says where the built-in climate comes from.
const Source = "ESA Sea State CCI v1 altimeter heights 1992-2017 (Dodet et al. 2020, Earth System Science Data 12, 1929), " +
	"January-March and July-September read off a published 1-degree map; other months an annual cosine " +
	"with a NOAA COADS wind term; variation modelled"

// Monthly mean heights in metres on 5-degree cells named by their centres; see Source.
//
//go:embed climate_5deg.csv
var climateCSV string

const (
	cellSize   = 5.0   // degrees
	firstRow   = -72.5 // latitude of the southernmost centres
	firstCol   = -177.5
	atlasRows  = 30
	atlasCols  = 72
	unseenFrom = 60.0 // poleward of this an absent cell may be ice as well as land
)

// cell is one 5-degree cell; its zero value is a cell without water.
type cell struct {
	mean      [12]float64 // m
	variation float64     // standard deviation over mean
	water     float64     // share of the cell
	coastal   bool
	oneSeason bool // only the ice-free months are in the table, the others repeat their mean
}

type atlas [atlasRows][atlasCols]cell

// openAtlas reads the embedded table once; it never changes afterwards.
var openAtlas = sync.OnceValues(func() (*atlas, error) { return readAtlas(climateCSV) })

// readAtlas reads lines of lat, lon, m01..m12, cv, cell, ocean.
func readAtlas(text string) (*atlas, error) {
	lines, err := csv.NewReader(strings.NewReader(text)).ReadAll()
	if err != nil {
		return nil, fmt.Errorf("built-in climate: %w", err)
	}
	a := new(atlas)
	for i, line := range lines[1:] {
		if err := a.add(line); err != nil {
			return nil, fmt.Errorf("built-in climate, line %d: %w", i+2, err)
		}
	}
	return a, nil
}

func (a *atlas) add(line []string) error {
	if len(line) != 17 {
		return fmt.Errorf("%d fields, 17 wanted", len(line))
	}
	var numbers [16]float64 // as in the line, without the kind of cell
	for i, text := range append(append([]string{}, line[:15]...), line[16]) {
		if text == "" {
			continue // a month under ice
		}
		n, err := strconv.ParseFloat(text, 64)
		if err != nil {
			return err
		}
		numbers[i] = n
	}
	row, col := (numbers[0]-firstRow)/cellSize, (numbers[1]-firstCol)/cellSize
	c := a.at(int(row), int(col))
	if c == nil || row != math.Trunc(row) || col != math.Trunc(col) {
		return fmt.Errorf("%g, %g is not the centre of a cell", numbers[0], numbers[1])
	}
	*c = cell{variation: numbers[14], water: numbers[15], coastal: line[15] == "coastal"}
	copy(c.mean[:], numbers[2:14])
	return c.fillMonths()
}

// fillMonths gives the months that the table leaves out the mean of those that it has.
func (c *cell) fillMonths() error {
	sum, known := 0.0, 0
	for _, m := range c.mean {
		if m > 0 {
			sum, known = sum+m, known+1
		}
	}
	if known == 0 {
		return fmt.Errorf("no month has a height")
	}
	c.oneSeason = known < 12
	for i := range c.mean {
		if c.mean[i] == 0 {
			c.mean[i] = sum / float64(known)
		}
	}
	return nil
}

// at is the cell in a row from the south and a column from the date line, which wrap around the
// globe; nil beyond the first or last row.
func (a *atlas) at(row, col int) *cell {
	if row < 0 || row >= atlasRows {
		return nil
	}
	return &a[row][((col%atlasCols)+atlasCols)%atlasCols]
}

// holding is the cell that a place lies in.
func (a *atlas) holding(latitude, longitude float64) *cell {
	row := math.Floor((latitude-firstRow)/cellSize + 0.5)
	col := math.Floor((longitude-firstCol)/cellSize + 0.5)
	return a.at(int(row), int(col))
}
