package json

import (
	"io"
	"time"

	"coredays/model/result"
)

// studySchema names the promise that JSON keeps: keys are added, never changed or taken away.
const studySchema = "coredays.study/1"

type studyJSON struct {
	Schema       string     `json:"schema"`
	Title        string     `json:"title"`
	Seed         uint64     `json:"seed"`
	Replications int        `json:"replications"`
	StoppedEarly bool       `json:"stopped_early"`
	Of           int        `json:"plans_in_all"`
	Plans        []planJSON `json:"plans"`
	Warnings     []string   `json:"warnings"`
}

type planJSON struct {
	Scenario      string            `json:"scenario"`
	Sails         time.Time         `json:"sails"`
	Settings      map[string]string `json:"settings"`
	SeaDays       number            `json:"sea_days"`
	Needed        spreadJSON        `json:"days_needed"`
	Waiting       spreadJSON        `json:"waiting"`
	ChancePrimary number            `json:"chance_primary"`
	ChanceAll     number            `json:"chance_all"`
	ChanceLate    number            `json:"chance_late"`
	InHand        spreadJSON        `json:"days_in_hand"`
	Recovered     spreadJSON        `json:"recovered_m"`
}

// Study writes a study for programs: days, metres, shares from 0 to 1, in full precision; null where there is no
// figure.
func Study(w io.Writer, s *result.Study) error {
	out := studyJSON{Schema: studySchema, Title: s.Title, Seed: s.Seed, Replications: s.Replications, StoppedEarly: s.StoppedEarly, Of: s.Of,
		Plans: []planJSON{}, Warnings: append([]string{}, s.Warnings...)}
	for i := range s.Plans {
		p := &s.Plans[i]
		settings := map[string]string{}
		for k, value := range p.Settings {
			settings[s.Varied[k]] = value
		}
		out.Plans = append(out.Plans, planJSON{p.Scenario, p.Sails.UTC(), settings, number(p.SeaDays.Days()), daysOf(p.Needed), daysOf(p.Waiting),
			number(p.ChancePrimary), number(p.ChanceAll), number(p.ChanceLate), daysOf(p.InHand), spreadOf(p.Recovered)})
	}
	return writeJSON(w, out)
}
