package desk_test

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"coredays/cmd/coredays/desk/desktest"
)

// inQuotes is a file of the example of the look-ahead as a string of the page's language.
func inQuotes(t *testing.T, name string) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("../../../testdata/lookahead", name))
	if err != nil {
		t.Fatal(err)
	}
	quoted, err := json.Marshal(string(data))
	if err != nil {
		t.Fatal(err)
	}
	return string(quoted)
}

func TestALogIsChosenByKeyboardAloneOnANarrowScreen(t *testing.T) {
	p := desktest.At(t, 360, laid)
	p.Reads(`{const t = document.getElementById("text"); t.value = ` + inQuotes(t, "plan.yaml") + `; t.dispatchEvent(new Event("input", {bubbles: true})); "typed"}`)
	p.Refined()
	p.Tabs("#lookahead summary")
	p.Presses(kb.Enter)
	for _, paper := range []struct{ field, name string }{{"#paper-cores", "cores.csv"}, {"#paper-forecast", "forecast.csv"}, {"#paper-log", "log.csv"}} {
		file, err := filepath.Abs(filepath.Join("../../../testdata/lookahead", paper.name))
		if err != nil {
			t.Fatal(err)
		}
		back := chromedp.KeyModifiers(0)
		if paper.field == "#paper-log" { // the first of the fields: the log is chosen last, so that one morning page is made
			back = chromedp.KeyModifiers(chromedp.ModifierShift)
		}
		p.Tabs(paper.field, back)
		p.Chooses(file)
		p.Waits(`document.getElementById("aheadsaid").textContent.includes(` + strconv.Quote(paper.name) + `)`)
	}
	p.Waits(`document.querySelector("#ahead pre")`)
	if from := p.Reads(`document.getElementById("aheadsaid").textContent`); !strings.Contains(from, "cores.csv, forecast.csv, log.csv") {
		t.Errorf("it is made from %q", from)
	}
	p.Tabs("#ahead pre")
	if page := p.Reads(`document.activeElement.textContent`); !strings.Contains(page, "When to leave") {
		t.Errorf("the morning page says\n%s", page)
	}
	takesAPicture(t, p, "morning-360")
}

func TestALogDroppedOnThePageGivesTheMorningPage(t *testing.T) {
	p := desktest.At(t, 360, laid)
	p.Reads(`{const t = document.getElementById("text"); t.value = ` + inQuotes(t, "plan.yaml") + `; t.dispatchEvent(new Event("input", {bubbles: true})); "typed"}`)
	p.Refined()
	p.Tabs("#lookahead summary")
	p.Presses("\r")
	p.Tabs("#paper-log")
	p.Reads(`{const all = new DataTransfer(); all.items.add(new File([` + inQuotes(t, "log.csv") + `], "log.csv")); all.items.add(new File([` + inQuotes(t, "cores.csv") + `], "cores.csv"));
all.items.add(new File([` + inQuotes(t, "forecast.csv") + `], "forecast.csv")); document.body.dispatchEvent(new DragEvent("drop", {dataTransfer: all, bubbles: true, cancelable: true})); "dropped"}`)
	p.Waits(`document.querySelector("#ahead pre")`)
	if page := p.Reads(`document.querySelector("#ahead pre").textContent`); !strings.Contains(page, "leave") {
		t.Errorf("the morning page says\n%s", page)
	}
	p.Waits(`document.querySelectorAll("#ahead figure img").length == 2 && !document.getElementById("aheadsaid").textContent.startsWith("Rough")`)
	if from := p.Reads(`document.getElementById("aheadsaid").textContent`); !strings.Contains(from, "log.csv, cores.csv, forecast.csv") {
		t.Errorf("it is made from %q", from)
	}
	if wide := p.Reads(`String(document.documentElement.scrollWidth)`); wide != "360" {
		t.Errorf("with the morning page the page is %s px wide in a window of 360", wide)
	}
}
