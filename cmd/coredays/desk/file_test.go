package desk_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"

	"coredays/cmd/coredays/desk/desktest"
	"coredays/scenario"
)

func TestTwoWindowsOnAPlanAgreeOrSaySo(t *testing.T) {
	p := desktest.At(t, 1400, laid)
	q := p.Another()
	q.Types("sea_days", "60 d")
	q.Does(chromedp.Click[string]("#save"))
	q.Waits(`document.getElementById("said").textContent.startsWith("Saved")`)
	p.Waits(`document.getElementById("text").value.includes("sea_days: 60 d")`) // nothing was unsaved there: it follows
	p.Refined()

	p.Types("sea_days", "61 d")
	q.Types("sea_days", "62 d")
	p.Does(chromedp.Click[string]("#save"))
	p.Waits(`document.getElementById("said").textContent.startsWith("Saved")`)
	q.Waits(`document.getElementById("said").textContent.includes("changed elsewhere")`)
	q.Does(chromedp.Click[string]("#save"))
	q.Waits(`!document.getElementById("conflict").hidden && document.querySelector("#conflict textarea").value.includes("sea_days: 61 d")`)
	if saved, err := os.ReadFile(p.File); err != nil || !strings.Contains(string(saved), "sea_days: 61 d") {
		t.Errorf("what the first window saved is lost: %v", err)
	}
	q.Does(chromedp.Click[string]("#conflict button:last-of-type"))
	q.Waits(`document.getElementById("said").textContent.startsWith("Saved")`)
	if saved, err := os.ReadFile(p.File); err != nil || !strings.Contains(string(saved), "sea_days: 62 d") {
		t.Errorf("what was saved knowingly is not there: %v", err)
	}
}

func TestAPlannerAddsTakesOutAndSavesUnderAnotherName(t *testing.T) {
	p := desktest.At(t, 1400, laid)
	clicks := func(name string) {
		t.Helper()
		p.Waits(`[...document.querySelectorAll("#fields button")].some(b => (b.getAttribute("aria-label") ?? b.textContent) == "` + name + `")`)
		p.Waits(`document.getElementById("state").textContent.includes("expeditions simulated")`)
		before := p.Reads(`document.getElementById("text").value`)
		p.Reads(`{const b = [...document.querySelectorAll("#fields button")].find(b => (b.getAttribute("aria-label") ?? b.textContent) == "` + name + `"); b.click(); "clicked"}`)
		p.Waits(`document.getElementById("text").value != ` + jsString(before) + ` && document.getElementById("faults").children.length == 0`)
	}
	clicks("Add a site")
	clicks("Add a hole at SB-06")
	clicks("Add a task at SB-06")
	clicks("Add a stage to SB-06 hole A")
	p.Types("sites[5].holes[0].core[1].to", "240 mbsf")
	p.Types("sites[5].position", "50 10.0S 165 00.0E")
	clicks("Add a layer at SB-06")
	p.Types("sites[5].layers[1].bottom", "300 mbsf")
	p.Refined()
	if sites := p.Reads(`document.getElementById("answer").textContent`); !strings.Contains(sites, "SB-06") {
		t.Error("the new site is not in the answer")
	}
	clicks("Take out SB-06 hole B")
	clicks("Take out site SB-04")
	p.Refined()
	if text := p.Reads(`document.getElementById("text").value`); strings.Contains(text, "SB-04, ") || strings.Contains(text, "order_rules") {
		t.Error("the site that is taken out has left its place in the order or its rules")
	}

	p.Reads(`{const n = document.getElementById("savename"); document.getElementById("saveas").click(); n.value = "other.yaml"; "asked"}`)
	p.Does(chromedp.Click[string]("#saveform button"))
	p.Waits(`document.getElementById("said").textContent.startsWith("Saved")`)
	saved, err := scenario.Open(filepath.Join(filepath.Dir(p.File), "other.yaml"))
	if err != nil || len(saved.Sites) != 5 {
		t.Fatalf("saved under another name: %v", err)
	}
	if own, err := os.ReadFile(p.File); err != nil || string(own) != string(scenario.DemonstrationText()) {
		t.Errorf("the plan's own file was changed: %v", err)
	}
}

func TestAPlannerTakesReportAndSpreadsheetAndPrints(t *testing.T) {
	p := desktest.At(t, 1400, laid)
	p.Reads(`{window.kept = {}; URL.createObjectURL = b => { b.arrayBuffer().then(a => { kept[b.type] = new TextDecoder("latin1").decode(a); }); return "data:,"; }; "watched"}`)
	p.Does(chromedp.Click[string]("#report"))
	p.Waits(`Object.keys(kept).some(k => k.startsWith("text/html") && kept[k].includes("Skua Bank drift transect"))`)
	p.Does(chromedp.Click[string]("#workbook"))
	p.Waits(`Object.keys(kept).some(k => k.includes("spreadsheet") && kept[k].startsWith("PK"))`)
	p.Refined()
	if print, err := chromedp.Run(p.Ctx, chromedp.PrintToPDF()); err != nil || len(print) < 20_000 || !strings.HasPrefix(string(print), "%PDF") {
		t.Errorf("printed are %d bytes, %v", len(print), err)
	} else if folder := os.Getenv("DESK_PICTURES"); folder != "" {
		if err := os.WriteFile(filepath.Join(folder, "printed.pdf"), print, 0o644); err != nil {
			t.Error(err)
		}
	}
	p.Reads(`{document.getElementById("check").querySelector("details").open = true; document.querySelector("#check button").click(); "went"}`)
	p.Waits(`document.getElementById("fields").contains(document.activeElement)`)
}

func jsString(text string) string {
	return "`" + strings.NewReplacer("\\", "\\\\", "`", "\\`", "$", "\\$").Replace(text) + "`"
}
