package result

import (
	"math"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"coredays/model/unit"
)

// hour is a line that begins so many hours after the log does.
func hour(h float64, site, hole string, depth unit.Depth) LogLine {
	return LogLine{time.Date(2031, 5, 1, 0, 0, 0, 0, time.UTC).Add(time.Duration(h * float64(time.Hour))), site, hole, depth}
}

var none = unit.Depth(math.NaN())

func TestAHoleNeverGetsShallowerAndItsTimeCountsFromTheArrival(t *testing.T) {
	log := Log{Lines: []LogLine{hour(0, "", "", none), hour(5, "S", "", none), hour(6, "S", "A", -30), hour(7, "S", "A", 0), hour(8, "S", "A", 9.5),
		hour(9, "S", "A", 4), hour(10, "S", "A", none), hour(11, "S", "A", 9.5), hour(12, "S", "A", 9.5), hour(13, "S", "A", 19), hour(14, "", "", none)}}
	stay, visited := log.At("S")
	want := []Way{{"A", []WayPoint{{2 * 3600, 0}, {3 * 3600, 9.5}, {7 * 3600, 9.5}, {8 * 3600, 19}}}}
	if d := cmp.Diff(want, stay.Ways); d != "" || !visited {
		t.Errorf("visited %t (-want +got):\n%s", visited, d)
	}
	if got := stay.Until.Sub(stay.Arrives).Hours(); got != 8 {
		t.Errorf("at the site for %g h, want 8", got)
	}
	for depth, after := range map[unit.Depth]float64{0: 2, 5: 3, 9.5: 3, 12: 8, 19.4: 8} {
		if got, came := stay.Ways[0].CameTo(depth); !came || got != after*3600 {
			t.Errorf("came to %g m after %g s, want %g h", float64(depth), got, after)
		}
	}
	if _, came := stay.Ways[0].CameTo(19.6); came {
		t.Error("came deeper than the log has it")
	}
}

// While a hole is in hand its line goes on; once another is begun it ends where it came to its depth.
func TestOnlyTheHoleInHandLiesAtItsDepthToTheEndOfTheLog(t *testing.T) {
	lines := []LogLine{hour(0, "S", "A", 0), hour(1, "S", "A", 20), hour(4, "S", "A", 20)}
	inHand, _ := (&Log{Lines: lines}).At("S")
	if d := cmp.Diff([]WayPoint{{0, 0}, {3600, 20}, {4 * 3600, 20}}, inHand.Ways[0].Points); d != "" {
		t.Errorf("in hand (-want +got):\n%s", d)
	}
	for _, next := range []LogLine{hour(6, "S", "B", 0), hour(6, "T", "A", 0), hour(6, "", "", none)} {
		done, _ := (&Log{Lines: append(lines[:3:3], next)}).At("S")
		if d := cmp.Diff([]WayPoint{{0, 0}, {3600, 20}}, done.Ways[0].Points); d != "" {
			t.Errorf("done with (-want +got):\n%s", d)
		}
	}
}

func TestASiteThatTheLogDoesNotHaveWasNotVisited(t *testing.T) {
	log := Log{Lines: []LogLine{hour(0, "S", "A", 3)}}
	if stay, visited := log.At("T"); visited || stay.Ways != nil {
		t.Errorf("visited: %+v", stay)
	}
}

// A hand-kept log describes a depth now and then: between lines further apart than a core the hole deepens evenly.
func TestBetweenLinesFarApartAHoleDeepensEvenly(t *testing.T) {
	log := Log{Lines: []LogLine{hour(0, "S", "A", 0), hour(10, "S", "A", 100), hour(11, "S", "A", 109.5)}}
	stay, _ := log.At("S")
	for depth, after := range map[unit.Depth]float64{0: 0, 25: 2.5, 100: 10, 105: 11, 109.9: 11} {
		if got, came := stay.Ways[0].CameTo(depth); !came || math.Abs(got-after*3600) > 1e-6 {
			t.Errorf("came to %g m after %g h, want %g h", float64(depth), got/3600, after)
		}
	}
}

func TestTimeAwayFromASiteIsNoTimeAtIt(t *testing.T) {
	log := Log{Lines: []LogLine{hour(0, "S", "A", 0), hour(10, "S", "A", 9), hour(12, "", "", none), hour(20, "T", "A", 5), hour(30, "", "", none), hour(40, "S", "B", 0), hour(44, "S", "B", 8)}}
	stay, _ := log.At("S")
	if stay.Away != 28*3600 {
		t.Errorf("away for %g h, want 28", stay.Away/3600)
	}
	if got, _ := stay.Ways[1].CameTo(8); got != 16*3600 {
		t.Errorf("hole B came to 8 m after %g h at the site, want 16", got/3600)
	}
}
