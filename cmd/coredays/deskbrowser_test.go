package main

import (
	"bytes"
	"encoding/json"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"

	"coredays/cmd/coredays/desk/desktest"
	"coredays/scenario"
)

// simulated is P50 of days needed as simulate gives it.
func simulated(t *testing.T, set string) string {
	t.Helper()
	var out, wrong bytes.Buffer
	if code := run(t.Context(), []string{"simulate", "--set", set, "--json", "-"}, &out, &wrong); code != exitOK {
		t.Fatal(wrong.String())
	}
	var answer any
	if err := json.Unmarshal(out.Bytes(), &answer); err != nil {
		t.Fatal(err)
	}
	return strconv.FormatFloat(figure(t, answer, "days_needed", "total", "p50"), 'g', -1, 64)
}

func TestAPlannerChangesComparesUndoesAndSaves(t *testing.T) {
	p := desktest.At(t, 1400, laid)
	before := p.Reads(desktest.P50OfDays)
	p.Does(chromedp.Click[string]("#pin"))
	p.Types("sites[0].water_depth", "3000 m")
	p.Refined()
	if got, want := p.Reads(desktest.P50OfDays), simulated(t, "sites[0].water_depth=3000 m"); got != want || got == before {
		t.Errorf("the page has %s days, simulate %s; before it was %s", got, want, before)
	}
	p.Waits(`document.getElementById("difference").textContent.includes("d less than the pinned plan")`)

	p.Types("sites[1].water_depth", "nonsense")
	p.Waits(`document.getElementById("f-sites[1].water_depth-fault").textContent.includes("nonsense")`)
	if hidden := p.Reads(`getComputedStyle(document.getElementById("answer")).visibility`); hidden != "hidden" {
		t.Error("an answer is shown for a plan with faults")
	}
	p.Does(chromedp.Click[string]("#undo"))
	p.Refined()
	p.Does(chromedp.Click[string]("#undo"))
	p.Refined()
	if got := p.Reads(desktest.P50OfDays); got != before {
		t.Errorf("undone, the page has %s days, before it was %s", got, before)
	}
	p.Does(chromedp.Click[string]("#redo"))
	p.Refined()
	p.Does(chromedp.Click[string]("#save"))
	p.Waits(`document.getElementById("said").textContent.startsWith("Saved")`)
	saved, err := os.ReadFile(p.File)
	if want := strings.Replace(string(scenario.DemonstrationText()), "3420 m", "3000 m", 1); err != nil || string(saved) != want {
		t.Errorf("saved was\n%s", saved)
	}
}
