package choice

import (
	"coredays/model/logbook"
	"coredays/model/voyage"
)

// Track is a voyage by itself with its summary, for a map: a comparison of one.
func Track(v *voyage.Voyage, s *logbook.Summary) *logbook.Comparison {
	alone := sailedAlternative{Alternative: Alternative{Name: v.Plan.Title, Voyage: v}, summary: s}
	return &logbook.Comparison{Title: v.Plan.Title, Alternatives: []logbook.Alternative{alternativeOf(&alone)}, Reference: -1, Planned: -1}
}
