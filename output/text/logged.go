package text

import (
	"io"

	"coredays/model/result"
)

// Logged prints where a log has the ship against what was simulated, a line for each site that it gives.
// The summary is one looked at closely.
func Logged(w io.Writer, s *result.Summary, log *result.Log) error {
	p := On(w)
	p.Heading("As logged in %s", log.File)
	found := false
	for i := range s.Sites {
		site := &s.Sites[i]
		stay, _ := log.At(site.Name)
		if words := LoggedWords(site, &stay); words != "" {
			p.Item(site.Name + ": " + words)
			found = true
		}
	}
	if !found {
		p.Say("No hole of a site is in it yet.")
	}
	return p.To(w)
}
