package scenario

import (
	"path/filepath"
	"slices"
	"strings"

	"coredays/model/plan"
	"coredays/model/unit"
)

// expedition turns the mirror of a file into a plan.
func (c *clerk) expedition(f expeditionFile) *plan.Plan {
	c.version(f.Version)
	ship := c.ship(f.Ship)
	p := &plan.Plan{
		Title:   c.title("title", f.Title, strings.TrimSuffix(filepath.Base(c.file), filepath.Ext(c.file))),
		File:    c.file,
		Sails:   c.date("sails", f.Sails),
		SeaDays: unit.Duration(c.number("sea_days", f.SeaDays, seaDaysMeasure)),
		From:    c.port("ports.from", f.Ports.From),
		To:      c.port("ports.to", f.Ports.To),
		InPort:  ship.inPort,
		Ship:    ship.Ship,
	}
	p.Ship.Rates = c.rates("rates", f.Rates, ship.Rates)
	statedPace(f.Rates, &p.Ship.Rates)
	c.repairs(f.Rates, p.Ship.Rates)
	c.servicing(f.Rates, p.Ship.Rates)
	p.Ship.Limits = c.limits("limits", f.Limits, ship.Limits)
	p.Ship.Storm = c.storm("storm", f.Storm, ship.Storm)
	p.Ship.Strings = slices.Clone(ship.Strings)
	c.tubulars(f.String, f.Endurance, f.LeastWaterDepth, &p.Ship)
	c.figure("position_keeping", f.PositionKeeping, keepingMeasure, &p.Ship.PositionKeeping)
	c.figure("most_current", f.MostCurrent, currentMeasure, &p.Ship.MostCurrent)
	if f.InPortBeforeSailing != nil {
		p.InPort = c.quantity("in_port_before_sailing", f.InPortBeforeSailing, inPortMeasure, ship.inPort)
	}
	if f.Trouble.given {
		p.NoTrouble = c.choice("trouble", f.Trouble, "on", "off") == 1
	}
	if p.NoTrouble {
		c.warn("trouble is off: no breakdowns, no stuck pipe, no lost cores or holes but those lost to the sea")
	}
	if len(few(c.reader, "sites", f.Sites, mostSites)) < len(f.Sites) || len(few(c.reader, "order", f.Order, mostSites)) < len(f.Order) {
		return p // so many are read no further
	}
	p.Sites = c.sites(f.Sites, ship)
	c.windows(f, p)
	p.Order = c.order(f, p.Sites)
	p.Before = c.precedences(f, p)
	if len(c.faults) == 0 {
		c.routes(p)
	}
	p.Warnings = c.warnings
	return p
}

func (c *clerk) port(path string, f portFile) plan.Port {
	return plan.Port{Name: c.name(join(path, "name"), f.Name), Position: c.position(join(path, "position"), f.Position)}
}
