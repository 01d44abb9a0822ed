package rigfile

import (
	"fmt"
	"math"
	"slices"
	"time"

	"coredays/model/riglog"
)

// Reading says how files are read.
type Reading struct {
	Words *Words         // nil for the program's own
	Zone  *time.Location // of local times; nil where none is stated, so that local times are left out
}

// Read reads one file into what was read before. What is wrong with single rows is noted in the papers; the error is
// that of a file of which nothing can be read.
func (r *Reading) Read(p *riglog.Papers, name string, data []byte) error {
	s, err := sheetOf(name, data)
	if err != nil {
		return err
	}
	t, err := tabled(s)
	if err != nil {
		return err
	}
	if len(t.rows) == 0 {
		return fmt.Errorf("%s: there is no row below the heading of the %v", name, t.kind)
	}
	c := &clerk{table: t, notes: &p.Notes, zone: time.UTC}
	if err := r.zoneOf(c); err != nil {
		return err
	}
	p.Files = append(p.Files, name)
	switch t.kind {
	case operations:
		c.unread()
		words := r.Words
		if words == nil {
			words = Own()
		}
		p.Lines = append(p.Lines, c.operations(words)...)
		slices.SortStableFunc(p.Lines, func(a, b riglog.Line) int { return a.From.Compare(b.From) })
	case cores:
		p.Cores = append(p.Cores, c.cores()...)
	case recording:
		if rec, any := c.recording(); any {
			p.Recordings = append(p.Recordings, rec)
		}
	}
	return nil
}

// zoneOf is the zone of a table's times.
func (r *Reading) zoneOf(c *clerk) error {
	for _, name := range []string{"from", "to", "time", "time_on_deck"} {
		if col, has := c.column[name]; has && col.local {
			if r.Zone == nil {
				return fmt.Errorf("%s: the times of column %q are local: say the ship's zone, such as --zone +10:00", c.file, col.title)
			}
			c.zone = r.Zone
		}
	}
	return nil
}

// Bounds of what can stand in a file, m and h.
const (
	deepest     = 12000.0 // the deepest sea floor is at about 10.9 km [from memory]
	longestLine = 45 * 24.0
	mostStands  = 1000.0
	mostCore    = 40.0 // beyond any barrel, from memory
)

// siteHole are the names of site and hole, the hole without the site's number before its letter.
func (c *clerk) siteHole() (site, hole string) {
	site, hole = c.text("site"), c.text("hole")
	if rest, renamed := cutPrefixFold(hole, site); renamed && site != "" && rest != "" {
		c.note(fmt.Sprintf("hole %q is named with its site", hole), fmt.Sprintf("it is read as hole %s of site %s", rest, site))
		hole = rest
	}
	return site, hole
}

func cutPrefixFold(text, prefix string) (string, bool) {
	if len(text) <= len(prefix) || folded(text[:len(prefix)]) != folded(prefix) {
		return text, false
	}
	return trimmed(text[len(prefix):]), true
}

func trimmed(text string) string {
	for len(text) > 0 && (text[0] == '-' || text[0] == ' ' || text[0] == '_') {
		text = text[1:]
	}
	return text
}

// unknown is whether a number is not stated.
func unknown(x float64) bool { return math.IsNaN(x) }
