package activity

import "testing"

// most is the room that a printed diary has for what the ship does.
const most = 22

func TestEveryKindHasANameOfItsOwnThatFitsADiary(t *testing.T) {
	seen := map[string]Kind{}
	for k := range Kinds {
		name := k.String()
		if name == "" || len([]rune(name)) > most || name != k.Of().Name {
			t.Errorf("kind %d is named %q, %d letters", int(k), name, len([]rune(name)))
		}
		if other, twice := seen[name]; twice {
			t.Errorf("kinds %d and %d are both named %q", int(other), int(k), name)
		}
		seen[name] = k
	}
}

func TestEveryKindCountsToAClassACauseAndALimit(t *testing.T) {
	for k := range Kinds {
		is := k.Of()
		if is.Class < 0 || is.Class >= Classes || is.Limit < 0 || is.Limit >= Limits || is.Cause < 0 || is.Cause >= Causes || is.Stop < Pause || is.Stop > RestartAtSea {
			t.Errorf("%v is %+v", k, *is)
		}
	}
}

// A class, cause or limit that no kind has would be an empty line in every answer, or a limit without work.
func TestEveryClassCauseAndLimitHasAKind(t *testing.T) {
	var classes [Classes]int
	var causes [Causes]int
	var limits [Limits]int
	for k := range Kinds {
		classes[k.Of().Class]++
		causes[k.Of().Cause]++
		limits[k.Of().Limit]++
	}
	for c, n := range classes {
		if n == 0 {
			t.Errorf("no kind counts to %v", Class(c))
		}
	}
	for c, n := range causes {
		if n == 0 {
			t.Errorf("no kind has the cause %v", Cause(c))
		}
	}
	for l, n := range limits {
		if n == 0 {
			t.Errorf("no kind has the limit %s", Limit(l).Key())
		}
	}
}

// Waiting must not itself wait for the sea, and repair and weather are given apart from work.
func TestWaitingAndRepairHaveNoLimitOfSea(t *testing.T) {
	for k := range Kinds {
		is := k.Of()
		if (is.Class == Waiting || is.Class == Repair) && is.Limit != AnySea {
			t.Errorf("%v waits for the sea itself", k)
		}
		if (k == WaitOnWeather) != (is.Class == Waiting) || (is.Class == Waiting) != (is.Cause == OfWeather) {
			t.Errorf("%v: class %v, cause %v", k, is.Class, is.Cause)
		}
		if is.Class == Repair && is.Cause != OfTrouble && is.Cause != OfBreakdowns {
			t.Errorf("%v is repair because of %v", k, is.Cause)
		}
	}
}

func TestSailingAndPilotageAreOfSailing(t *testing.T) {
	for k := range Kinds {
		if is := k.Of(); (is.Class == Sailing || is.Class == Port) && is.Cause != OfSailing {
			t.Errorf("%v has the cause %v", k, is.Cause)
		}
	}
}
