package main

import (
	"encoding/json"
	"html"
	"io"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"time"

	"coredays/cmd/coredays/desk/desktest"
)

// probe is run in the page by the browser. It collects what a reader meets: headings, the figures of
// the headline, texts with too little contrast, what was fetched, and how wide the page became.
const probe = `<script>addEventListener("load", () => {
const lin = v => (v /= 255) <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
const rgb = c => c.match(/[\d.]+/g).map(Number);
const lum = c => 0.2126 * lin(c[0]) + 0.7152 * lin(c[1]) + 0.0722 * lin(c[2]);
const ground = e => { for (; e; e = e.parentElement) { const c = rgb(getComputedStyle(e).backgroundColor); if (c.length < 4 || c[3] > 0) return c; } return [255, 255, 255]; };
document.querySelectorAll("details").forEach(d => d.open = true);
let texts = 0, pale = [];
document.querySelectorAll("body *").forEach(e => {
  if (![...e.childNodes].some(n => n.nodeType == 3 && n.data.trim()) || ["SCRIPT", "TITLE", "DESC", "STYLE", "title", "desc"].includes(e.tagName)) return;
  const style = getComputedStyle(e), svg = e instanceof SVGElement;
  const a = lum(rgb(svg ? style.fill : style.color)), b = lum(svg ? [255, 255, 255] : ground(e));
  const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  texts++;
  if (ratio < 4.5) pale.push(e.tagName + " " + e.textContent.slice(0, 30) + " " + ratio.toFixed(2));
});
const out = document.createElement("pre");
out.id = "probe";
out.textContent = JSON.stringify({
  headings: [...document.querySelectorAll("h1,h2,h3")].map(h => h.tagName + " " + h.textContent),
  facts: [...document.querySelectorAll(".facts data")].map(d => [d.value, d.textContent]),
  done: [...document.querySelectorAll("article > .table tbody tr")].map(r => r.querySelectorAll("data")[1].value),
  charts: [...document.querySelectorAll("svg[role=img]")].filter(s => s.getClientRects().length > 0 && s.querySelector(":scope > title")).length, // one of each for this width
  drawn: [...document.querySelectorAll("svg[role=img]")].filter(s => s.getBoundingClientRect().width > 300 && s.querySelectorAll("path").length > 5).length,
  fetched: performance.getEntriesByType("resource").map(r => r.name),
  texts: texts, pale: pale, width: document.documentElement.scrollWidth, window: innerWidth,
});
document.body.append(out);
});</script>`

// openedPage is what the probe found.
type openedPage struct {
	Headings      []string
	Facts         [][2]string
	Done          []string
	Charts, Drawn int
	Fetched       []string
	Texts         int
	Pale          []string
	Width, Window int
}

// opened opens a file in a window of a width, cut off from every network, and returns what the probe found.
func opened(t *testing.T, browser, file string, width int) (found openedPage) {
	t.Helper()
	// A proxy where nobody listens: whatever the page asks for fails.
	cmd := exec.CommandContext(t.Context(), browser, "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
		"--disable-component-update", "--disable-sync", "--proxy-server=127.0.0.1:9", "--user-data-dir="+t.TempDir(), "--window-size="+strconv.Itoa(width)+",1000", "--dump-dom", "file://"+file)
	cmd.WaitDelay = 5 * time.Second
	out, err := cmd.Output()
	if err != nil {
		t.Fatalf("%s: %v", browser, err)
	}
	text := regexp.MustCompile(`(?s)<pre id="probe">(.*?)</pre>`).FindSubmatch(out)
	if text == nil {
		t.Fatalf("the page did not come up: %.300s", out)
	}
	if err := json.Unmarshal([]byte(html.UnescapeString(string(text[1]))), &found); err != nil {
		t.Fatal(err)
	}
	return found
}

// probed writes the report and the JSON of a call, and a copy of the report with the probe in it and
// without what keeps scripts from running.
func probed(t *testing.T, call ...string) (copied string, answer map[string]any) {
	t.Helper()
	dir := t.TempDir()
	if code := run(t.Context(), append(call, "--replications", "300", "--report", dir+"/r.html", "--json", dir+"/r.json"), io.Discard, io.Discard); code != exitOK {
		t.Fatalf("exit code %d", code)
	}
	text, err := os.ReadFile(dir + "/r.html")
	if err != nil {
		t.Fatal(err)
	}
	guard := regexp.MustCompile(`<meta http-equiv="Content-Security-Policy"[^>]*>`)
	if !guard.Match(text) {
		t.Fatal("nothing keeps a browser from fetching")
	}
	copied = filepath.Join(dir, "probed.html")
	withProbe := strings.Replace(string(guard.ReplaceAll(text, nil)), "</head>", probe+"</head>", 1)
	if err := os.WriteFile(copied, []byte(withProbe), 0o666); err != nil {
		t.Fatal(err)
	}
	result, err := os.ReadFile(dir + "/r.json")
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(result, &answer); err != nil {
		t.Fatal(err)
	}
	return copied, answer
}

// figure follows keys into the JSON.
func figure(t *testing.T, node any, keys ...string) float64 {
	t.Helper()
	for _, key := range keys {
		node = node.(map[string]any)[key]
	}
	return node.(float64)
}

func TestABrowserShowsTheReportOfflineWithTheFiguresOfTheJSON(t *testing.T) {
	browser := desktest.Chromium(t)
	file, answer := probed(t, "simulate")
	found := opened(t, browser, file, 1200)
	want := []float64{figure(t, answer, "days_needed", "total", "p50"), figure(t, answer, "within_allotted", "chance_all"), figure(t, answer, "within_allotted", "chance_primary"),
		figure(t, answer, "within_allotted", "days_in_hand", "p50"), figure(t, answer, "within_allotted", "recovered_m", "p50")}
	for i, w := range want {
		if len(found.Facts) <= i {
			t.Fatalf("%d facts on the page", len(found.Facts))
		}
		if got, err := strconv.ParseFloat(found.Facts[i][0], 64); err != nil || got != w {
			t.Errorf("fact %d is %q on the page, %v in the JSON", i, found.Facts[i], w)
		}
		shown, err := strconv.ParseFloat(strings.Fields(found.Facts[i][1])[0], 64)
		if w <= 1 && i != 3 {
			w *= 100
		}
		if err != nil || math.Abs(shown-w) > halfADigit(found.Facts[i][1]) {
			t.Errorf("fact %d reads %q for %v", i, found.Facts[i][1], w)
		}
	}
	n := 0
	for _, s := range answer["sites"].([]any) {
		for _, h := range s.(map[string]any)["holes"].([]any) {
			if got, err := strconv.ParseFloat(found.Done[n], 64); err != nil || got != figure(t, h, "chance_done") {
				t.Errorf("hole %d of the page is done in %q, of the JSON in %v", n, found.Done[n], figure(t, h, "chance_done"))
			}
			n++
		}
	}
	if len(found.Done) != n {
		t.Errorf("%d holes on the page, %d in the JSON", len(found.Done), n)
	}
	if len(found.Fetched) > 0 {
		t.Errorf("the page fetched %q", found.Fetched)
	}
}

func TestABrowserFindsHeadingsChartsAndContrastOnAnyWidth(t *testing.T) {
	browser := desktest.Chromium(t)
	file, _ := probed(t, "simulate")
	for _, width := range []int{1400, 700, 500} {
		found := opened(t, browser, file, width)
		headings(t, found.Headings)
		if found.Charts != 12 || found.Drawn != found.Charts {
			t.Errorf("%d px: %d charts with a title, %d drawn, want 12", width, found.Charts, found.Drawn)
		}
		// 4.5 to 1 is what WCAG 2.1, 1.4.3, asks of text of ordinary size.
		if found.Texts < 500 || len(found.Pale) > 0 {
			t.Errorf("%d px: of %d texts these are paler than 4.5 to 1: %q", width, found.Texts, found.Pale)
		}
		if found.Width > found.Window {
			t.Errorf("a window of %d px must be scrolled sideways: the page is %d px wide", found.Window, found.Width)
		}
	}
}

func TestABrowserShowsTheOrdersOfACompareOfflineWithTheFiguresOfTheJSON(t *testing.T) {
	browser := desktest.Chromium(t)
	file, answer := probed(t, "compare", "--orders")
	found := opened(t, browser, file, 500)
	if len(found.Facts) == 0 {
		t.Fatal("no facts on the page")
	}
	for _, a := range answer["alternatives"].([]any) {
		if a.(map[string]any)["name"] == answer["best"] {
			if got, err := strconv.ParseFloat(found.Facts[0][0], 64); err != nil || got != figure(t, a, "days_needed", "p50") {
				t.Errorf("the first needs %q days on the page, %v in the JSON", found.Facts[0], figure(t, a, "days_needed", "p50"))
			}
		}
	}
	sections(t, found.Headings, "H1 Skua Bank", "H2 Side by side", "H3 Why not the shortest track", "H3 What was searched", "H2 Cautions", "H2 How to repeat")
	if found.Charts != 1 || found.Drawn != 1 || len(found.Fetched) > 0 {
		t.Errorf("%d charts, %d drawn; fetched: %q", found.Charts, found.Drawn, found.Fetched)
	}
	if found.Texts < 200 || len(found.Pale) > 0 || found.Width > found.Window {
		t.Errorf("of %d texts these are pale: %q; %d px wide in a window of %d", found.Texts, found.Pale, found.Width, found.Window)
	}
}

// halfADigit is half a unit of the last figure that is shown, a hair above; from 1000 on that is the third.
func halfADigit(text string) float64 {
	figures := strings.Fields(text)[0]
	half := 0.5
	if _, decimals, found := strings.Cut(figures, "."); found {
		half = 0.5 / math.Pow10(len(decimals))
	} else if len(figures) > 3 {
		half = 0.5 * math.Pow10(len(figures)-3)
	}
	return half * (1 + 1e-9)
}

// headings are those of a report.
func headings(t *testing.T, list []string) {
	t.Helper()
	sections(t, list, "H1 Skua Bank", "H2 Calendar", "H2 Days needed", "H2 Site by site", "H3 SB-01", "H2 Sea and", "H2 What drives", "H2 Can it be done",
		"H2 What to have", "H2 Basis", "H2 Cautions", "H2 How to repeat")
}

// sections checks that headings are there and that no level is passed over.
func sections(t *testing.T, list []string, want ...string) {
	t.Helper()
	all := strings.Join(list, "\n")
	for _, part := range want {
		if !strings.Contains(all, part) {
			t.Errorf("no heading %q in\n%s", part, all)
		}
	}
	before := byte('0')
	for _, h := range list {
		if h[1] > before+1 {
			t.Errorf("%q passes a level over", h)
		}
		before = h[1]
	}
}

// reportLimit is the most a report may weigh, bytes.
const reportLimit = 2_000_000

func TestTheReportOfTenThousandReplicationsWeighsAtMostTwoMegabytes(t *testing.T) {
	if testing.Short() {
		t.Skip("takes some seconds")
	}
	file := filepath.Join(t.TempDir(), "r.html")
	if code := run(t.Context(), []string{"simulate", "--replications", "10000", "--report", file}, io.Discard, io.Discard); code != exitOK {
		t.Fatalf("exit code %d", code)
	}
	info, err := os.Stat(file)
	if err != nil {
		t.Fatal(err)
	}
	if info.Size() > reportLimit || info.Size() < 100_000 {
		t.Errorf("the report has %d bytes", info.Size())
	}
}
