package scenario

import (
	"path/filepath"
	"slices"
	"strings"

	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/scenario/document"
	"coredays/scenario/entry"
)

// expedition turns the mirror of a file into a plan.
func (c *clerk) expedition(f expeditionFile) *plan.Plan {
	c.Version(f.Version)
	ship := c.ship(f.Ship)
	p := &plan.Plan{
		Title:   c.Title("title", f.Title, strings.TrimSuffix(filepath.Base(c.File), filepath.Ext(c.File))),
		File:    c.File,
		Sails:   c.Date("sails", f.Sails),
		SeaDays: unit.Duration(c.Number("sea_days", f.SeaDays, entry.SeaDaysMeasure)),
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
	c.figure("position_keeping", f.PositionKeeping, entry.KeepingMeasure, &p.Ship.PositionKeeping)
	c.figure("most_current", f.MostCurrent, entry.CurrentMeasure, &p.Ship.MostCurrent)
	if f.InPortBeforeSailing != nil {
		p.InPort = c.Quantity("in_port_before_sailing", f.InPortBeforeSailing, entry.InPortMeasure, ship.inPort)
	}
	if f.Trouble.Given {
		p.NoTrouble = c.Choice("trouble", f.Trouble, "on", "off") == 1
	}
	if p.NoTrouble {
		c.Warn("trouble is off: no breakdowns, no stuck pipe, no lost cores or holes but those lost to the sea")
	}
	if len(entry.Few(c.Reader, "sites", f.Sites, entry.MostSites)) < len(f.Sites) || len(entry.Few(c.Reader, "order", f.Order, entry.MostSites)) < len(f.Order) {
		return p // so many are read no further
	}
	for i, stop := range entry.Few(c.Reader, "stops", f.Stops, entry.MostClosings) {
		c.anywhere = append(c.anywhere, c.closing(document.At("stops", i), stop))
	}
	p.Sites = c.sites(f.Sites, ship)
	c.windows(f, p)
	p.Order = c.order(f, p.Sites)
	p.Before = c.precedences(f, p)
	c.leaveOut(p)
	if len(c.Faults) == 0 {
		c.needed(p.Sites)
		c.routes(p)
	}
	p.Warnings = c.Warnings
	return p
}

func (c *clerk) port(path string, f portFile) plan.Port {
	port := plan.Port{Name: c.Name(document.Join(path, "name"), f.Name), Position: c.Position(document.Join(path, "position"), f.Position)}
	at := document.Join(path, "via")
	if f.Via != nil && path == "ports.from" {
		c.Fault(at, "", "nothing here: the way out has the waypoints of the first site")
	}
	for i, via := range entry.Few(c.Reader, at, f.Via, entry.MostWaypoints) {
		port.Via = append(port.Via, c.Position(document.At(at, i), via))
	}
	return port
}
