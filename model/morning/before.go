package morning

import "time"

// Before is what of an earlier page is held against this one.
type Before struct {
	At                       time.Time
	Home                     time.Time // even arrival
	ChancePrimary, ChanceAll float64
	Recovered                float64 // m, even
	Advice                   string
	Pace                     *Pace
}

// Changed is what changed from then to a page.
func (b *Before) Changed(p *Page) *Changed {
	home := p.Sails.Add(time.Duration(p.Home.P50 * float64(time.Second)))
	c := &Changed{At: b.At, Home: home.Sub(b.Home).Seconds(), ChancePrimary: p.ChancePrimary - b.ChancePrimary, ChanceAll: p.ChanceAll - b.ChanceAll,
		Recovered: p.Recovered.P50 - b.Recovered, Advice: b.Advice}
	if b.Pace != nil && p.Pace != nil {
		c.Split = true
		c.Sea, c.Trouble, c.Rest, c.Scope = p.Pace.Sea-b.Pace.Sea, p.Pace.Trouble-b.Pace.Trouble, p.Pace.Rest-b.Pace.Rest, p.Pace.Scope-b.Pace.Scope
	}
	return c
}
