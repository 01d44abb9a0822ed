package spread

import (
	"fmt"
	"strings"
)

// Level is where a spread lives: independent draws at a low level average out over an
// expedition, one draw for the whole expedition does not.
type Level int

// The levels, from the widest to the narrowest.
const (
	Expedition Level = iota // one draw for crew, ship and season
	Site                    // one draw a site: the ground differs from the survey
	Hole                    // one draw a hole
	Run                     // one draw each time: a core, a trip, a connection
	Levels
)

var levelNames = [Levels]string{"expedition", "site", "hole", "run"}

func (l Level) String() string { return levelNames[l] }

// ParseLevel reads the name of a level.
func ParseLevel(text string) (Level, error) {
	for l, name := range levelNames {
		if name == text {
			return Level(l), nil
		}
	}
	return 0, fmt.Errorf("is none of %s", strings.Join(levelNames[:], ", "))
}

// Shares is the share of the variance of the normal score at each level. They add up to 1.
type Shares [Levels]float64

// All puts the whole spread at one level.
func All(l Level) Shares {
	var s Shares
	s[l] = 1
	return s
}

func (s Shares) String() string {
	var parts []string
	for l, share := range s {
		if share > 0 {
			parts = append(parts, fmt.Sprintf("%.0f %% %s", 100*share, Level(l)))
		}
	}
	return strings.Join(parts, ", ")
}
