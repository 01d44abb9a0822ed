package rigfile

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"coredays/model/riglog"
	"coredays/scenario/spreadsheet"
)

// loads are the units of a hook load, in newtons.
var loads = map[string]float64{"n": 1, "kn": 1e3, "kdan": 1e4, "t": 9806.65, "klbf": 4448.2216152605, "klb": 4448.2216152605, "klbs": 4448.2216152605, "kips": 4448.2216152605}

// mostLost is how many rows of a recording are noted one by one.
const mostLost = 20

// recording reads the rig's channels. Rows in which one cannot be read are lost samples.
func (c *clerk) recording() (r riglog.Recording, any bool) {
	r.File = c.file
	c.row = spreadsheet.Row{Number: 1}
	unit, known := loads[c.column["hook_load"].unit]
	if !known {
		c.lose("the heading of the hook load states no unit that is known", "name the column hook_load_klbf, hook_load_t or hook_load_kN")
		return r, false
	}
	if u := c.column["block"].unit; u != "m" && u != "ft" {
		c.lose("the heading of the block height states no unit", "name the column block_m")
		return r, false
	}
	_, bits := c.column["bit"]
	_, wires := c.column["wire"]
	lost := 0
	for i := range c.rows {
		c.row = c.rows[i]
		at, ok := c.instant(&r)
		block, blockOK := c.sample("block")
		hook, hookOK := c.sample("hook_load")
		n := len(r.Time)
		if !ok || !blockOK || !hookOK || n > 0 && at <= r.Time[n-1] {
			if lost++; lost <= mostLost && c.text("block") != "" && c.text("hook_load") != "" {
				c.lose("the sample can't be read, or is no later than the one before", "leave it out, or put it right")
			}
			continue
		}
		r.Time, r.Block, r.Hook = append(r.Time, at), append(r.Block, block), append(r.Hook, hook*unit)
		if bits {
			bit, _ := c.sample("bit")
			r.Bit = append(r.Bit, bit)
		}
		if wires {
			wire, _ := c.sample("wire")
			r.Wire = append(r.Wire, wire)
		}
	}
	c.row.Number = 0
	if lost > 0 {
		c.note(fmt.Sprintf("%d of %d samples are missing or can't be read", lost, len(c.rows)), "none needed where they are few")
	}
	if len(r.Time) < 2 {
		c.lose("there are not two samples", "give a recording")
		return r, false
	}
	return r, true
}

// instant is the time of a row, s after the first.
func (c *clerk) instant(r *riglog.Recording) (float64, bool) {
	text := c.text("time")
	if x, err := strconv.ParseFloat(text, 64); err == nil && !math.IsInf(x, 0) && !math.IsNaN(x) {
		return x, true
	}
	at, why := c.moment("time")
	if why != "" {
		return 0, false
	}
	if r.Start.IsZero() {
		r.Start = at
	}
	return at.Sub(r.Start).Seconds(), true
}

// sample is a number without a note: thousands of rows would have one.
func (c *clerk) sample(name string) (float64, bool) {
	text := c.text(name)
	if !c.CommaDivides {
		text = strings.Replace(text, ",", ".", 1)
	}
	x, err := strconv.ParseFloat(text, 64)
	if err != nil || math.IsNaN(x) || math.Abs(x) > 1e6 {
		return math.NaN(), false
	}
	if c.column[name].unit == "ft" {
		x *= 0.3048 // exact, international foot of 1959
	}
	return x, true
}
