package text

import (
	"fmt"
	"io"
	"math"
	"strings"

	"coredays/model/coring"
	"coredays/model/rates"
	"coredays/model/riglog"
	"coredays/output/words"
)

// RatesEffect is what learned rates do to a plan.
type RatesEffect struct {
	Title                  string
	Replications           int
	ShipP50, ShipP90       float64 // days needed with the ship's rates
	LearnedP50, LearnedP90 float64 // and with those learned
}

// mostNotes is how many notes on files are printed; JSON has all.
const mostNotes = 25

// Rates prints the driller's page: what the papers say of each rate beside the ship's figures, and where the hours went.
func Rates(w io.Writer, r *rates.Result, notes []riglog.Note, effect *RatesEffect) error {
	p := on(w)
	p.paragraph("", indent, fmt.Sprintf("Rates from %s", strings.Join(fileNames(r), ", ")))
	p.paragraph("", indent, ratesSpan(r))
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
		p.heading("What it does to %s", words.OrElse(effect.Title, "the plan"))
		p.paragraph(indent, indent, fmt.Sprintf("Days needed, P50 and P90: %s and %s with the ship's rates, %s and %s with these; %s and %s days (%d replications, the same random streams).",
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
	p.heading("To paste, or to write with --yaml FILE")
	p.WriteString(RatesYAML(r))
	return p.to(w)
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

// RateTriple writes P10, P50 and P90 in the unit of a rate, as one number where they are equal.
func RateTriple(x *rates.Rate, t rates.Triple) string {
	if math.IsNaN(t[1]) {
		return "-"
	}
	low, mid, high := InUnit(x.Of, t[0]), InUnit(x.Of, t[1]), InUnit(x.Of, t[2])
	if low == high {
		return words.Figures(mid)
	}
	return words.Figures(low) + " / " + words.Figures(mid) + " / " + words.Figures(high)
}

// RateCount is how much was observed of a rate: how often, and how many stands.
func RateCount(x *rates.Rate) string {
	if x.Unit == "stands" {
		return fmt.Sprintf("%d (%.0f stands)", x.N, x.Exposure)
	}
	return fmt.Sprint(x.N)
}

// RateToUse is the spread to use of a rate.
func RateToUse(x *rates.Rate) string {
	if !x.Identified {
		return "the ship's"
	}
	return RateTriple(x, x.Use)
}

func (p *printer) ratesTable(r *rates.Result) error {
	p.heading("Rates")
	var rows [][]string
	for i := range r.Rates {
		x := &r.Rates[i]
		rows = append(rows, []string{x.Of.Of().Key, x.Of.Of().Unit, RateCount(x), RateTriple(x, x.Log), RateTriple(x, x.Ship), RateToUse(x), x.Shares.String()})
	}
	if len(rows) == 0 {
		p.say("Nothing in the files says anything of a rate.")
		return nil
	}
	return p.table([]column{wordColumn("rate", 16), wordColumn("unit", 8), wordColumn("n", 8), wordColumn("log", 16), wordColumn("ship", 16), wordColumn("to use", 16), wordColumn("varies by", 12)}, rows)
}

// muchMoved is the change of a median from which the page names it [our choice].
const muchMoved = 0.05

func (p *printer) ratesMoved(r *rates.Result) {
	var lines []string
	for i := range r.Rates {
		x := &r.Rates[i]
		if x.Identified && x.Why == "" && math.Abs(x.Moved()) >= muchMoved {
			lines = append(lines, fmt.Sprintf("%s: %s %s instead of %s, %s %%: %d observations at %s", x.Of.Of().Key, words.Figures(InUnit(x.Of, x.Use[1])), x.Of.Of().Unit,
				words.Figures(InUnit(x.Of, x.Ship[1])), words.SignedFixed(100*x.Moved(), 0), x.N, words.Figures(InUnit(x.Of, x.Log[1]))))
		}
	}
	if len(lines) > 0 {
		p.heading("What moved, and why")
		for _, l := range lines {
			p.item(l)
		}
	}
	lines = lines[:0]
	for i := range r.Rates {
		if x := &r.Rates[i]; x.Why != "" {
			lines = append(lines, x.Of.Of().Key+": "+x.Why)
		}
	}
	if len(lines) > 0 {
		p.heading("Too little, or not identified")
		for _, l := range lines {
			p.item(l)
		}
	}
}

var toolNames = [coring.Tools]string{"piston", "half-length piston", "extended barrel", "rotary"}

func (p *printer) ratesCycles(r *rates.Result) error {
	if len(r.Cycles) == 0 {
		return nil
	}
	p.heading("Cycles, core on deck to core on deck")
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
	return p.table([]column{wordColumn("tool", 14), numberColumn("n"), numberColumn("in\ntrouble"), wordColumn("minutes", 16), wordColumn("with the way of the barrel (95 %)", 36)}, rows)
}

func (p *printer) ratesEvents(r *rates.Result) error {
	if len(r.Events) == 0 {
		return nil
	}
	p.heading("What went wrong, counted")
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
	return p.table([]column{wordColumn("what", 30), numberColumn("count"), wordColumn("in", 18), numberColumn("for each"), wordColumn("95 % (exact, Poisson)", 22)}, rows)
}

func (p *printer) dayBalance(r *rates.Result) error {
	if len(r.Days) == 0 {
		return nil
	}
	p.heading("Where the hours of each day went (UTC)")
	var rows [][]string
	for i := range r.Days {
		d := &r.Days[i]
		rows = append(rows, []string{words.Date(d.Date), words.Fixed(d.Work, 2), words.Fixed(d.Weather, 2), words.Fixed(d.Trouble, 2), words.Fixed(d.Unmapped, 2), words.Fixed(d.Gap, 2), words.Fixed(d.Hours(), 2), words.Fixed(d.Twice, 2)})
	}
	return p.table([]column{wordColumn("day", 12), numberColumn("work\n(h)"), numberColumn("weather\n(h)"), numberColumn("trouble\n(h)"), numberColumn("without a\nmeaning (h)"), numberColumn("gap\n(h)"), numberColumn("sum\n(h)"), numberColumn("claimed\ntwice (h)")}, rows)
}

func (p *printer) unmapped(r *rates.Result) error {
	if len(r.Unmapped) == 0 {
		return nil
	}
	p.heading("Words without a meaning: give it them with --words (coredays rates --words-starter)")
	var rows [][]string
	for _, u := range r.Unmapped[:min(mostNotes, len(r.Unmapped))] {
		rows = append(rows, []string{words.Fixed(u.Hours, 2), fmt.Sprint(u.Lines), u.What})
	}
	return p.table([]column{numberColumn("hours"), numberColumn("lines"), wordColumn("words", 60)}, rows)
}

// RatesNotes are what is wrong with the files, and what was left out for another reason.
func RatesNotes(r *rates.Result, notes []riglog.Note) []riglog.Note {
	all := append([]riglog.Note(nil), notes...)
	for _, n := range r.LeftOut {
		if !n.Lost {
			all = append(all, n)
		}
	}
	return all
}

func (p *printer) ratesNotes(r *rates.Result, notes []riglog.Note) {
	all := RatesNotes(r, notes)
	if len(all) == 0 {
		return
	}
	p.heading("What is wrong with the files, or was left out")
	for _, n := range all[:min(mostNotes, len(all))] {
		p.item(NoteText(n))
	}
	if more := len(all) - mostNotes; more > 0 {
		p.item(fmt.Sprintf("and %d more, all of them in the JSON", more))
	}
}

// NoteText is a note on one line: file, line, what is wrong, what cures it.
func NoteText(n riglog.Note) string {
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
