package main

import (
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"coredays/scenario"
)

// tabs presses Tab, or Shift and Tab, until what a selector names has the focus: nothing is clicked or focused by script.
func (p planner) tabs(selector string, options ...chromedp.KeyOption) {
	p.Helper()
	for range 600 {
		if p.reads(`String(document.activeElement.matches(`+strconv.Quote(selector)+`))`) == "true" {
			return
		}
		p.does(chromedp.KeyEvent(kb.Tab, options...))
	}
	p.Fatalf("Tab does not lead to %s", selector)
}

func (p planner) presses(keys string, options ...chromedp.KeyOption) {
	p.Helper()
	p.does(chromedp.KeyEvent(keys, options...))
}

// overtypes puts a value into the field that has the focus.
func (p planner) overtypes(value string) {
	p.Helper()
	p.presses("a", chromedp.KeyModifiers(chromedp.ModifierCtrl))
	p.presses(value)
}

func TestAPlannerDoesAllByKeyboardOnANarrowScreen(t *testing.T) {
	p := atTheDesk(t, 360)
	if wide := p.reads(`String(document.documentElement.scrollWidth)`); wide != "360" {
		t.Errorf("the page is %s px wide in a window of 360", wide)
	}
	if nameless := p.reads(`[...document.querySelectorAll("input, button, textarea, summary, select, img")].filter(e => !(e.labels?.length || e.getAttribute("aria-label") || e.alt || e.textContent.trim())).map(e => e.outerHTML).join("\n")`); nameless != "" {
		t.Errorf("without a name for screen readers: %s", nameless)
	}
	if twice := p.reads(`{const ids = [...document.querySelectorAll("[id]")].map(e => e.id); ids.filter((e, n) => ids.indexOf(e) != n).join(" ")}`); twice != "" {
		t.Errorf("ids that are there twice: %s", twice)
	}
	before := p.reads(p50OfDays)
	control := chromedp.KeyModifiers(chromedp.ModifierCtrl)

	p.tabs("#pin")
	p.presses(kb.Enter)
	p.waits(`document.getElementById("difference").textContent.includes("Pinned")`)

	p.tabs(`[id="f-sites[1].water_depth"]`) // the sites stand in their order on the page: SB-03, SB-02
	p.overtypes("nonsense")
	p.waits(`document.activeElement.getAttribute("aria-invalid") == "true" && document.getElementById("faults").textContent.includes("nonsense")`)
	if said := p.reads(`document.getElementById(document.activeElement.getAttribute("aria-describedby")).textContent`); !strings.Contains(said, "nonsense") || !strings.Contains(said, "length") {
		t.Errorf("beside the field stands %q", said)
	}
	p.overtypes("2500 m")
	p.refined()
	p.waits(`document.getElementById("difference").textContent.includes("d less than the pinned plan") || document.getElementById("difference").textContent.includes("within the noise")`)

	p.tabs("[aria-label='Site SB-02 later']")
	p.presses(kb.Enter)
	p.waits(`document.getElementById("text").value.includes("order: [SB-03, SB-01, SB-02, SB-04, SB-05]")`)
	if at := p.reads(`document.activeElement.getAttribute("aria-label")`); at != "Site SB-02 later" {
		t.Errorf("the focus went to %q", at)
	}
	p.refined()

	p.tabs(`[data-fold="sites[1].holes"] summary`)
	p.presses(kb.Enter)
	p.tabs(`[id="f-sites[1].holes[2].left_out"]`)
	p.presses(" ")
	p.waits(`document.getElementById("text").value.includes("left_out: yes")`)
	p.refined()
	without := p.reads(p50OfDays)
	if a, b := number(t, without), number(t, before); a >= b-0.5 {
		t.Errorf("without hole C the programme needs %g days, with it %g", a, b)
	}
	p.presses("z", control)
	p.waits(`!document.getElementById("text").value.includes("left_out: yes")`)
	p.presses("y", control)
	p.waits(`document.getElementById("text").value.includes("left_out: yes")`)
	p.refined()

	p.tabs("#cuts")
	p.presses(kb.Enter)
	p.waits(`document.querySelector("#found button") != null`)
	p.tabs("#found button")
	took := p.reads(`document.activeElement.getAttribute("aria-label").replace("Take over: ", "")`)
	p.presses(kb.Enter)
	p.waits(`document.querySelector("#history [aria-current] .link").textContent == ` + strconv.Quote(took))
	p.refined()
	p.presses("z", control)
	p.refined()

	p.tabs("#stepname", chromedp.KeyModifiers(chromedp.ModifierShift))
	p.overtypes("Without C")
	p.presses(kb.Tab)
	p.waits(`document.querySelector("#history [aria-current]").textContent.includes("Without C")`)

	p.presses("s", control)
	p.waits(`document.getElementById("said").textContent.startsWith("Saved")`)
	saved, err := os.ReadFile(p.file)
	if err != nil {
		t.Fatal(err)
	}
	for _, line := range strings.Split(string(scenario.DemonstrationText()), "\n") {
		if i := strings.Index(line, "#"); i >= 0 && !strings.Contains(string(saved), line[i:]) {
			t.Errorf("the comment %q is lost", line[i:])
		}
	}
	if !strings.Contains(string(saved), "2500 m") || !strings.Contains(string(saved), "left_out: yes") {
		t.Errorf("saved was\n%s", saved)
	}
}

func number(t *testing.T, text string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}
