package json

import (
	"io"
	"math"
	"time"

	"coredays/model/sea"
)

// SeaSchema names the promise that JSON keeps: keys are added, never changed or taken away.
const SeaSchema = "coredays.sea/1"

// Sea writes the sea of one or more places for programs: metres, hours and shares from 0 to 1,
// on 3-hour means; null where there is no figure. The keys of the first place stand at the top
// as well, which is all that one place needs. Where there is no record, the sea made from the
// climate stands for both.
func Sea(w io.Writer, studies []*sea.Study) error {
	whole := seaJSON{Schema: SeaSchema, Sites: []placeJSON{}}
	for i, s := range studies {
		place := placeOf(s)
		if i == 0 {
			whole.placeJSON, whole.Seed, whole.Years = place, s.Seed, s.Years
		}
		whole.Sites = append(whole.Sites, place)
	}
	return writeJSON(w, whole)
}

type seaJSON struct {
	Schema string `json:"schema"`
	Seed   uint64 `json:"seed"`
	Years  int    `json:"years_made"`
	placeJSON
	Sites []placeJSON `json:"sites"`
}

type placeJSON struct {
	Site       string          `json:"site"`
	Source     string          `json:"source"`
	Basis      string          `json:"basis"` // record or climate
	Months     []seaMonthJSON  `json:"months"`
	Thresholds []thresholdJSON `json:"thresholds"`
	Notes      []string        `json:"notes"`
}

type seaMonthJSON struct {
	Month         int            `json:"month"`
	Mean          number         `json:"mean_hs_m"`
	Deviation     number         `json:"sd_hs_m"`
	MadeMean      number         `json:"generated_mean_hs_m"`
	MadeDeviation number         `json:"generated_sd_hs_m"`
	Work          []seaWorkJSON  `json:"work"`
	Coring        *seaCoringJSON `json:"coring"`
	Known         *seaKnownJSON  `json:"known_place"`
}

// seaWorkJSON is how much of a month is below the limit of a class of work, in the sea made.
type seaWorkJSON struct {
	Limit string `json:"limit"`
	Most  number `json:"hs_m"`
	Below number `json:"share_below"`
}

// seaKnownJSON is what the tables of known places have of cyclones and ice in a month.
type seaKnownJSON struct {
	Storms number `json:"cyclones"`
	Days   number `json:"share_of_days_with_one"`
	Lasts  number `json:"each_closes_h"`
	Ice    string `json:"ice"` // none, edge or rule
	Closed number `json:"share_closed"`
}

// seaCoringJSON is what stops coring in a month, in the sea made.
type seaCoringJSON struct {
	MeanStorm number `json:"mean_storm_h"`
	LongStorm number `json:"one_in_ten_storm_h"`
	Wait      number `json:"wait_24h"`
	Lost      number `json:"share_lost"`
}

type thresholdJSON struct {
	Height     number `json:"hs_m"`
	Season     string `json:"season"`
	Share      number `json:"share_above"`
	Above      number `json:"mean_hours_above"`
	Below      number `json:"mean_hours_below"`
	Wait12     number `json:"wait_12h"`
	Wait24     number `json:"wait_24h"`
	Wait48     number `json:"wait_48h"`
	MadeShare  number `json:"generated_share_above"`
	MadeAbove  number `json:"generated_mean_hours_above"`
	MadeBelow  number `json:"generated_mean_hours_below"`
	MadeWait12 number `json:"generated_wait_12h"`
	MadeWait24 number `json:"generated_wait_24h"`
	MadeWait48 number `json:"generated_wait_48h"`
}

func placeOf(s *sea.Study) placeJSON {
	p := placeJSON{Site: s.Place, Source: s.Source, Basis: "climate", Notes: append([]string{}, s.Notes...), Thresholds: []thresholdJSON{}}
	if s.Likeness != nil {
		p.Basis = "record"
	}
	for m := 1; m <= 12; m++ {
		p.Months = append(p.Months, seaMonthOf(s, m))
	}
	for i, h := range s.Heights {
		for season := sea.AllYear; season < sea.Seasons; season++ {
			one, made := s.Seasons.At(i, int(season)), s.Made.At(i, int(season))
			if share := one.ShareAbove(); share > 0 && share < 1 {
				p.Thresholds = append(p.Thresholds, thresholdOf(h, season, one, made))
			}
		}
	}
	return p
}

func seaMonthOf(s *sea.Study, m int) seaMonthJSON {
	month := seaMonthJSON{Month: m, Mean: number(s.Months.Mean(m - 1)), Deviation: number(s.Months.Deviation(m - 1)),
		MadeMean: number(s.MadeYear.Mean(m - 1)), MadeDeviation: number(s.MadeYear.Deviation(m - 1)), Work: []seaWorkJSON{}}
	for i, l := range s.Limits {
		month.Work = append(month.Work, seaWorkJSON{l.Name, number(l.Most), number(1 - s.Work.At(i, m).ShareAbove())})
	}
	if s.Coring >= 0 {
		spells := s.Work.At(s.Coring, m)
		long, found := spells.StormAt(0.9)
		if !found {
			long = math.NaN()
		}
		month.Coring = &seaCoringJSON{number(spells.MeanAbove()), number(long), number(spells.MeanWait(1)), number(s.Lost(m))}
	}
	if s.Known != nil {
		c := s.Known.Cyclones[m-1]
		month.Known = &seaKnownJSON{number(c.Storms), number(c.Days), number(c.Lasts().Hours()), [...]string{"none", "edge", "rule"}[s.Known.Ice[m-1]], number(s.Known.Closed(time.Month(m)))}
	}
	return month
}

func thresholdOf(h float64, season sea.Season, one, made *sea.Spells) thresholdJSON {
	return thresholdJSON{number(h), season.String(),
		number(one.ShareAbove()), number(one.MeanAbove()), number(one.MeanBelow()),
		number(one.MeanWait(0)), number(one.MeanWait(1)), number(one.MeanWait(2)),
		number(made.ShareAbove()), number(made.MeanAbove()), number(made.MeanBelow()),
		number(made.MeanWait(0)), number(made.MeanWait(1)), number(made.MeanWait(2))}
}
