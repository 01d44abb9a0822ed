package desk

import (
	"coredays/model/coring"
	"coredays/scenario/lithology"
)

// offered is what the page offers to choose from: words for values by their key, and further keys of each
// kind of thing. Whatever is typed instead is read all the same.
type offered struct {
	Words map[string][]string `json:"words"`
	Keys  map[string][]string `json:"keys"`
}

func offers() offered {
	var tools []string
	for tool := range coring.Tools {
		tools = append(tools, tool.String())
	}
	lithologies, _ := lithology.BuiltIn()
	return offered{
		Words: map[string][]string{
			"priority": {"primary", "alternate"}, "datum": {"sea level", "rig floor"}, "move": {"pipe recovered", "pipe hanging"},
			"places": {"check only", "built in", "off"}, "lithology": lithology.Names(lithologies), "with": tools,
			"reentry": {"none", "free-fall funnel", "cone"}, "abandon": {"open", "heavy mud", "cement"}, "if_lost": {"retry", "give up"},
			"oriented": {"yes", "no"}, "interruptible": {"yes", "no"},
		},
		Keys: map[string][]string{
			"site":  {"datum", "via", "cap", "move", "places", "not_before", "not_after", "refusal", "unusable", "weather"},
			"layer": {"side_shear", "rock_strength", "drilling_rate", "drilling_ahead_rate", "recovery"},
			"hole":  {"start_offset", "drill_ahead_to", "oriented", "temperature", "penetrometer", "logging", "reentry", "abandon", "if_lost", "when"},
			"task":  {"sea_limit", "interruptible", "when"},
		},
	}
}
