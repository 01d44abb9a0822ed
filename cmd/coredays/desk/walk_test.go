package desk_test

import (
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"coredays/cmd/coredays/desk/desktest"
	"coredays/scenario"
)

func TestAPlannerDoesAllByKeyboardOnANarrowScreen(t *testing.T) {
	p := desktest.At(t, 360, laid)
	if wide := p.Reads(`String(document.documentElement.scrollWidth)`); wide != "360" {
		t.Errorf("the page is %s px wide in a window of 360", wide)
	}
	if nameless := p.Reads(`[...document.querySelectorAll("input, button, textarea, summary, select, img")].filter(e => !(e.labels?.length || e.getAttribute("aria-label") || e.alt || e.textContent.trim())).map(e => e.outerHTML).join("\n")`); nameless != "" {
		t.Errorf("without a name for screen readers: %s", nameless)
	}
	if twice := p.Reads(`{const ids = [...document.querySelectorAll("[id]")].map(e => e.id); ids.filter((e, n) => ids.indexOf(e) != n).join(" ")}`); twice != "" {
		t.Errorf("ids that are there twice: %s", twice)
	}
	before := p.Reads(desktest.P50OfDays)
	control := chromedp.KeyModifiers(chromedp.ModifierCtrl)

	p.Tabs("#pin")
	p.Presses(kb.Enter)
	p.Waits(`document.getElementById("difference").textContent.includes("Pinned")`)

	p.Tabs(`[id="f-sites[1].water_depth"]`) // the sites stand in their order on the page: SB-03, SB-02
	p.Overtypes("nonsense")
	p.Waits(`document.activeElement.getAttribute("aria-invalid") == "true" && document.getElementById("faults").textContent.includes("nonsense")`)
	if said := p.Reads(`document.getElementById(document.activeElement.getAttribute("aria-describedby")).textContent`); !strings.Contains(said, "nonsense") || !strings.Contains(said, "length") {
		t.Errorf("beside the field stands %q", said)
	}
	p.Overtypes("2500 m")
	p.Refined()
	if tried := p.Reads(`document.querySelector("#history [aria-current] .link").textContent`); tried != "site SB-02, water depth: 2500 m" {
		t.Errorf("what was tried is called %q", tried)
	}
	if cells := p.Reads(`[...document.querySelectorAll("#sites ~ .wide tbody tr:nth-child(2) > *")].map(e => e.textContent).join("|")`); !strings.HasPrefix(cells, "SB-02|") || strings.Count(cells, "|") != 7 {
		t.Errorf("the second row of the sites is %q", cells)
	}
	p.Waits(`document.getElementById("difference").textContent.includes("d less than the pinned plan") || document.getElementById("difference").textContent.includes("within the noise")`)

	p.Tabs("[aria-label='Site SB-02 later']")
	p.Presses(kb.Enter)
	p.Waits(`document.getElementById("text").value.includes("order: [SB-03, SB-01, SB-02, SB-04, SB-05]")`)
	if at := p.Reads(`document.activeElement.getAttribute("aria-label")`); at != "Site SB-02 later" {
		t.Errorf("the focus went to %q", at)
	}
	p.Refined()

	p.Tabs(`[data-fold="sites[1].holes"] summary`)
	p.Presses(kb.Enter)
	p.Tabs(`[id="f-sites[1].holes[2].left_out"]`)
	p.Presses(" ")
	p.Waits(`document.getElementById("text").value.includes("left_out: yes")`)
	p.Refined()
	without := p.Reads(desktest.P50OfDays)
	if a, b := number(t, without), number(t, before); a >= b-0.5 {
		t.Errorf("without hole C the programme needs %g days, with it %g", a, b)
	}
	p.Presses("z", control)
	p.Waits(`!document.getElementById("text").value.includes("left_out: yes")`)
	p.Presses("y", control)
	p.Waits(`document.getElementById("text").value.includes("left_out: yes")`)
	p.Refined()

	p.Tabs("#cuts")
	p.Presses(kb.Enter)
	p.Waits(`document.querySelector("#found button") != null`)
	p.Tabs("#found button")
	took := p.Reads(`document.activeElement.getAttribute("aria-label").replace("Take over: ", "")`)
	p.Presses(kb.Enter)
	p.Waits(`document.querySelector("#history [aria-current] .link").textContent == ` + strconv.Quote(took))
	p.Refined()
	p.Presses("z", control)
	p.Refined()

	p.Tabs("#orders", chromedp.KeyModifiers(chromedp.ModifierShift))
	p.Presses(kb.Enter)
	p.Waits(`document.querySelector("#found button") != null`)
	p.Tabs("#found button")
	order := p.Reads(`document.activeElement.getAttribute("aria-label").replace("Take over: ", "")`)
	p.Presses(kb.Enter)
	p.Waits(`document.querySelector("#history [aria-current] .link").textContent == ` + strconv.Quote(order))
	if text := p.Reads(`document.getElementById("text").value`); !strings.Contains(text, "order: ["+order) {
		t.Errorf("the order taken over is %q, and the plan does not say so", order)
	}
	p.Refined()
	takesAPicture(t, p, "orders-360")
	p.Presses("z", control)

	p.Tabs("#stepname", chromedp.KeyModifiers(chromedp.ModifierShift))
	p.Overtypes("Without C")
	p.Presses(kb.Tab)
	p.Waits(`document.querySelector("#history [aria-current]").textContent.includes("Without C")`)

	p.Presses("s", control)
	p.Waits(`document.getElementById("said").textContent.startsWith("Saved")`)
	saved, err := os.ReadFile(p.File)
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
