package lookahead

import (
	"strings"
	"testing"
)

// A log to be drawn is read as the look-ahead reads it: the same lines, and what contradicts the plan refused alike. A hole
// that is begun again is drawn so, and said.
func TestALogToBeDrawnIsThatOfTheLookAhead(t *testing.T) {
	p, f := expedition(t)
	log, err := Logged(p, f.Log)
	if err != nil {
		t.Fatal(err)
	}
	stay, visited := log.At("PR-1")
	if !visited || len(stay.Ways) != 2 || stay.Ways[0].Deepest() != 320 || stay.Ways[1].Hole != "B" {
		t.Errorf("PR-1: %v %+v", visited, stay.Ways)
	}
	if notes := strings.Join(log.Notes, "\n"); !strings.Contains(notes, "hole B of site PR-1 was begun again on line 43") {
		t.Errorf("notes %q", notes)
	}
	bad := File{"log.csv", []byte(strings.Replace(string(f.Log.Data), "PR-2,A,", "PR-9,A,", 1))}
	_, drawn := Logged(p, bad)
	_, _, ahead := Read(p, Papers{Log: bad})
	if drawn == nil || ahead == nil || drawn.Error() != ahead.Error() {
		t.Errorf("drawn %v, look-ahead %v", drawn, ahead)
	}
}
