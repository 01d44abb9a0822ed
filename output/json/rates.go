package json

import (
	"io"

	"coredays/model/rates"
	"coredays/model/riglog"
	"coredays/model/spread"
	"coredays/output/text/crewrates"
)

type ratesJSON struct {
	Schema   string           `json:"schema"`
	Rates    []rateJSON       `json:"rates"`
	Cycles   []cyclesJSON     `json:"cycles"`
	Events   []eventJSON      `json:"events"`
	Hours    hoursJSON        `json:"hours"`
	Days     []logDayJSON     `json:"days"`
	Unmapped []unmappedJSON   `json:"unmapped"`
	LeftOut  []ratesNoteJSON  `json:"left_out"`
	Notes    []ratesNoteJSON  `json:"notes"`
	Effect   *ratesEffectJSON `json:"effect,omitempty"`
	YAML     string           `json:"yaml"`
}

type rateJSON struct {
	Name       string            `json:"name"`
	Unit       string            `json:"unit"`
	N          int               `json:"n"`
	Exposure   number            `json:"exposure"`
	Of         string            `json:"exposure_unit"`
	Ship       [3]number         `json:"ship"`
	Log        [3]number         `json:"log"`
	Use        [3]number         `json:"use"`
	Varies     map[string]number `json:"varies"`
	Identified bool              `json:"identified"`
	Why        string            `json:"why"`
}

type cyclesJSON struct {
	Tool       string    `json:"tool"`
	N          int       `json:"n"`
	Troubled   int       `json:"troubled"`
	Minutes    [3]number `json:"minutes"`
	At0        number    `json:"min_at_no_depth"`
	PerKm      number    `json:"min_per_km"`
	Identified bool      `json:"identified"`
	Why        string    `json:"why"`
}

type eventJSON struct {
	Kind     string    `json:"kind"`
	Count    int       `json:"count"`
	Exposure number    `json:"exposure"`
	Unit     string    `json:"unit"`
	PerUnit  number    `json:"per_unit"`
	CI       [2]number `json:"ci"`
}

type hoursJSON struct {
	Total   number `json:"total"`
	Used    number `json:"used"`
	LeftOut number `json:"left_out"`
}

type logDayJSON struct {
	Date     string `json:"date"`
	Work     number `json:"work_h"`
	Weather  number `json:"weather_h"`
	Trouble  number `json:"trouble_h"`
	Unmapped number `json:"unmapped_h"`
	Gap      number `json:"gap_h"`
	Twice    number `json:"claimed_twice_h"`
}

type unmappedJSON struct {
	What  string `json:"what"`
	Lines int    `json:"lines"`
	Hours number `json:"hours"`
}

type ratesNoteJSON struct {
	File string `json:"file"`
	Row  int    `json:"row"`
	Why  string `json:"why"`
	Cure string `json:"cure,omitempty"`
}

type ratesEffectJSON struct {
	Replications int       `json:"replications"`
	Ship         [2]number `json:"ship_p50_p90"`
	Learned      [2]number `json:"learned_p50_p90"`
}

// Rates writes what was learned of a rig's rates. Values are in the unit named.
func Rates(w io.Writer, r *rates.Result, notes []riglog.Note, effect *crewrates.Effect) error {
	all := ratesJSON{Schema: "coredays.rates/1", Rates: []rateJSON{}, Cycles: []cyclesJSON{}, Events: []eventJSON{}, Days: []logDayJSON{}, Unmapped: []unmappedJSON{},
		LeftOut: notesJSON(r.LeftOut, true), Notes: notesJSON(notes, false), Hours: hoursJSON{number(r.Total), number(r.Used), number(r.Total - r.Used)}, YAML: crewrates.YAML(r)}
	for i := range r.Rates {
		x := &r.Rates[i]
		j := rateJSON{Name: x.Of.Of().Key, Unit: x.Of.Of().Unit, N: x.N, Exposure: number(x.Exposure), Of: x.Unit, Ship: inUnit(x, x.Ship), Log: inUnit(x, x.Log), Use: inUnit(x, x.Use),
			Varies: map[string]number{}, Identified: x.Identified, Why: x.Why}
		for l, share := range x.Shares {
			if share > 0 {
				j.Varies[spread.Level(l).String()] = number(share)
			}
		}
		all.Rates = append(all.Rates, j)
	}
	for i := range r.Cycles {
		c := &r.Cycles[i]
		all.Cycles = append(all.Cycles, cyclesJSON{c.Tool.String(), c.N, c.Troubled, [3]number{number(c.Minutes[0]), number(c.Minutes[1]), number(c.Minutes[2])},
			number(c.At0 / 60), number(c.PerMetre * 1000 / 60), c.Identified, c.Why})
	}
	for i := range r.Events {
		e := &r.Events[i]
		all.Events = append(all.Events, eventJSON{e.Kind, e.Count, number(e.Exposure), e.Unit, number(e.PerUnit()), [2]number{number(e.Interval[0]), number(e.Interval[1])}})
	}
	for i := range r.Days {
		d := &r.Days[i]
		all.Days = append(all.Days, logDayJSON{d.Date.Format("2006-01-02"), number(d.Work), number(d.Weather), number(d.Trouble), number(d.Unmapped), number(d.Gap), number(d.Twice)})
	}
	for _, u := range r.Unmapped {
		all.Unmapped = append(all.Unmapped, unmappedJSON{u.What, u.Lines, number(u.Hours)})
	}
	if effect != nil {
		all.Effect = &ratesEffectJSON{effect.Replications, [2]number{number(effect.ShipP50), number(effect.ShipP90)}, [2]number{number(effect.LearnedP50), number(effect.LearnedP90)}}
	}
	return writeJSON(w, all)
}

func inUnit(x *rates.Rate, t rates.Triple) (n [3]number) {
	for i := range t {
		n[i] = number(x.Of.InUnit(t[i]))
	}
	return n
}

// notesJSON are notes, those that left a row out among them or not.
func notesJSON(notes []riglog.Note, lost bool) []ratesNoteJSON {
	list := []ratesNoteJSON{}
	for _, n := range notes {
		if lost || !n.Lost {
			list = append(list, ratesNoteJSON{n.File, n.Row, n.Why, n.Cure})
		}
	}
	return list
}
