package main

import (
	"bytes"
	"compress/gzip"
	"encoding/binary"
	"encoding/csv"
	"fmt"
	"io"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"time"

	"coredays/model/geo"
	"coredays/model/places"
)

// table is an embedded file and how its bytes come from the folder of the tables.
type table struct {
	file string
	pack func(folder string) ([]byte, error)
}

var tables = []table{{"relief.gz", relief}, {"currents.gz", currents}, {"cyclones.gz", cyclones}, {"ice.gz", ice}}

// squeezed compresses without a time or a name, so that the same table gives the same bytes.
func squeezed(data []byte) ([]byte, error) {
	var b bytes.Buffer
	w, err := gzip.NewWriterLevel(&b, gzip.BestCompression)
	if err != nil {
		return nil, err
	}
	if _, err := w.Write(data); err != nil {
		return nil, err
	}
	err = w.Close() // before the bytes are taken
	return b.Bytes(), err
}

// opened reads a file whole, packed or not.
func opened(folder, name string) ([]byte, error) {
	f, err := os.Open(filepath.Join(folder, name))
	if err != nil {
		return nil, err
	}
	defer f.Close()
	if !strings.HasSuffix(name, ".gz") {
		return io.ReadAll(f)
	}
	r, err := gzip.NewReader(f)
	if err != nil {
		return nil, err
	}
	return io.ReadAll(r)
}

// relief has the form wanted already.
func relief(folder string) ([]byte, error) { return opened(folder, "bathy_0p5deg_minmeanmax.i16le.gz") }

// line is a row of a table by the names of its columns.
type line map[string]string

func (l line) number(column string) float64 {
	value, err := strconv.ParseFloat(l[column], 64)
	if err != nil {
		return math.NaN()
	}
	return value
}

// place is the centre of the line's cell.
func (l line) place() geo.Position {
	return geo.Position{Latitude: l.number("lat"), Longitude: l.number("lon")}
}

// cell is the number of the line's cell, whose centre must be that of a cell.
func (l line) cell(g places.Grid) (int, error) {
	p := l.place()
	if cell := g.Of(p); geo.Distance(g.Centre(cell), p) < 1 {
		return cell, nil
	}
	return 0, fmt.Errorf("%v is not the centre of a cell", p)
}

// lines visits the rows of a table.
func lines(folder, name string, visit func(line) error) error {
	text, err := opened(folder, name)
	if err != nil {
		return err
	}
	rows, err := csv.NewReader(bytes.NewReader(text)).ReadAll()
	if err != nil {
		return err
	}
	for _, row := range rows[1:] {
		l := line{}
		for i, title := range rows[0] {
			l[title] = row[i]
		}
		if err := visit(l); err != nil {
			return err
		}
	}
	return nil
}

// currents are planes of int16: mean by month, most by month, eastward, northward.
func currents(folder string) ([]byte, error) {
	g := places.CurrentGrid
	planes := make([]int16, 26*g.Cells())
	for i := range planes {
		planes[i] = places.NoCurrent
	}
	err := lines(folder, "currents_oscar_1deg_monthly_cm_s.csv.gz", func(l line) error {
		cell, err := l.cell(g)
		if err != nil {
			return err
		}
		for plane, column := range currentColumns() {
			if value := l.number(column); !math.IsNaN(value) {
				planes[plane*g.Cells()+cell] = int16(value)
			}
		}
		return nil
	})
	var b bytes.Buffer
	if err == nil {
		err = binary.Write(&b, binary.LittleEndian, planes)
	}
	return b.Bytes(), err
}

func currentColumns() (names []string) {
	for _, of := range []string{"mean", "max"} {
		for m := range 12 {
			names = append(names, fmt.Sprintf("%s%02d", of, m+1))
		}
	}
	return append(names, "u_ann", "v_ann")
}

// cyclones are the counts over all years that the table's means came from.
func cyclones(folder string) ([]byte, error) {
	g := places.CycloneGrid
	data := make([]byte, 12*4*g.Cells())
	return data, lines(folder, "cyclones_2p5deg_monthly.csv.gz", func(l line) error {
		cell, err := l.cell(g)
		if err != nil {
			return err
		}
		month := int(l.number("month"))
		days := places.CycloneYears * places.MonthDays(time.Month(month))
		for i, count := range []float64{places.CycloneYears * l.number("storms_34kt"), days * l.number("pday_34kt"),
			places.CycloneYears * l.number("storms_64kt"), days * l.number("pday_64kt")} {
			whole := math.Round(count)
			if math.Abs(count-whole) > 0.05 || whole > math.MaxUint8 {
				return fmt.Errorf("%v, month %d: %g is no count of %d years", l.place(), month, count, places.CycloneYears)
			}
			data[4*((month-1)*g.Cells()+cell)+i] = byte(whole)
		}
		return nil
	})
}

// ice is a byte a month and cell.
func ice(folder string) ([]byte, error) {
	g := places.IceGrid
	data := make([]byte, 12*g.Cells())
	return data, lines(folder, "sea_ice_2deg.csv", func(l line) error {
		cell, err := l.cell(g)
		if err != nil {
			return err
		}
		digits := l["ice_by_month"]
		if len(digits) != 12 || strings.Trim(digits, "012") != "" {
			return fmt.Errorf("%v: %q", l.place(), digits)
		}
		for m := range 12 {
			data[m*g.Cells()+cell] = digits[m] - '0'
		}
		return nil
	})
}
