package scenario

import (
	"fmt"
	"time"

	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/unit"
	"coredays/scenario/document"
	"coredays/scenario/entry"
)

// windows holds the dates of the sites against those of the expedition: where no work can ever be done the
// dates are wrong, or the sailing date is.
func (c *clerk) windows(f expeditionFile, p *plan.Plan) {
	if !entry.Plausible(p.Sails) || p.SeaDays <= 0 {
		return // said already
	}
	home := p.Sails.Add(time.Duration(float64(p.SeaDays) * float64(time.Second)))
	for i := range p.Sites {
		if c.out[i] {
			continue
		}
		s, given := &p.Sites[i], &f.Sites[i]
		if given.NotAfter.Given && entry.Plausible(s.NotAfter) && !s.NotAfter.After(p.Sails) {
			c.Fault(document.Join(document.At("sites", i), "not_after"), given.NotAfter.Value, "a date after the ship sails, "+p.Sails.Format(entry.DateForm)+": nothing could be begun here")
		}
		if given.NotBefore.Given && entry.Plausible(s.NotBefore) && !s.NotBefore.Before(home) {
			c.Fault(document.Join(document.At("sites", i), "not_before"), given.NotBefore.Value, "a date before the sea days end, "+home.Format(entry.DateForm)+": nothing could be begun here within them")
		}
	}
}

// leastOpen is the share of the time that a site must be open. Closed for longer it is one for another
// season, and a visit there hardly ends [judgement].
const leastOpen = 0.5

// openings refuses a site that is hardly ever open.
func (c *clerk) openings(path string, u plan.Unusable) {
	if u.Every.Shape == nil || u.Lasts.Shape == nil {
		return
	}
	every, lasts := mean(u.Every), mean(u.Lasts)
	if every/(every+lasts) < leastOpen {
		c.Fault(document.Join(path, "lasts"), u.Lasts.Text, fmt.Sprintf("no longer than every (%s), so that the site is open for half of the time; this is %s on average", u.Every.Text, apart(lasts, every*(1/leastOpen-1))))
	}
}

// mostBroken is the longest repair, as a share of the time between breakdowns [judgement].
const mostBroken = 0.5

// repairs refuses a ship that is under repair for more than a third of her time. The fault is that of the
// figure that is stated, of the repair where both are.
func (c *clerk) repairs(given map[string]document.Spread, rates [rig.Rates]spread.Quantity) {
	every, repair := rates[rig.BreakdownEvery], rates[rig.RepairTime]
	if every.Shape == nil || repair.Shape == nil {
		return
	}
	between, takes := mean(every), mean(repair)
	if takes <= mostBroken*between {
		return
	}
	if _, stated := given[rig.RepairTime.Of().Key]; stated {
		c.Fault(document.Join("rates", rig.RepairTime.Of().Key), repair.Text, fmt.Sprintf("on average at most half of breakdown_every (%s); this is %s on average: she would lie broken for more than a third of her time", every.Text, apart(takes, mostBroken*between)))
		return
	}
	c.Fault(document.Join("rates", rig.BreakdownEvery.Of().Key), every.Text, fmt.Sprintf("at least twice what repair_time is on average, %s: she would lie broken for more than a third of her time", apart(takes, mostBroken*between)))
}

// servicing refuses rig service that takes as long as the time between services.
func (c *clerk) servicing(given map[string]document.Spread, rates [rig.Rates]spread.Quantity) {
	every, takes := rates[rig.RigServiceEvery], rates[rig.RigService]
	if every.Shape == nil || takes.Shape == nil || mean(takes) < mean(every) {
		return
	}
	key, text, other := rig.RigServiceEvery, every.Text, "more than rig_service takes, "+takes.Text
	if _, stated := given[rig.RigService.Of().Key]; stated {
		key, text, other = rig.RigService, takes.Text, "less than rig_service_every, "+every.Text
	}
	c.Fault(document.Join("rates", key.Of().Key), text, other)
}

// apart writes a time so that it reads as other than the limit that it is held against.
func apart(value, limit float64) string {
	return unit.OfDuration.TellApart(value, limit, entry.HoursOrDays(value))
}

// mean is that of a spread, by its middle values of a thousand equal parts. It leaves out a tail of one
// draw in two thousand.
func mean(q spread.Quantity) float64 {
	const parts = 1000
	sum := 0.0
	for i := range parts {
		sum += q.Shape.Quantile((float64(i) + 0.5) / parts)
	}
	return sum / parts
}
