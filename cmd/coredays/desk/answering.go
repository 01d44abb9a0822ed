package desk

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"net/http"
	"slices"

	"coredays/model/result"
	"coredays/output"
	"coredays/output/chart"
	jsonout "coredays/output/json"
	textout "coredays/output/text"
	"coredays/output/text/alternatives"
	"coredays/output/words"
	"coredays/sim"
	"coredays/sim/choice"
	"coredays/sim/statistics"
)

const (
	roughly = 100  // replications of the first answer: P50 within a tenth of its spread, in some hundredths of a second
	refined = 2000 // those of simulate
	seed    = 1    // that of simulate
)

// said is an answer for the page: the JSON of simulate, and the sentences and charts of its report.
type said struct {
	Rough      bool            `json:"rough"`
	Simulation json.RawMessage `json:"simulation"`
	Headlines  []string        `json:"headlines"`
	Facts      []textout.Fact  `json:"facts"`
	Sites      sitesSaid       `json:"sites"`
	Drivers    []string        `json:"drivers"`
	Charts     []chartSaid     `json:"charts"`
	Call       string          `json:"call"`
}

// sitesSaid is the table of the sites, as it is printed.
type sitesSaid struct {
	Note  string     `json:"note"`
	Heads []string   `json:"heads"`
	Rows  [][]string `json:"rows"`
}

type chartSaid struct{ Name, Title, Desc, Key, SVG string }

func (d *Desk) answer(w http.ResponseWriter, r *http.Request) {
	q, ok := asked(w, r)
	if !ok {
		return
	}
	ctx, done, err := d.turn.take(r.Context(), &q)
	s := newStream(w)
	if err == nil {
		defer done()
		err = d.sail(ctx, s, q)
	}
	if err == nil && ctx.Err() != nil {
		err = context.Cause(ctx)
	}
	if errors.Is(err, errSuperseded) {
		_ = s.send("superseded", nil)
	} else if err != nil && r.Context().Err() == nil {
		_ = s.send("failed", err.Error())
	}
}

// sail answers roughly, then well, then says the difference to the pinned plan and draws the sea.
func (d *Desk) sail(ctx context.Context, s stream, q question) error {
	now := d.readingOf(q.Text)
	if err := s.send("read", now); err != nil || !now.sails() {
		return err
	}
	for _, n := range []int{roughly, refined} {
		results := sim.Replicate(ctx, now.voyage, sim.Run{Seed: seed, Replications: n})
		if results.Stopped {
			return nil
		}
		answer, err := d.answerOf(&now, results, n < refined)
		if err != nil {
			return err
		}
		if err := s.send("answer", answer); err != nil {
			return err
		}
	}
	if err := d.difference(ctx, s, &now, q.Pinned); err != nil {
		return err
	}
	return sendSea(ctx, s, &now)
}

// difference is that between a plan and the pinned one, replication by replication.
func (d *Desk) difference(ctx context.Context, s stream, now *reading, text string) error {
	if text == "" {
		return nil
	}
	pinned := d.readingOf(text)
	if !pinned.sails() {
		return s.send("difference", []string{"The pinned plan can't be simulated."})
	}
	c := choice.Compare(ctx, []choice.Alternative{{Name: "this plan", Voyage: now.voyage}, {Name: "the pinned plan", Voyage: pinned.voyage}}, sim.Run{Seed: seed, Replications: refined})
	if c.StoppedEarly {
		return nil
	}
	return s.send("difference", alternatives.AgainstPinned(c))
}

// answerOf describes results for the page.
func (d *Desk) answerOf(now *reading, results *statistics.Results, rough bool) (a said, err error) {
	s := results.Closely()
	s.Warnings = slices.Concat(now.Warnings, s.Warnings)
	s.Invented = d.invented()
	now.summary = s
	a = said{Rough: rough, Headlines: bound(textout.Headlines(s)), Facts: textout.Facts(s), Call: textout.Call(s)}
	var simulation bytes.Buffer
	if err := jsonout.Simulation(&simulation, s); err != nil {
		return a, err
	}
	a.Simulation = simulation.Bytes()
	a.Sites = sitesSaid{Note: textout.SitesNote(s), Heads: textout.SiteHeads(s.Replications >= 2)}
	for i := range s.Sites {
		a.Sites.Rows = append(a.Sites.Rows, textout.SiteRow(&s.Sites[i], s.Replications))
	}
	causes, _ := textout.Shown(s.Drivers)
	for _, d := range causes {
		a.Drivers = append(a.Drivers, d.Name+" "+words.Percent(d.Share)+" %")
	}
	if !rough { // charts of few replications would only flicker
		a.Charts, err = chartsOf(now, s)
	}
	return a, err
}

// bound are sentences whose numbers stay with their units, however narrow the page is.
func bound(sentences []string) (list []string) {
	for _, s := range sentences {
		list = append(list, words.Bound(s))
	}
	return list
}

func chartsOf(now *reading, s *result.Summary) ([]chartSaid, error) {
	return allSaid(chart.Of(&output.Report{Summary: s, Plan: now.voyage.Plan}))
}

// allSaid are charts ready for the page.
func allSaid(charts []*chart.Chart) (list []chartSaid, err error) {
	for _, c := range charts {
		said, err := saidOf(c)
		if err != nil {
			return nil, err
		}
		list = append(list, said)
	}
	return list, nil
}

func saidOf(c *chart.Chart) (chartSaid, error) {
	svg, err := c.SVG()
	return chartSaid{c.Name, c.Title, c.Desc, c.Key, string(svg)}, err
}

// yearsOfSea are made for the chart of the sea by month, as coredays sea makes them.
const yearsOfSea = 100

// sendSea draws the sea by month, last, since nothing waits for it.
func sendSea(ctx context.Context, s stream, now *reading) error {
	r := &output.Report{Summary: now.summary, Plan: now.voyage.Plan}
	for _, n := range now.voyage.Plan.Order {
		q := now.voyage.Sea(n)
		q.Years, q.Seed = yearsOfSea, seed
		r.Seas = append(r.Seas, q.Study(ctx))
	}
	if ctx.Err() != nil {
		return nil
	}
	c := chart.Sea(r)
	if c == nil {
		return nil
	}
	said, err := saidOf(c)
	if err != nil {
		return err
	}
	return s.send("sea", said)
}
