package main

import (
	"bytes"
	"context"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"coredays/scenario/records"
	"coredays/sim"
)

// toldSites reads the whole extract with the lithology of one of its holes invented: of that site alone the score is told.
func toldSites(t *testing.T, class string) *readyToScore {
	t.Helper()
	sites, _, err := holesOf("")
	if err != nil {
		t.Fatal(err)
	}
	for _, s := range sites {
		if s.DeepestTool().String() == "RCB" {
			file := filepath.Join(t.TempDir(), "runs.csv")
			text := "leg,hole,top_m,bottom_m,lithology\n" + s.Leg + "," + s.Name + s.Holes[0].Name + ",0,2000," + class + "\n"
			if err := os.WriteFile(file, []byte(text), 0o600); err != nil {
				t.Fatal(err)
			}
			h := hindcasting{level: records.Ground.String(), ground: file}
			r, err := h.read("", sim.Run{Seed: 1, Replications: 20}, io.Discard)
			if err != nil {
				t.Fatal(err)
			}
			return r
		}
	}
	t.Fatal("the extract has no rotary site")
	return nil
}

// A class that nothing is said of tells nothing: told and untold are then the same, and are not where something is said.
func TestASiteToldItsGroundIsScoredBesideTheSameUntold(t *testing.T) {
	for class, same := range map[string]bool{"chalk": false, "unheard of": true} {
		result, err := toldSites(t, class).sail(context.Background())
		if err != nil {
			t.Fatal(err)
		}
		g := result.Ground
		if g == nil || len(g.Sites) != 1 || (g.CRPS == g.Untold) != same {
			t.Errorf("%s: %+v, want one site, its scores equal: %v", class, g, same)
		}
	}
}

// The level and its table go together.
func TestTheLevelGroundNeedsATableOfLithologies(t *testing.T) {
	for _, args := range [][]string{{"hindcast", "--level", "ground"}, {"hindcast", "--lithology", "runs.csv"}} {
		var out, errs bytes.Buffer
		if code := run(context.Background(), args, &out, &errs); code != 2 || !strings.Contains(errs.String(), "--lithology") {
			t.Errorf("%v: exit %d, %q; want 2 and --lithology named", args, code, errs.String())
		}
	}
}
