package sitetable

import (
	"bytes"
	"fmt"
	"strconv"
	"strings"
	"time"

	"coredays/model/places"
	"coredays/model/unit"
)

// head is what the table does not tell.
const head = `# A scenario made of the sites of %s. What the table does not tell is invented or a
# default: look at each line marked SET. "coredays check" tells what is doubtful, "coredays basis" every number.
version: 1
title: Sites of %s
sails: 2027-06-01T08:00Z            # SET: UTC
sea_days: 56 d                      # SET: from leaving the first port to reaching the last
ports:                              # SET: the first and the last site stand in for the ports
  from: {name: First port, position: %s}
  to: {name: Last port, position: %s}
ship: riserless drillship           # the built-in ship, or the path of a ship file

sites:
`

// Scenario is the text of a commented scenario of the sites.
func Scenario(table string, sites []Site) []byte {
	var b bytes.Buffer
	name := strings.Join(strings.Fields(strconv.QuoteToASCII(table)), " ")
	fmt.Fprintf(&b, head, name, strings.ReplaceAll(strings.Trim(name, `"`), ":", " "), sites[0].Position, sites[len(sites)-1].Position)
	for _, s := range sites {
		s.write(&b)
	}
	return b.Bytes()
}

// write writes a site with what its place says.
func (s Site) write(b *bytes.Buffer) {
	fmt.Fprintf(b, "  - name: %s\n    position: %s\n", strconv.Quote(s.Name), s.Position)
	least, most := places.ReliefAt(s.Position).Depths()
	remark := fmt.Sprintf("its cell of the relief, widened: %.0f to %.0f m", float64(least), float64(most))
	if s.Filled {
		remark = "SET: not in the table, so the mean of its cell of the relief (ETOPO5, half a degree); " + remark
	}
	fmt.Fprintf(b, "    water_depth: %s   # %s\n", strconv.FormatFloat(float64(s.Depth), 'f', -1, 64)+" m", remark)
	if s.Alternate {
		b.WriteString("    priority: alternate\n")
	}
	for _, known := range s.known() {
		fmt.Fprintf(b, "    # %s\n", known)
	}
	if places.YearAt(s.Position).Open() {
		b.WriteString("    places: built in                # the site closes for cyclones, and for ice where it is the rule\n")
	} else {
		b.WriteString("    places: check only              # built in would close it for ice all the year\n")
	}
	b.WriteString("    # approved_to: 300 mbsf         # SET: the approved depth\n")
	target, set := s.Target, ""
	if target == 0 {
		target, set = noTarget, "   # SET: the table has no target"
	}
	to := strconv.FormatFloat(float64(target), 'f', -1, 64) + " mbsf"
	fmt.Fprintf(b, "    layers: [{bottom: %s, lithology: nannofossil ooze}]   # SET: assumed\n", to)
	fmt.Fprintf(b, "    holes: [{name: A, core: [{with: APC, to: refusal}, {with: XCB, to: %s}]}]%s\n    weather: {climate: built in}\n", to, set)
}

// noTarget is how deep a hole is planned where the table does not tell: as deep as a piston corer gets, judgement.
const noTarget unit.Depth = 200

// known is what the position says, a line each.
func (s Site) known() (lines []string) {
	year := places.YearAt(s.Position)
	var storms, ice []string
	for m := time.January; m <= time.December; m++ {
		if share := year.Cyclones[m-1].Days; share >= 0.01 {
			storms = append(storms, fmt.Sprintf("%s %.0f %%", m.String()[:3], 100*share))
		}
		if year.Ice[m-1] == places.IceAsARule {
			ice = append(ice, m.String()[:3])
		}
	}
	if len(storms) > 0 {
		lines = append(lines, "days with a cyclone within 300 km: "+strings.Join(storms, ", ")+" (best tracks 1980-2019, cells of 2.5 degrees)")
	}
	if len(ice) > 0 {
		lines = append(lines, "sea ice as a rule: "+strings.Join(ice, ", ")+" (coarse: ask an ice chart)")
	}
	return lines
}
