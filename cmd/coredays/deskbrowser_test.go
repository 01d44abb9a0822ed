package main

import (
	"bytes"
	"context"
	"encoding/json"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/chromedp"

	"coredays/scenario"
)

// planner sits at a desk with a plan of her own.
type planner struct {
	*testing.T
	ctx  context.Context
	file string
	// address of the page, with its secret.
	address string
}

func atTheDesk(t *testing.T, width int64) planner {
	t.Helper()
	browser := chromium(t)
	file := filepath.Join(t.TempDir(), "plan.yaml")
	if err := os.WriteFile(file, scenario.DemonstrationText(), 0o644); err != nil {
		t.Fatal(err)
	}
	d := laid(file)
	server := httptest.NewServer(d.Handler())
	t.Cleanup(server.Close)
	options := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(browser), chromedp.NoSandbox, chromedp.Flag("disable-gpu", true))
	ctx, end := chromedp.NewExecAllocator(t.Context(), options...)
	t.Cleanup(end)
	ctx, close := chromedp.NewContext(ctx)
	t.Cleanup(close)
	ctx, late := context.WithTimeout(ctx, 10*time.Minute)
	t.Cleanup(late)
	p := planner{t, ctx, file, server.URL + d.Path()}
	p.does(chromedp.EmulateViewport(width, 1000), chromedp.Navigate(p.address))
	p.refined()
	return p
}

func (p planner) does(actions ...chromedp.Action[chromedp.Void]) {
	p.Helper()
	if err := chromedp.Do(p.ctx, actions...); err != nil {
		p.Fatal(err)
	}
}

// waits waits until an expression of the page holds.
func (p planner) waits(expression string) {
	p.Helper()
	for p.ctx.Err() == nil {
		if p.reads("String(Boolean("+expression+"))") == "true" {
			return
		}
		time.Sleep(50 * time.Millisecond)
	}
	p.Fatalf("%s does not come true", expression)
}

func (p planner) refined() {
	p.Helper()
	p.waits(`document.getElementById("state").textContent.startsWith("2,000 expeditions") && !document.getElementById("answer").classList.contains("stale")`)
}

// reads evaluates an expression to a text.
func (p planner) reads(expression string) string {
	p.Helper()
	text, err := chromedp.Run(p.ctx, chromedp.Evaluate[string](expression))
	if err != nil {
		p.Fatalf("%s: %v", expression, err)
	}
	return text
}

// types puts a value into the field of a path with the keyboard alone.
func (p planner) types(path, value string) {
	p.Helper()
	p.waits(`document.getElementById(` + strconv.Quote("f-"+path) + `)`)
	p.reads(`{const i = document.getElementById(` + strconv.Quote("f-"+path) + `); i.focus(); i.select(); i.id}`)
	p.does(chromedp.KeyEvent(value))
	p.waits(`document.getElementById("text").value.includes(` + strconv.Quote(value) + `)`)
}

const p50OfDays = `document.querySelector("#answer dd").dataset.exact`

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
	p := atTheDesk(t, 1400)
	before := p.reads(p50OfDays)
	p.does(chromedp.Click[string]("#pin"))
	p.types("sites[0].water_depth", "3000 m")
	p.refined()
	if got, want := p.reads(p50OfDays), simulated(t, "sites[0].water_depth=3000 m"); got != want || got == before {
		t.Errorf("the page has %s days, simulate %s; before it was %s", got, want, before)
	}
	p.waits(`document.getElementById("difference").textContent.includes("d less than the pinned plan")`)

	p.types("sites[1].water_depth", "nonsense")
	p.waits(`document.getElementById("f-sites[1].water_depth-fault").textContent.includes("nonsense")`)
	if hidden := p.reads(`getComputedStyle(document.getElementById("answer")).visibility`); hidden != "hidden" {
		t.Error("an answer is shown for a plan with faults")
	}
	p.does(chromedp.Click[string]("#undo"))
	p.refined()
	p.does(chromedp.Click[string]("#undo"))
	p.refined()
	if got := p.reads(p50OfDays); got != before {
		t.Errorf("undone, the page has %s days, before it was %s", got, before)
	}
	p.does(chromedp.Click[string]("#redo"))
	p.refined()
	p.does(chromedp.Click[string]("#save"))
	p.waits(`document.getElementById("said").textContent.startsWith("Saved")`)
	saved, err := os.ReadFile(p.file)
	if want := strings.Replace(string(scenario.DemonstrationText()), "3420 m", "3000 m", 1); err != nil || string(saved) != want {
		t.Errorf("saved was\n%s", saved)
	}
}

func TestAPlannerDragsASiteAndTakesAnOrderOver(t *testing.T) {
	p := atTheDesk(t, 1400)
	p.reads(`{
const card = name => document.querySelector("[data-site=" + name + "]"), data = new DataTransfer();
card("SB-01").dispatchEvent(new DragEvent("dragstart", {dataTransfer: data, bubbles: true}));
card("SB-03").dispatchEvent(new DragEvent("drop", {dataTransfer: data, bubbles: true, cancelable: true}));
"dropped"}`)
	p.waits(`document.getElementById("text").value.includes("order: [SB-01, SB-03, SB-02, SB-04, SB-05]")`)
	p.refined()
	before := p.reads(p50OfDays)
	p.reads(`document.getElementById("f-sites[0].holes[1].left_out").click(), "hole B left out"`)
	p.waits(`document.querySelectorAll("#history li").length == 3`)
	p.refined()
	if after := p.reads(p50OfDays); len(after) < 3 || after[:2] >= before[:2] {
		t.Errorf("without hole B the programme needs %s days, with it %s", after, before)
	}
	if names := p.reads(`document.querySelector("#chart-track img").alt`); !strings.Contains(names, "SB-05") {
		t.Errorf("the map is of %q", names)
	}
	p.does(chromedp.Click[string]("#undo"))
	p.refined()
	p.does(chromedp.Click[string]("#orders"))
	p.waits(`document.querySelector("#found button") != null`)
	wanted := p.reads(`document.querySelector("#found strong").textContent`)
	p.does(chromedp.Click[string]("#found button"))
	p.waits(`[...document.querySelectorAll("#history .link")].at(-1).textContent == ` + strconv.Quote(wanted))
	p.refined()
}

// TestTheDeskIsPictured writes pictures of the page for people to look at, where DESK_PICTURES names a folder.
func TestTheDeskIsPictured(t *testing.T) {
	folder := os.Getenv("DESK_PICTURES")
	if folder == "" {
		t.Skip("DESK_PICTURES names no folder")
	}
	for _, width := range []int64{360, 800, 1600} {
		p := atTheDesk(t, width)
		picture, err := chromedp.Run(p.ctx, chromedp.FullScreenshot(100))
		if err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(folder, strconv.FormatInt(width, 10)+".png"), picture, 0o644); err != nil {
			t.Fatal(err)
		}
	}
}
