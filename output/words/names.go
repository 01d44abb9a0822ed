package words

import (
	"fmt"
	"strconv"

	"coredays/model/result"
)

func Invented(s *result.Summary) string {
	if s.Invented {
		return " (invented demonstration)"
	}
	return ""
}

func Simulated(s *result.Summary) string {
	switch {
	case s.Replications == 0:
		return "no replication finished, so there is no answer"
	case s.Replications == 1:
		return "1 replication, which has no spread"
	case s.StoppedEarly:
		return fmt.Sprintf("%d replications, stopped early", s.Replications)
	}
	return fmt.Sprintf("%d replications", s.Replications)
}

func OrElse(text, otherwise string) string {
	if text == "" {
		return otherwise
	}
	return text
}

// OrLess keeps a part of a text under a condition.
func OrLess(text string, keep bool) string {
	if keep {
		return text
	}
	return ""
}

// NeverReached reports whether there are no days of a site to summarise.
func NeverReached(site *result.Site) bool { return site.Days.N < 1 }

// SiteName is the name, with a word on what an alternate is.
func SiteName(site *result.Site) string {
	name := OrElse(site.Name, "unnamed site")
	if site.Alternate {
		name += " (alternate)"
	}
	return name
}

// Ranks are those of a site's holes and tasks: "1", "1–3"; empty where it has none.
func Ranks(site *result.Site) string {
	if len(site.Holes) == 0 {
		return ""
	}
	low, high := site.Holes[0].Rank, site.Holes[0].Rank
	for _, h := range site.Holes {
		low, high = min(low, h.Rank), max(high, h.Rank)
	}
	if low == high {
		return strconv.Itoa(low)
	}
	return fmt.Sprintf("%d–%d", low, high)
}
