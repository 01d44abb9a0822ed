package scenario

import (
	"fmt"
	"math"
	"strings"
	"time"
	"unicode"
	"unicode/utf8"

	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/unit"
)

// What no planner means: bounds so wide that no real plan comes near them, so that a slip of a unit or of a key is
// told where it stands rather than after an hour of sailing. All are our judgement where nothing else is said.
const (
	mostSites     = 200 // an expedition visits a dozen
	mostItems     = 100 // at a site
	mostLayers    = 200 // of a site
	mostStages    = 20  // of a hole
	mostVia       = 100
	mostName      = 80  // letters of a name; tables and charts have room for some thirty
	mostText      = 600 // letters of a title or a source
	firstYear     = 1950
	lastYear      = 2150
	mostClosed    = 1.0 // times the time between closings that one lasts
	mostRepairing = 0.5 // of the time between breakdowns that a repair takes
)

// fewEnough refuses longer lists than anybody means.
func (c *clerk) fewEnough(path string, count, most int, what string) {
	if count > most {
		c.fault(path, fmt.Sprint(count), fmt.Sprintf("at most %d %s", most, what))
	}
}

// readable refuses names that are too long to be printed, and letters that are none: they move the cursor, turn the
// direction of writing or end a line.
func (c *clerk) readable(path, name string, most int) {
	if n := utf8.RuneCountInString(name); n > most {
		c.fault(path, short(name), fmt.Sprintf("at most %d letters, and these are %d", most, n))
	}
	if i := strings.IndexFunc(name, func(r rune) bool { return unicode.Is(unicode.C, r) }); i >= 0 {
		r, _ := utf8.DecodeRuneInString(name[i:])
		c.fault(path, "", fmt.Sprintf("a text of letters that can be printed, without U+%04X", r))
	}
}

// short is the beginning of a long name.
func short(name string) string {
	letters := []rune(name)
	if len(letters) <= mostName {
		return name
	}
	return string(letters[:20]) + "…"
}

// timed refuses dates of a site that lie outside of the expedition.
func (c *clerk) timed(p *plan.Plan, given []siteFile) {
	if p.Sails.IsZero() || p.SeaDays <= 0 {
		return
	}
	home := p.Sails.Add(time.Duration(float64(p.SeaDays) * float64(time.Second)))
	for i := range min(len(given), len(p.Sites)) {
		s := &p.Sites[i]
		if !s.NotAfter.IsZero() && !s.NotAfter.After(p.Sails) {
			c.fault(join(at("sites", i), "not_after"), given[i].NotAfter.value, "a date after sailing, "+p.Sails.Format("2006-01-02T15:04Z"))
		}
		if !s.NotBefore.IsZero() && !s.NotBefore.Before(home) {
			c.fault(join(at("sites", i), "not_before"), given[i].NotBefore.value, "a date before the sea days end, "+home.Format("2006-01-02T15:04Z"))
		}
	}
}

// repairable refuses a rig that is repaired as long as it works.
func (c *clerk) repairable(f expeditionFile, rates [rig.Rates]spread.Quantity) {
	every, repair := rates[rig.BreakdownEvery], rates[rig.RepairTime]
	if every.Shape == nil || repair.Shape == nil || len(c.faults) > 0 {
		return
	}
	if between, takes := every.Median(), repair.Median(); takes > mostRepairing*between {
		key := "breakdown_every"
		if _, stated := f.Rates[key]; !stated {
			key = "repair_time"
		}
		c.fault(join("rates", key), "", fmt.Sprintf("repairs of at most half the time between breakdowns: they take %s at the median, one every %s",
			unit.Duration(takes).Tell(), unit.Duration(between).Tell()))
	}
}

// closedTooLong refuses a site that is closed longer than it is open.
func (r siteReader) closedTooLong(path string, u plan.Unusable) {
	if u.Every.Shape == nil || u.Lasts.Shape == nil {
		return
	}
	if every, lasts := u.Every.Median(), u.Lasts.Median(); lasts > mostClosed*every {
		r.fault(join(path, "lasts"), u.Lasts.Text, "no longer than the time between two closings, "+unit.Duration(every).Tell()+
			"; a site that is closed most of the time is left out, or has not_before and not_after")
	}
}

// exactly writes a depth with all its figures, where a rounded one would contradict what is said of it.
func exactly(d unit.Depth) string {
	return fmt.Sprintf("%g mbsf", math.Round(float64(d)*1e6)/1e6)
}
