package sea

import (
	"math"
	"slices"
	"strconv"
	"strings"
)

// reading reads one row; trouble is Troubles where there is none. A decimal comma is read where
// commas do not divide the columns.
func (c *columns) reading(fields []string, comma bool) (r reading, trouble Trouble) {
	if trouble := c.shape(fields); trouble != Troubles {
		return r, trouble
	}
	at, ok := c.moment(fields)
	if !ok {
		return r, BadTime
	}
	r.at = at
	height, trouble := quantity(field(fields, c.height), comma)
	height *= c.metres
	switch r.height = height; {
	case trouble != Troubles:
		return r, trouble
	case height < 0 || height > highestSea:
		return r, Impossible
	}
	if p, t := quantity(field(fields, c.peak), comma); t == Troubles {
		r.period = p
	} else if p, t := quantity(field(fields, c.crossed), comma); t == Troubles {
		r.period = 1.4 * p // Tp = 1.4 Tz of a fully developed sea [from memory]
	}
	return r, Troubles
}

// shape looks whether the cells of a row can be those of the headings.
func (c *columns) shape(fields []string) Trouble {
	for i, cell := range fields {
		if strings.ContainsRune(cell, '\n') {
			return Torn
		}
		if i >= c.count && strings.TrimSpace(cell) != "" {
			return Overfull
		}
	}
	return Troubles
}

// highestSea is above any significant height measured: 19.0 m is the highest by a buoy (World
// Meteorological Organization 2016) [from memory].
const highestSea = 25.0

func field(fields []string, i int) string {
	if i < 0 || i >= len(fields) {
		return ""
	}
	return strings.TrimSpace(fields[i])
}

var (
	fillWords = []string{"", "-", "--", "mm", "na", "n/a", "nan", "null", "none", "missing"}
	fillCodes = []float64{99, 999, 9999, 99999, 99.9, 99.99, 999.9, 999.99, 9999.9, 32767, -9, -9.9, -9.99, -99, -99.9, -99.99, -999, -999.9, -999.99, -9999, -32767, -32768, -99999}
)

// quantity reads a number and says fill codes from it.
func quantity(text string, comma bool) (float64, Trouble) {
	if slices.Contains(fillWords, strings.ToLower(text)) {
		return 0, FillCode
	}
	if comma {
		text = strings.Replace(text, ",", ".", 1)
	}
	x, err := strconv.ParseFloat(text, 64)
	switch {
	case err != nil && !math.IsInf(x, 0):
		return 0, BadNumber
	case slices.Contains(fillCodes, x) || math.Abs(x) > 1e15: // 1e20 and the like
		return 0, FillCode
	}
	return x, Troubles
}

// likeQuantity says what a cell looks like in which a number was looked for and not found. It repeats
// nothing of the cell.
func likeQuantity(cell string) string {
	end := strings.TrimLeft(cell, "0123456789.-+")
	switch {
	case end == cell:
		return "words"
	case strings.HasPrefix(end, ","):
		return "a number with a comma, where commas divide the columns"
	}
	return "a number with something after it"
}
