package text

import (
	"fmt"
	"strings"

	"coredays/model/check"
	"coredays/model/result"
	"coredays/output/words"
)

// hardest is what of a plan comes nearest to what ship and string bear, or is furthest beyond it, and which share of
// that it takes; nil where nothing was held against it.
func hardest(found []check.Finding) (most *check.Finding, share float64) {
	for i := range found {
		f := &found[i]
		if !f.Borne || !(f.Value > 0 && f.Limit > 0) {
			continue
		}
		taken := f.Value / f.Limit
		if f.Least {
			taken = f.Limit / f.Value
		}
		if taken > share {
			most, share = f, taken
		}
	}
	return most, share
}

// hardestFigures say it: "weight on bit for basalt, 20 of at most 30.2 klbf, SB-04 C".
func hardestFigures(f *check.Finding) string {
	value, limit := apart(f.Value, f.Limit)
	most := "of at most"
	if f.Least {
		most = "of at least"
	}
	return fmt.Sprintf("%s, %s %s %s%s", f.What, value, most, withUnit(limit, f.Unit), words.OrLess(", "+strings.TrimSpace(f.Site+" "+f.Hole), f.Site != ""))
}

// HardestWords say what comes nearest to a limit of rig and string in a sentence; empty where nothing was looked at.
func HardestWords(found []check.Finding) string {
	f, _ := hardest(found)
	if f == nil {
		return ""
	}
	return "Nearest to a limit of rig and string: " + hardestFigures(f) + "."
}

// MoreFacts are what laboratory, reviewer and driller ask first.
func MoreFacts(s *result.Summary, found []check.Finding) (list []Fact) {
	if s.Replications == 0 {
		return nil
	}
	if d := &s.Deck; d.MostCores.N > 0 {
		f := spreadFact("cores on the busiest day", d.MostCores, 0, "")
		f.Value, f.Note = strings.TrimSpace(f.Value), strings.TrimSpace(f.Note)
		if f.Note != "" {
			f.Note += "; "
		}
		f.Note += "laboratory " + words.Fixed(words.Middle(words.InHours(d.Behind)), 0) + " h behind at most"
		list = append(list, f)
	}
	stops := len(check.Of(found, check.Stop))
	list = append(list, Fact{"check of the plan", many(stops, "stop"), words.Exact(float64(stops)), many(len(check.Of(found, check.Caution)), "caution")})
	if f, share := hardest(found); f != nil {
		list = append(list, Fact{"rig and string, nearest to a limit", words.Percent(share) + " %", words.Exact(share), hardestFigures(f)})
	}
	return list
}

// CoreWords say what the whole programme brings up; empty where nothing was cored.
func CoreWords(r *result.Recovery) string {
	if r.Recovered.N == 0 || !(r.Cored.Mean > 0) {
		return ""
	}
	return fmt.Sprintf("Core %s m, %s %% of what is cored, in %s cores.", words.Ranged(r.Recovered, 0), words.Ranged(r.Percent, 0), words.Ranged(r.Cores, 0))
}
