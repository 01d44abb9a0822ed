package choice

import (
	"coredays/model/result"
	"coredays/model/voyage"
)

// Track is a voyage by itself with its summary, for a map: a comparison of one.
func Track(v *voyage.Voyage, s *result.Summary) *result.Comparison {
	alone := sailedAlternative{Alternative: Alternative{Name: v.Plan.Title, Voyage: v}, summary: s}
	return &result.Comparison{Title: v.Plan.Title, Alternatives: []result.Alternative{alternativeOf(&alone)}, Reference: -1, Planned: -1}
}
