package activity

import (
	"regexp"
	"testing"
)

// word is what a key of a file or of JSON looks like.
var word = regexp.MustCompile(`^[a-z]+(_[a-z]+)*$`)

// apart checks that texts are there and differ.
func apart(t *testing.T, what string, n int, text func(i int) string) {
	t.Helper()
	seen := map[string]int{}
	for i := range n {
		s := text(i)
		if other, twice := seen[s]; s == "" || twice {
			t.Errorf("%s %d is %q, as %d", what, i, s, other)
		}
		seen[s] = i
	}
}

func TestClassesCausesLimitsAndStopsAreNamedApart(t *testing.T) {
	apart(t, "class", int(Classes), func(i int) string { return Class(i).String() })
	apart(t, "key of class", int(Classes), func(i int) string { return Class(i).Key() })
	apart(t, "cause", int(Causes), func(i int) string { return Cause(i).String() })
	apart(t, "key of limit", int(Limits), func(i int) string { return Limit(i).Key() })
	apart(t, "stop", int(Restart)+1, func(i int) string { return Stop(i).String() })
}

func TestKeysAreWordsOfAFile(t *testing.T) {
	for c := range Classes {
		if !word.MatchString(c.Key()) {
			t.Errorf("class %v has the key %q", c, c.Key())
		}
	}
	for l := range Limits {
		if !word.MatchString(l.Key()) {
			t.Errorf("limit %d has the key %q", int(l), l.Key())
		}
	}
}

// The sentence "running pipe pauses after the unit in hand" must read so.
func TestStopsSayWhatBecomesOfTheWork(t *testing.T) {
	for s, want := range map[Stop]string{Pause: "pauses", NextUnit: "pauses after the unit in hand", FinishFirst: "is finished first",
		Forfeit: "is given up", Restart: "begins again"} {
		if s.String() != want {
			t.Errorf("%d is %q, want %q", int(s), s, want)
		}
	}
	for kind, want := range map[Kind]Stop{CutCore: Pause, RunPipe: NextUnit, FetchBarrel: FinishFirst, TemperatureStop: Forfeit, RunString: Restart} {
		if got := kind.Of().Stop; got != want {
			t.Errorf("%v %v, but it %v", kind, got, want)
		}
	}
}
