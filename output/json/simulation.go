package json

import (
	"io"
	"time"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/result"
	"coredays/output/words"
)

// simulationSchema names the promise that JSON keeps: keys are added, never changed or taken away.
const simulationSchema = "coredays.simulation/1"

// Simulation writes the answer of a simulation for programs: days, metres, shares from 0 to 1 and
// recovery in per cent, in full precision; null where there is no figure.
func Simulation(w io.Writer, s *result.Summary) error { return writeJSON(w, simulationOf(s)) }

type simulationJSON struct {
	Schema       string           `json:"schema"`
	Scenario     string           `json:"scenario"`
	File         string           `json:"file"`
	Ship         string           `json:"ship"`
	Invented     bool             `json:"invented"`
	Seed         uint64           `json:"seed"`
	Replications int              `json:"replications"`
	StoppedEarly bool             `json:"stopped_early"`
	Sails        *time.Time       `json:"sails"`
	InPort       spreadJSON       `json:"in_port_before_sailing"` // days
	Needed       neededJSON       `json:"days_needed"`
	Allotted     allottedJSON     `json:"within_allotted"`
	Recovery     recoveryJSON     `json:"recovery"`
	Deck         deckJSON         `json:"deck"`
	Sites        []siteJSON       `json:"sites"`
	Drivers      []driverJSON     `json:"drivers"`
	Consumables  []consumableJSON `json:"consumables"`
	Warnings     []string         `json:"warnings"`
}

type neededJSON struct {
	Total   spreadJSON            `json:"total"`
	Fits    number                `json:"share_within_sea_days"`
	ByClass map[string]spreadJSON `json:"by_class"` // encoding/json sorts the keys
}

type allottedJSON struct {
	SeaDays       number     `json:"sea_days"`
	ChanceAll     number     `json:"chance_all"`
	ChancePrimary number     `json:"chance_primary"`
	Late          number     `json:"chance_late"`
	InHand        spreadJSON `json:"days_in_hand"`
	Recovered     spreadJSON `json:"recovered_m"`
	OfPrimary     spreadJSON `json:"recovered_primary_m"`
	OfAlternates  spreadJSON `json:"recovered_alternates_m"`
}

type deckJSON struct {
	MostCores spreadJSON `json:"most_cores_a_day"`
	Behind    spreadJSON `json:"laboratory_behind_hours"`
}

type recoveryJSON struct {
	Cored     spreadJSON            `json:"cored_m"`
	Recovered spreadJSON            `json:"recovered_m"`
	Percent   spreadJSON            `json:"percent"`
	Cores     spreadJSON            `json:"cores"`
	ByTool    map[string]amountJSON `json:"by_tool"`
}

// amountJSON is what one tool brings up.
type amountJSON struct {
	Cored     spreadJSON `json:"cored_m"`
	Recovered spreadJSON `json:"recovered_m"`
	Percent   spreadJSON `json:"percent"`
	Cores     spreadJSON `json:"cores"`
}

type driverJSON struct {
	Name  string `json:"name"`
	Share number `json:"share"`
}

type consumableJSON struct {
	Item string `json:"item"`
	P50  number `json:"p50"`
	P90  number `json:"p90"`
}

func simulationOf(s *result.Summary) simulationJSON {
	return simulationJSON{
		Schema: simulationSchema, Scenario: s.Scenario, File: s.File, Ship: s.Ship, Invented: s.Invented,
		Seed: s.Seed, Replications: s.Replications, StoppedEarly: s.StoppedEarly,
		Sails: dateOf(s.Sails, 0), InPort: daysOf(s.InPort),
		Needed: neededOf(&s.Needed), Allotted: allottedOf(&s.Allotted), Recovery: recoveryOf(&s.Recovery),
		Deck:  deckJSON{spreadOf(s.Deck.MostCores), spreadOf(words.InHours(s.Deck.Behind))},
		Sites: sitesOf(s), Drivers: driversOf(s.Drivers), Consumables: consumablesOf(s.Consumables),
		Warnings: append([]string{}, s.Warnings...),
	}
}

func neededOf(n *result.Needed) neededJSON {
	byClass := map[string]spreadJSON{}
	for c := range activity.Classes {
		byClass[c.Key()] = daysOf(n.ByClass[c])
	}
	return neededJSON{daysOf(n.Total), number(n.Fits), byClass}
}

func allottedOf(a *result.Allotted) allottedJSON {
	return allottedJSON{number(a.SeaDays.Days()), number(a.ChanceAll), number(a.ChancePrimary), number(a.Late),
		daysOf(a.InHand), spreadOf(a.Recovered), spreadOf(a.OfPrimary), spreadOf(a.OfAlternates)}
}

func recoveryOf(r *result.Recovery) recoveryJSON {
	byTool := map[string]amountJSON{}
	for tool := range coring.Tools {
		t := r.ByTool[tool]
		byTool[tool.String()] = amountJSON{spreadOf(t.Cored), spreadOf(t.Recovered), spreadOf(t.Percent), spreadOf(t.Cores)}
	}
	return recoveryJSON{spreadOf(r.Cored), spreadOf(r.Recovered), spreadOf(r.Percent), spreadOf(r.Cores), byTool}
}

func driversOf(drivers []result.Driver) []driverJSON {
	list := []driverJSON{}
	for _, d := range drivers {
		list = append(list, driverJSON{d.Name, number(d.Share)})
	}
	return list
}

func consumablesOf(consumables []result.Consumable) []consumableJSON {
	list := []consumableJSON{}
	for _, c := range consumables {
		list = append(list, consumableJSON{c.Item, number(c.P50), number(c.P90)})
	}
	return list
}
