// Package crewrates prints what a log shows of rates for a terminal.
package crewrates

import (
	"fmt"
	"io"
	"math"
	"strings"

	"coredays/model/coring"
	"coredays/model/rates"
	"coredays/model/riglog"
	"coredays/model/spread"
	"coredays/output/text"
	"coredays/output/words"
)

// printer prints what a log shows of rates.
type printer struct{ *text.Printer }

// Effect is what learned rates do to a plan.
type Effect struct {
	Title                  string
	Replications           int
	ShipP50, ShipP90       float64 // days needed with the ship's rates
	LearnedP50, LearnedP90 float64 // and with those learned
}

// mostNotes is how many notes on files are printed; JSON has all.
const mostNotes = 25

// Print prints the driller's page: what the papers say of each rate beside the ship's figures, and where the hours went.
func Print(w io.Writer, r *rates.Result, notes []riglog.Note, effect *Effect) error {
	p := &printer{text.On(w)}
	p.Paragraph("", text.Indent, fmt.Sprintf("Rates from %s", strings.Join(fileNames(r), ", ")))
	p.Paragraph("", text.Indent, ratesSpan(r))
	if err := p.ratesTable(r); err != nil {
		return err
	}
	p.ratesMoved(r)
	if err := p.ratesCycles(r); err != nil {
		return err
	}
	if err := p.ratesEvents(r); err != nil {
		return err
	}
	if effect != nil {
		p.Heading("What it does to %s", words.OrElse(effect.Title, "the plan"))
		p.Paragraph(text.Indent, text.Indent, fmt.Sprintf("Days needed, P50 and P90: %s and %s with the ship's rates, %s and %s with these; %s and %s days (%d replications, the same random streams).",
			words.Fixed(effect.ShipP50, 1), words.Fixed(effect.ShipP90, 1), words.Fixed(effect.LearnedP50, 1), words.Fixed(effect.LearnedP90, 1),
			words.SignedFixed(effect.LearnedP50-effect.ShipP50, 1), words.SignedFixed(effect.LearnedP90-effect.ShipP90, 1), effect.Replications))
	}
	if err := p.dayBalance(r); err != nil {
		return err
	}
	if err := p.unmapped(r); err != nil {
		return err
	}
	p.ratesNotes(r, notes)
	p.Heading("To paste, or to write with --yaml FILE")
	p.WriteString(YAML(r))
	return p.To(w)
}

func ratesSpan(r *rates.Result) string {
	text := fmt.Sprintf("%d cores", r.Cores)
	if r.Total > 0 {
		text = fmt.Sprintf("%s h of log, of which %s h say something of a rate; %s", words.Fixed(r.Total, 1), words.Fixed(r.Used, 1), text)
	}
	if !r.From.IsZero() {
		text += fmt.Sprintf("; %s to %s", words.Date(r.From), words.Date(r.To))
	}
	return text + ". Values are P10, P50 and P90."
}

// Triple writes P10, P50 and P90 in the unit of a rate, as one number where they are equal.
func Triple(x *rates.Rate, t rates.Triple) string {
	if math.IsNaN(t[1]) {
		return words.Absent
	}
	low, mid, high := x.Of.InUnit(t[0]), x.Of.InUnit(t[1]), x.Of.InUnit(t[2])
	if low == high {
		return words.Figures(mid)
	}
	return words.Figures(low) + " / " + words.Figures(mid) + " / " + words.Figures(high)
}

// Count is how much was observed of a rate: how often, and how many stands.
func Count(x *rates.Rate) string {
	if x.Unit == "stands" {
		return fmt.Sprintf("%d (%.0f stands)", x.N, x.Exposure)
	}
	return fmt.Sprint(x.N)
}

// ToUse is the spread to use of a rate.
func ToUse(x *rates.Rate) string {
	if !x.Identified {
		return "the ship's"
	}
	return Triple(x, x.Use)
}

// mostlyBy is the level at which most of a rate's spread lives; the rates to paste have all levels.
func mostlyBy(s spread.Shares) string {
	most := spread.Expedition
	for l, share := range s {
		if share > s[most] {
			most = spread.Level(l)
		}
	}
	return most.String()
}

func (p *printer) ratesTable(r *rates.Result) error {
	p.Heading("Rates")
	var rows [][]string
	for i := range r.Rates {
		x := &r.Rates[i]
		rows = append(rows, []string{x.Of.Of().Key, x.Of.Of().Unit, Count(x), Triple(x, x.Log), Triple(x, x.Ship), ToUse(x), mostlyBy(x.Shares)})
	}
	if len(rows) == 0 {
		p.Say("Nothing in the files says anything of a rate.")
		return nil
	}
	return p.Table([]text.Column{text.WordColumn("rate", 24), text.WordColumn("unit", 8), text.WordColumn("n", 8), text.WordColumn("log", 16), text.WordColumn("ship", 16), text.WordColumn("to use", 16), text.WordColumn("most by", 15)}, rows)
}

// muchMoved is the change of a median from which the page names it [our choice].
const muchMoved = 0.05

func (p *printer) ratesMoved(r *rates.Result) {
	var lines []string
	for i := range r.Rates {
		x := &r.Rates[i]
		if x.Identified && x.Why == "" && math.Abs(x.Moved()) >= muchMoved {
			lines = append(lines, fmt.Sprintf("%s: %s %s instead of %s, %s %%: %d observations at %s", x.Of.Of().Key, words.Figures(x.Of.InUnit(x.Use[1])), x.Of.Of().Unit,
				words.Figures(x.Of.InUnit(x.Ship[1])), words.SignedFixed(100*x.Moved(), 0), x.N, words.Figures(x.Of.InUnit(x.Log[1]))))
		}
	}
	if len(lines) > 0 {
		p.Heading("What moved, and why")
		for _, l := range lines {
			p.Item(l)
		}
	}
	lines = lines[:0]
	for i := range r.Rates {
		if x := &r.Rates[i]; x.Why != "" {
			lines = append(lines, x.Of.Of().Key+": "+x.Why)
		}
	}
	if len(lines) > 0 {
		p.Heading("Too little, or not identified")
		for _, l := range lines {
			p.Item(l)
		}
	}
}

var toolNames = [coring.Tools]string{"piston", "half-length piston", "extended barrel", "rotary"}

func (p *printer) ratesCycles(r *rates.Result) error {
	if len(r.Cycles) == 0 {
		return nil
	}
	p.Heading("Cycles, core on deck to core on deck")
	var rows [][]string
	for i := range r.Cycles {
		c := &r.Cycles[i]
		line := c.Why
		if c.Identified {
			low, high := c.Interval()
			line = fmt.Sprintf("%s min at no depth, %s min for each km (%s)", words.Fixed(c.At0/60, 0), words.Fixed(c.PerMetre*1000/60, 1),
				words.Between(words.Fixed(low*1000/60, 1), words.Fixed(high*1000/60, 1)))
		}
		rows = append(rows, []string{toolNames[c.Tool], fmt.Sprint(c.N), fmt.Sprint(c.Troubled), words.Fixed(c.Minutes[0], 0) + " / " + words.Fixed(c.Minutes[1], 0) + " / " + words.Fixed(c.Minutes[2], 0), line})
	}
	return p.Table([]text.Column{text.WordColumn("tool", 14), text.NumberColumn("n"), text.NumberColumn("in\ntrouble"), text.WordColumn("minutes", 16), text.WordColumn("with the way of the barrel (95 %)", 36)}, rows)
}

func (p *printer) ratesEvents(r *rates.Result) error {
	if len(r.Events) == 0 {
		return nil
	}
	p.Heading("What went wrong, counted")
	var rows [][]string
	for i := range r.Events {
		e := &r.Events[i]
		each := words.Figures(e.PerUnit())
		interval := words.Between(words.Figures(e.Interval[0]), words.Figures(e.Interval[1]))
		if e.Count == 0 {
			each, interval = "none", "at most "+words.Figures(e.Interval[1])
		}
		rows = append(rows, []string{e.Kind, fmt.Sprint(e.Count), words.Figures(e.Exposure) + " " + e.Unit, each, interval})
	}
	return p.Table([]text.Column{text.WordColumn("what", 30), text.NumberColumn("count"), text.WordColumn("in", 18), text.NumberColumn("for each"), text.WordColumn("95 % (exact, Poisson)", 22)}, rows)
}

func (p *printer) dayBalance(r *rates.Result) error {
	if len(r.Days) == 0 {
		return nil
	}
	p.Heading("Where the hours of each day went (UTC)")
	var rows [][]string
	for i := range r.Days {
		d := &r.Days[i]
		rows = append(rows, []string{words.Date(d.Date), words.Fixed(d.Work, 2), words.Fixed(d.Weather, 2), words.Fixed(d.Trouble, 2), words.Fixed(d.Unmapped, 2), words.Fixed(d.Gap, 2), words.Fixed(d.Hours(), 2), words.Fixed(d.Twice, 2)})
	}
	return p.Table([]text.Column{text.WordColumn("day", 12), text.NumberColumn("work\n(h)"), text.NumberColumn("weather\n(h)"), text.NumberColumn("trouble\n(h)"), text.NumberColumn("without a\nmeaning (h)"), text.NumberColumn("gap\n(h)"), text.NumberColumn("sum\n(h)"), text.NumberColumn("claimed\ntwice (h)")}, rows)
}

func (p *printer) unmapped(r *rates.Result) error {
	if len(r.Unmapped) == 0 {
		return nil
	}
	p.Heading("Words without a meaning: give it them with --words (coredays rates --words-starter)")
	var rows [][]string
	for _, u := range r.Unmapped[:min(mostNotes, len(r.Unmapped))] {
		rows = append(rows, []string{words.Fixed(u.Hours, 2), fmt.Sprint(u.Lines), u.What})
	}
	return p.Table([]text.Column{text.NumberColumn("hours"), text.NumberColumn("lines"), text.WordColumn("words", 60)}, rows)
}

// Notes are what is wrong with the files, and what was left out for another reason.
func Notes(r *rates.Result, notes []riglog.Note) []riglog.Note {
	all := append([]riglog.Note(nil), notes...)
	for _, n := range r.LeftOut {
		if !n.Lost {
			all = append(all, n)
		}
	}
	return all
}

func (p *printer) ratesNotes(r *rates.Result, notes []riglog.Note) {
	all := Notes(r, notes)
	if len(all) == 0 {
		return
	}
	p.Heading("What is wrong with the files, or was left out")
	for _, n := range all[:min(mostNotes, len(all))] {
		p.Item(Note(n))
	}
	if more := len(all) - mostNotes; more > 0 {
		p.Item(fmt.Sprintf("and %d more, all of them in the JSON", more))
	}
}

// Note is a note on one line: file, line, what is wrong, what cures it.
func Note(n riglog.Note) string {
	text := n.File
	if n.Row > 0 {
		text += fmt.Sprintf(":%d", n.Row)
	}
	text += ": " + n.Why
	if n.Cure != "" {
		text += ": " + n.Cure
	}
	if n.Lost {
		text += " (left out)"
	}
	return words.CellText(text)
}
