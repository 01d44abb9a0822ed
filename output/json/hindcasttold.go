package json

import "coredays/model/score"

// toldJSON is a site that was told of those of its leg before it.
type toldJSON struct {
	Program    string `json:"program"`
	Leg        string `json:"leg"`
	Site       string `json:"site"`
	Place      int    `json:"place"`
	ActualDays number `json:"actual_days"`
	P10        number `json:"p10"`
	P50        number `json:"p50"`
	P90        number `json:"p90"`
	CRPS       number `json:"crps"`
	UntoldCRPS number `json:"untold_crps"`
}

// toldCardJSON is how they did together.
type toldCardJSON struct {
	Sites      int       `json:"sites"`
	Legs       int       `json:"legs"`
	CRPS       number    `json:"crps_days"`
	UntoldCRPS number    `json:"untold_crps_days"`
	Change     number    `json:"change"`
	ChangeCI   [2]number `json:"change_ci"`
	Inside80   number    `json:"inside_80"`
	Inside80CI [2]number `json:"inside_80_ci"`
}

// toldOf is empty where nobody asked for it.
func toldOf(a *score.AsItGoes) (list []toldJSON, card *toldCardJSON) {
	if a == nil {
		return nil, nil
	}
	for _, s := range a.Sites {
		list = append(list, toldJSON{s.Program, s.Leg, s.Site, s.Place, number(s.Days.Actual), number(s.Days.P10), number(s.Days.P50), number(s.Days.P90),
			number(s.Days.CRPS), number(s.Untold)})
	}
	return list, &toldCardJSON{len(a.Sites), a.Legs, number(a.CRPS), number(a.Untold), number(a.Change), pairOf(a.ChangeCI), number(a.Inside80), pairOf(a.Inside80CI)}
}
