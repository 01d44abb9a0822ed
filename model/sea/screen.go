package sea

import (
	"math"
	"slices"
)

const (
	frozenAfter = 24 * 3600 // s for which a sea that is given to 0.1 m never keeps one height [judgement]
	frozenLater = 72 * 3600 // s, where heights are given more coarsely
	frozenLeast = 5         // readings
	fineStep    = 0.1001    // m between the heights stated
)

// screened puts readings in order of time and leaves out repeated times and frozen runs.
func screened(readings []reading, report *Report) []reading {
	for i := 1; i < len(readings); i++ {
		if readings[i].at < readings[i-1].at {
			report.note(Unordered, readings[i].line)
		}
	}
	slices.SortStableFunc(readings, func(a, b reading) int {
		switch {
		case a.at < b.at:
			return -1
		case a.at > b.at:
			return 1
		}
		return 0
	})
	kept := readings[:0]
	for _, r := range readings {
		if n := len(kept); n > 0 && kept[n-1].at == r.at {
			report.note(Duplicate, r.line)
			continue
		}
		kept = append(kept, r)
	}
	return thawed(kept, report)
}

// thawed leaves out runs of one height that are too long to be true: an instrument that is stuck.
func thawed(readings []reading, report *Report) []reading {
	limit := int64(frozenAfter)
	if stepOf(readings) > fineStep {
		limit = frozenLater
	}
	kept := readings[:0]
	for i := 0; i < len(readings); {
		j := i
		for j+1 < len(readings) && readings[j+1].height == readings[i].height && readings[j+1].at-readings[j].at <= frozenAfter {
			j++
		}
		if run := readings[i : j+1]; readings[j].at-readings[i].at >= limit && len(run) >= frozenLeast {
			for _, r := range run {
				report.note(Frozen, r.line)
			}
		} else {
			kept = append(kept, run...)
		}
		i = j + 1
	}
	return kept
}

// stepOf is the smallest difference between the heights stated, m.
func stepOf(readings []reading) float64 {
	heights := make([]float64, len(readings))
	for i, r := range readings {
		heights[i] = r.height
	}
	slices.Sort(heights)
	step := math.Inf(1)
	for i := 1; i < len(heights); i++ {
		if d := heights[i] - heights[i-1]; d > 1e-6 {
			step = min(step, d)
		}
	}
	return step
}
