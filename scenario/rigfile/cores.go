package rigfile

import (
	"fmt"
	"math"
	"strings"
	"time"

	"coredays/model/riglog"
	"coredays/model/unit"
)

// cores reads a core table.
func (c *clerk) cores() (list []riglog.Core) {
	for i := range c.rows {
		c.row, c.wrong = c.rows[i], false
		core := riglog.Core{File: c.file, Row: c.row.Number, Leg: c.text("leg"), Type: strings.ToUpper(c.text("type"))}
		if program := c.text("program"); program != "" {
			core.Leg = program + " " + core.Leg
		}
		core.Site, core.Hole = c.siteHole()
		core.Number = c.coreNumber(&core)
		core.Top, core.Cored = unit.Depth(c.top()), unit.Length(c.number("cored", 0, mostCore))
		core.Recovered, core.Water = unit.Length(c.number("recovered", 0, mostCore)), unit.Length(c.number("water", 0, deepest))
		if at, why := c.moment("time_on_deck"); why == "" {
			core.OnDeck = at
		} else if c.text("time_on_deck") != "" {
			c.note(fmt.Sprintf("time_on_deck %q %s", c.text("time_on_deck"), why), "write a time such as 2027-03-18T03:00; the core counts without it")
		}
		if !c.wrong {
			list = append(list, core)
		}
	}
	c.holesInOrder(list)
	return list
}

// coreNumber is the number of a core, which may have its letter behind it.
func (c *clerk) coreNumber(core *riglog.Core) int {
	text := c.text("core")
	digits := strings.TrimRight(text, "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz")
	var n int
	if _, err := fmt.Sscanf(digits, "%d", &n); err != nil || n < 0 || n > 2000 || fmt.Sprint(n) != strings.TrimLeft(strings.TrimSuffix(digits, ".0"), "0") && n > 0 {
		c.lose(fmt.Sprintf("core %q is no number of a core", text), "write a number such as 12, or 12H")
		return 0
	}
	if core.Type == "" {
		core.Type = strings.ToUpper(text[len(digits):])
	}
	return n
}

// top is the depth of a core below the sea floor.
func (c *clerk) top() float64 {
	if _, floor := c.column["top_rig_floor"]; floor && c.text("top") == "" {
		return c.number("top_rig_floor", 0, deepest) // shifted with the whole hole
	}
	return c.number("top", -100, deepest)
}

// holesInOrder looks at each hole as a whole.
func (c *clerk) holesInOrder(list []riglog.Core) {
	type place struct{ leg, site, hole string }
	holes := map[place][]*riglog.Core{}
	var order []place
	for i := range list {
		p := place{list[i].Leg, list[i].Site, list[i].Hole}
		if holes[p] == nil {
			order = append(order, p)
		}
		holes[p] = append(holes[p], &list[i])
	}
	for _, p := range order {
		c.datum(holes[p])
		c.deckTimes(holes[p])
	}
}

// Bounds of what a hole's first depth tells, m.
const (
	nearWater = 60.0 // the rig floor is some 11 m above the sea, and a water depth may be off by tens of metres
	mudline   = 15.0 // a mudline put right by no more than a core and a half
)

// datum shifts a hole whose depths are those below the rig floor, or count from a mudline that was put right later.
func (c *clerk) datum(hole []*riglog.Core) {
	first := hole[0]
	top, water := float64(first.Top), float64(first.Water)
	if unknown(top) {
		return
	}
	c.row.Number = first.Row
	_, floor := c.column["top_rig_floor"]
	by := 0.0
	switch {
	case floor || !unknown(water) && water > 200 && top > water-nearWater:
		by = top
		if first.Number > 1 && !unknown(water) {
			by = water + 11 // rig floor above sea level on such ships, from memory
		}
		c.note(fmt.Sprintf("the depths of hole %s count from the rig floor: the first core begins at %g m in %g m of water", first.Hole, top, water),
			fmt.Sprintf("give depths below the sea floor; %g m are taken off", math.Round(by*10)/10))
	case first.Number == 1 && top < 0:
		by = top
		c.note(fmt.Sprintf("core 1 of hole %s begins %g m above the sea floor: the mudline was put right later", first.Hole, -top),
			"give all depths from the new mudline; all of the hole are shifted alike")
	}
	for _, core := range hole {
		core.Top -= unit.Depth(by)
	}
}

// alike is how many steps of exactly the same length, one after the other, are no longer taken for times that somebody
// wrote down when the cores came up. Times to five minutes give six alike where the bench sets the cycle, as on record
// (core records, doi:10.5281/zenodo.10498831, Leg 172), so it takes more [judgement].
const alike = 8

// deckTimes takes away times on deck that can't be relied on: twice the same, backwards, or filled in later at even steps.
func (c *clerk) deckTimes(hole []*riglog.Core) {
	var last *riglog.Core
	for _, core := range hole {
		if core.OnDeck.IsZero() {
			continue
		}
		if last != nil && !core.OnDeck.After(last.OnDeck) {
			c.row.Number = core.Row
			if core.OnDeck.Equal(last.OnDeck) {
				c.note(fmt.Sprintf("core %d of hole %s is on deck at the same time as core %d, on line %d", core.Number, core.Hole, last.Number, last.Row), "put one of them right; this one counts without its time")
			} else {
				c.note(fmt.Sprintf("core %d of hole %s is on deck before core %d, on line %d", core.Number, core.Hole, last.Number, last.Row), "put one of them right; this one counts without its time")
			}
			core.OnDeck = time.Time{}
			continue
		}
		last = core
	}
	c.backFilled(hole)
}

// backFilled finds runs of even steps.
func (c *clerk) backFilled(hole []*riglog.Core) {
	for i := 0; i < len(hole); {
		j := i + 1
		for j < len(hole) && steps(hole[j-1], hole[j]) > 0 && steps(hole[j-1], hole[j]) == steps(hole[i], hole[i+1]) {
			j++
		}
		if j-i > alike {
			c.row.Number = hole[i].Row
			c.note(fmt.Sprintf("cores %d to %d of hole %s came up every %.0f min: their times were filled in later", hole[i].Number, hole[j-1].Number, hole[i].Hole, steps(hole[i], hole[i+1]).Minutes()),
				"give the times of the log; these cores count without theirs")
			for _, core := range hole[i+1 : j] {
				core.OnDeck = time.Time{}
			}
		}
		i = max(j-1, i+1)
	}
}

// steps is the time between two cores on deck, 0 where it is not known.
func steps(a, b *riglog.Core) time.Duration {
	if a.OnDeck.IsZero() || b.OnDeck.IsZero() {
		return 0
	}
	return b.OnDeck.Sub(a.OnDeck)
}
