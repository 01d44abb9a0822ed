package text

import (
	"cmp"
	"fmt"
	"slices"
	"time"

	"coredays/model/activity"
	"coredays/model/result"
	"coredays/model/unit"
	"coredays/output/words"
)

// whyLong prints where the days of one expedition went, against the even expedition where all were sailed, and what
// held it up longest.
func (p *Printer) whyLong(d *result.Diary) error {
	p.Heading("Where the days went")
	p.WriteByte('\n')
	cols := []Column{WordColumn("class of time", 24), NumberColumn("days (d)")}
	if d.Usual != nil {
		cols = append(cols, NumberColumn("P50 of all (d)"), NumberColumn("more (d)"))
	}
	took := timeByClass(d)
	order := activityClasses()
	slices.SortStableFunc(order, func(a, b activity.Class) int { return cmp.Compare(took[b], took[a]) })
	var rows [][]string
	total := 0.0
	for _, c := range order {
		total += took[c]
		rows = append(rows, classAgainst(c.String(), took[c], d, func(n *result.Needed) result.Spread { return n.ByClass[c] }))
	}
	rows = append(rows, classAgainst("all", total, d, func(n *result.Needed) result.Spread { return n.Total }))
	if err := p.Table(cols, rows); err != nil {
		return err
	}
	if d.Usual != nil {
		p.Say("P50 of each class by itself: they do not add up to that of all.")
	}
	return p.heldUp(d)
}

func activityClasses() (all []activity.Class) {
	for c := range activity.Classes {
		all = append(all, c)
	}
	return all
}

// timeByClass adds up the entries, d.
func timeByClass(d *result.Diary) (days [activity.Classes]float64) {
	for i := range d.Entries {
		e := &d.Entries[i]
		days[e.Kind.Of().Class] += unit.Duration(e.To.Sub(e.From).Seconds()).Days()
	}
	return days
}

func classAgainst(name string, days float64, d *result.Diary, usual func(*result.Needed) result.Spread) []string {
	row := []string{name, words.Fixed(days, 1)}
	if d.Usual != nil {
		even := words.InDays(usual(d.Usual)).P50
		row = append(row, words.Fixed(even, 1), words.SignedFixed(days-even, 1))
	}
	return row
}

// mostHeldUp is how many waits and troubles are told.
const mostHeldUp = 10

// heldUp prints the longest waits and troubles.
func (p *Printer) heldUp(d *result.Diary) error {
	var list []*result.Entry
	for i := range d.Entries {
		if class := d.Entries[i].Kind.Of().Class; class == activity.Waiting || class == activity.Repair {
			list = append(list, &d.Entries[i])
		}
	}
	if len(list) == 0 {
		return nil
	}
	slices.SortStableFunc(list, func(a, b *result.Entry) int { return cmp.Compare(b.To.Sub(b.From), a.To.Sub(a.From)) })
	p.Heading("The longest waits and troubles, of %d", len(list))
	p.WriteByte('\n')
	var rows [][]string
	for _, e := range list[:min(len(list), mostHeldUp)] {
		row := diaryRow(e)
		rows = append(rows, []string{row[0], row[1], row[2], row[3], row[5], row[6]})
	}
	return p.Table([]Column{WordColumn("from (UTC)", 12), NumberColumn("hours"), WordColumn("what", whatWidth), WordColumn("where", placeWidth), NumberColumn("Hs (m)"), WordColumn("note", noteWidth)}, rows)
}

// dayOf is what a ship did on one day, h by class of time.
type dayOf struct {
	begins time.Time
	hours  [activity.Classes]float64
	where  string
	most   time.Duration // spent there
	cores  int
	depth  unit.Depth // of the bit or core at the last entry with one
	known  bool
}

// byDay cuts a diary at midnight, UTC.
func byDay(d *result.Diary) (days []*dayOf) {
	at := map[string]time.Duration{}
	for i := range d.Entries {
		e := &d.Entries[i]
		for from := e.From.UTC(); from.Before(e.To) || from.Equal(e.From.UTC()) && e.From.Equal(e.To); {
			midnight := from.Truncate(24 * time.Hour)
			if len(days) == 0 || !days[len(days)-1].begins.Equal(midnight) {
				days = append(days, &dayOf{begins: midnight})
				clear(at)
			}
			day, until := days[len(days)-1], midnight.Add(24*time.Hour)
			if e.To.Before(until) {
				until = e.To.UTC()
			}
			day.hours[e.Kind.Of().Class] += until.Sub(from).Hours()
			place := e.Place.String()
			if at[place] += until.Sub(from); at[place] >= day.most {
				day.where, day.most = place, at[place]
			}
			if HasDepth(e) {
				day.depth, day.known = e.Depth, true
			}
			if from.Equal(e.From.UTC()) && bringsCore(e) {
				day.cores++
			}
			if !until.After(from) {
				break
			}
			from = until
		}
	}
	return days
}

// bringsCore reports whether a barrel is emptied: each is told with what was cut.
func bringsCore(e *result.Entry) bool {
	return (e.Kind == activity.HandleCorer || e.Kind == activity.HandleBarrel) && e.Note != ""
}

// days prints a diary day by day.
func (p *Printer) days(d *result.Diary) error {
	p.Heading("Day by day: hours of sailing, port, rig-up and trips, coring, measuring, waiting, repair and other (UTC days)")
	p.WriteByte('\n')
	cols := []Column{WordColumn("day", 6), WordColumn("mostly at", placeWidth+6)}
	heads := [activity.Classes]string{"sail", "port", "trips", "coring", "meas.", "wait", "repair", "other"}
	for c := range activity.Classes {
		cols = append(cols, NumberColumn(heads[c]))
	}
	cols = append(cols, NumberColumn("cores"), NumberColumn("bit\n(mbsf)"))
	var rows [][]string
	for _, day := range byDay(d) {
		row := []string{day.begins.Format("02 Jan"), day.where}
		for _, h := range day.hours {
			row = append(row, words.OrLess(words.Fixed(h, 1), h > 0))
		}
		cores, depth := "", ""
		if day.cores > 0 {
			cores = fmt.Sprint(day.cores)
		}
		if day.known {
			depth = words.SignedFixed(float64(day.depth), 0)
		}
		rows = append(rows, append(row, cores, depth))
	}
	if err := p.Table(cols, rows); err != nil {
		return err
	}
	p.Say("Bit: the last depth of bit or core on that day, negative above the sea floor.")
	return nil
}
