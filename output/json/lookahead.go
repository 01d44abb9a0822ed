package json

import (
	"encoding/json"
	"fmt"
	"io"
	"math"
	"time"

	"coredays/model/morning"
	"coredays/model/rig"
	"coredays/model/unit"
)

const morningSchema = "coredays.lookahead/1"

type morningJSON struct {
	Schema        string          `json:"schema"`
	Scenario      string          `json:"scenario"`
	Seed          uint64          `json:"seed"`
	Replications  int             `json:"replications"`
	AsOf          time.Time       `json:"as_of"`
	State         stateJSON       `json:"state"`
	Home          datesJSON       `json:"home"`
	ArriveBy      time.Time       `json:"arrive_by"`
	DaysLeft      spreadJSON      `json:"days_left"`
	LeaveBy       []leaveJSON     `json:"leave_by"`
	ChanceInTime  number          `json:"chance_in_time"`
	ChanceAll     number          `json:"chance_all"`
	ChancePrimary number          `json:"chance_primary"`
	Recovered     spreadJSON      `json:"recovered_m"`
	Next          []nextJSON      `json:"next"`
	Shifts        []spreadJSON    `json:"cores_by_shift"`
	Holes         []aheadHoleJSON `json:"holes"`
	Choices       []choiceJSON    `json:"choices"`
	Advice        string          `json:"advice"`
	Behind        *behindJSON     `json:"behind_plan"`
	Learned       []learnedJSON   `json:"learned"`
	Changed       *changedJSON    `json:"changed"`
	Warnings      []string        `json:"warnings"`
}

type stateJSON struct {
	Site  string    `json:"site"`
	Hole  string    `json:"hole"`
	Depth number    `json:"depth_mbsf"`
	Bit   number    `json:"bit_m"`
	Doing string    `json:"doing"`
	Since time.Time `json:"since"`
}

type leaveJSON struct {
	Chance    number     `json:"chance"`
	PullOut   *time.Time `json:"pull_out"`
	BitOnDeck *time.Time `json:"bit_on_deck"`
	UnderWay  *time.Time `json:"under_way"`
}

type nextJSON struct {
	Hours     number     `json:"hours"`
	Cored     spreadJSON `json:"cored_m"`
	Recovered spreadJSON `json:"recovered_m"`
}

type aheadHoleJSON struct {
	Site      string     `json:"site"`
	Name      string     `json:"name"`
	Status    string     `json:"status"`
	Rank      int        `json:"rank"`
	Chance    number     `json:"chance_done"`
	Finished  datesJSON  `json:"finished"`
	Depth     spreadJSON `json:"depth_m"`
	Recovered spreadJSON `json:"recovered_m"`
}

type worthJSON struct {
	Primary number    `json:"chance_primary"`
	CI      [2]number `json:"ci"`
	All     number    `json:"chance_all"`
	AllCI   [2]number `json:"chance_all_ci"`
	Metres  number    `json:"recovered_m"`
	MetreCI [2]number `json:"recovered_m_ci"`
	Days    number    `json:"days_left"`
	DaysCI  [2]number `json:"days_left_ci"`
}

type choiceJSON struct {
	Name       string     `json:"name"`
	Primary    number     `json:"chance_primary"`
	All        number     `json:"chance_all"`
	Recovered  spreadJSON `json:"recovered_m"`
	DaysLeft   spreadJSON `json:"days_left"`
	Difference worthJSON  `json:"difference"`
}

type behindJSON struct {
	Days    number `json:"days"`
	Sea     number `json:"sea"`
	Pace    number `json:"pace"`
	Trouble number `json:"trouble"`
	Scope   number `json:"scope"`
}

type learnedJSON struct {
	Name string    `json:"name"`
	Unit string    `json:"unit"`
	Plan [3]number `json:"plan"`
	Now  [3]number `json:"now"`
	Seen int       `json:"seen"`
}

type changedJSON struct {
	Since     time.Time   `json:"since"`
	Home      number      `json:"home_later_days"`
	Primary   number      `json:"chance_primary"`
	All       number      `json:"chance_all"`
	Recovered number      `json:"recovered_m"`
	Advice    string      `json:"advice_before"`
	Behind    *behindJSON `json:"behind_more"`
}

// Morning writes the morning page of an expedition.
func Morning(w io.Writer, p *morning.Page) error {
	s := &p.State.Now
	v := morningJSON{Schema: morningSchema, Scenario: p.Scenario, Seed: p.Seed, Replications: p.Replications, AsOf: p.At.UTC(),
		State: stateJSON{p.Where.Site, p.Where.Hole, number(math.NaN()), number(s.Bit), p.State.Words, p.State.Since.UTC()},
		Home:  datesOf(p.Sails, p.Home), ArriveBy: p.ArriveBy.UTC(), DaysLeft: daysOf(p.DaysLeft), ChanceInTime: number(p.ChanceInTime),
		ChanceAll: number(p.ChanceAll), ChancePrimary: number(p.ChancePrimary), Recovered: spreadOf(p.Recovered), Advice: p.Advice,
		LeaveBy: []leaveJSON{}, Learned: []learnedJSON{}, Warnings: append([]string{}, p.Warnings...)}
	if p.Where.Hole != "" && s.Hole.Open {
		v.State.Depth = number(s.Hole.Depth)
	}
	for _, l := range p.LeaveBy {
		v.LeaveBy = append(v.LeaveBy, leaveJSON{number(l.Chance), momentOrNull(l.PullOut), momentOrNull(l.BitOnDeck), momentOrNull(l.UnderWay)})
	}
	for _, n := range p.Next {
		v.Next = append(v.Next, nextJSON{number(n.Hours), spreadOf(n.Cored), spreadOf(n.Recovered)})
	}
	for _, n := range p.Shifts {
		v.Shifts = append(v.Shifts, spreadOf(n))
	}
	for i := range p.Items {
		x := &p.Items[i]
		v.Holes = append(v.Holes, aheadHoleJSON{x.Site, x.Name, x.Status, x.Rank, number(x.Chance), datesOf(p.Sails, x.Finished), spreadOf(x.Depth), spreadOf(x.Recovered)})
	}
	for i := range p.Choices {
		c := &p.Choices[i]
		day := float64(unit.Day)
		v.Choices = append(v.Choices, choiceJSON{c.Name, number(c.ChancePrimary), number(c.ChanceAll), spreadOf(c.Recovered), daysOf(c.DaysLeft),
			worthJSON{number(c.Primary.Mean), pairOf(c.Primary.CI), number(c.All.Mean), pairOf(c.All.CI), number(c.Metres.Mean), pairOf(c.Metres.CI),
				number(c.Days.Mean / day), [2]number{number(c.Days.CI[0] / day), number(c.Days.CI[1] / day)}}})
	}
	if b := p.Pace; b != nil {
		v.Behind = behindOf(*b)
	}
	for i := range p.Learned {
		v.Learned = append(v.Learned, learnedOf(&p.Learned[i]))
	}
	if c := p.Before; c != nil {
		v.Changed = &changedJSON{c.At.UTC(), number(c.Home / float64(unit.Day)), number(c.ChancePrimary), number(c.ChanceAll), number(c.Recovered), c.Advice, nil}
		if c.Split {
			v.Changed.Behind = behindOf(morning.Pace{Behind: c.Sea + c.Trouble + c.Rest + c.Scope, Sea: c.Sea, Trouble: c.Trouble, Scope: c.Scope, Rest: c.Rest})
		}
	}
	return writeJSON(w, v)
}

func behindOf(b morning.Pace) *behindJSON {
	day := float64(unit.Day)
	return &behindJSON{number(b.Behind / day), number(b.Sea / day), number(b.Rest / day), number(b.Trouble / day), number(b.Scope / day)}
}

func learnedOf(x *morning.Learned) learnedJSON {
	y := learnedJSON{Name: x.Name, Seen: x.Seen}
	in := func(si float64) number { return number(si) }
	if x.Rate < rig.Rates {
		y.Name, y.Unit = x.Rate.Of().Key, x.Rate.Of().Unit
		in = func(si float64) number { return number(x.Rate.InUnit(si)) }
	}
	for i := range 3 {
		y.Plan[i], y.Now[i] = in(x.Plan[i]), in(x.Now[i])
	}
	return y
}

func momentOrNull(at time.Time) *time.Time {
	if at.IsZero() {
		return nil
	}
	at = at.UTC()
	return &at
}

// ReadMorning reads what of an earlier page is compared.
func ReadMorning(name string, data []byte) (*morning.Before, error) {
	var v struct {
		Schema string    `json:"schema"`
		AsOf   time.Time `json:"as_of"`
		Home   struct {
			P50 time.Time `json:"p50"`
		} `json:"home"`
		Primary   float64 `json:"chance_primary"`
		All       float64 `json:"chance_all"`
		Recovered struct {
			P50 float64 `json:"p50"`
		} `json:"recovered_m"`
		Advice string `json:"advice"`
		Behind *struct {
			Days, Sea, Pace, Trouble, Scope float64
		} `json:"behind_plan"`
	}
	if err := json.Unmarshal(data, &v); err != nil {
		return nil, fmt.Errorf("%s: it is no page of lookahead --json: %w", name, err)
	}
	if v.Schema != morningSchema {
		return nil, fmt.Errorf("%s: schema %q, wanted %q, as lookahead --json writes it", name, v.Schema, morningSchema)
	}
	b := &morning.Before{At: v.AsOf, Home: v.Home.P50, ChancePrimary: v.Primary, ChanceAll: v.All, Recovered: v.Recovered.P50, Advice: v.Advice}
	if x := v.Behind; x != nil {
		day := float64(unit.Day)
		b.Pace = &morning.Pace{Behind: x.Days * day, Sea: x.Sea * day, Rest: x.Pace * day, Trouble: x.Trouble * day, Scope: x.Scope * day}
	}
	return b, nil
}
