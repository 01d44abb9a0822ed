package listing

import "fmt"

// mostTold is how many differences are given; the rest is counted.
const mostTold = 3

// Differences says in what one list differs from another, a sentence each and not more than a few. It is empty where the lists
// are the same.
func Differences(one, other []Line) (list []string) {
	of := map[string]string{}
	for _, line := range other {
		of[line.Path] = line.Value
	}
	var all []string
	for _, line := range one {
		value, stated := of[line.Path]
		delete(of, line.Path)
		switch {
		case !stated:
			all = append(all, fmt.Sprintf("%s is %s in the one and not stated in the other", line.Path, line.Value))
		case value != line.Value:
			all = append(all, fmt.Sprintf("%s is %s in the one and %s in the other", line.Path, line.Value, value))
		}
	}
	for _, line := range other {
		if value, left := of[line.Path]; left {
			all = append(all, fmt.Sprintf("%s is %s in the other and not stated in the one", line.Path, value))
		}
	}
	if len(all) > mostTold {
		return append(all[:mostTold:mostTold], fmt.Sprintf("%d more figures differ", len(all)-mostTold))
	}
	return all
}
