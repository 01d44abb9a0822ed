// Package desktest tries the desk in a real browser as people do.
package desktest

import (
	"context"
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/dom"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"coredays/cmd/coredays/desk"
	"coredays/scenario"
)

// Planner sits at a desk with a plan of her own.
type Planner struct {
	*testing.T
	Ctx  context.Context
	File string // of the plan
	// address of the page, with its secret.
	address string
}

// patience is how long a test waits for one thing, on a machine that is busy with much else.
const patience = 2 * time.Minute

// At sits down at a desk that lays a file out, in a window so many pixels wide, with a copy of the demonstration.
func At(t *testing.T, width int64, lay func(file string) *desk.Desk) Planner {
	t.Helper()
	browser := Chromium(t)
	file := filepath.Join(t.TempDir(), "plan.yaml")
	if err := os.WriteFile(file, scenario.DemonstrationText(), 0o644); err != nil {
		t.Fatal(err)
	}
	d := lay(file)
	server := httptest.NewServer(d.Handler())
	t.Cleanup(server.Close)
	options := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(browser), chromedp.NoSandbox, chromedp.Flag("disable-gpu", true))
	ctx, end := chromedp.NewExecAllocator(t.Context(), options...)
	t.Cleanup(end)
	ctx, close := chromedp.NewContext(ctx)
	t.Cleanup(close)
	p := Planner{t, ctx, file, server.URL + d.Path()}
	p.Does(chromedp.EmulateViewport(width, 1000), chromedp.Navigate(p.address))
	p.Refined()
	return p
}

// Chromium is the browser, or the test is skipped.
func Chromium(t *testing.T) string {
	t.Helper()
	if testing.Short() {
		t.Skip("a browser takes some seconds")
	}
	for _, name := range []string{"chromium", "chromium-browser", "google-chrome"} {
		if path, err := exec.LookPath(name); err == nil {
			return path
		}
	}
	t.Skip("no chromium on PATH: nothing is tried in a browser")
	return ""
}

// Does carries out actions of the browser.
func (p Planner) Does(actions ...chromedp.Action[chromedp.Void]) {
	p.Helper()
	if err := chromedp.Do(p.Ctx, actions...); err != nil {
		p.Fatal(err)
	}
}

// Waits waits until an expression of the page holds.
func (p Planner) Waits(expression string) {
	p.Helper()
	for began := time.Now(); time.Since(began) < patience; {
		if p.Reads("String(Boolean("+expression+"))") == "true" {
			return
		}
		time.Sleep(50 * time.Millisecond)
	}
	p.Fatalf("%s does not come true; the page says %q", expression, p.Reads(`["state", "said", "faults"].map(id => document.getElementById(id).textContent).join(" / ")`))
}

// Refined waits for the refined answer to the plan on screen.
func (p Planner) Refined() {
	p.Helper()
	p.Waits(`document.getElementById("state").textContent.startsWith("2,000 expeditions") && !document.getElementById("answer").classList.contains("stale")`)
}

// Reads evaluates an expression to a text.
func (p Planner) Reads(expression string) string {
	p.Helper()
	text, err := chromedp.Run(p.Ctx, chromedp.Evaluate[string](expression))
	if err != nil {
		p.Fatalf("%s: %v", expression, err)
	}
	return text
}

// Types puts a value into the field of a path with the keyboard alone.
func (p Planner) Types(path, value string) {
	p.Helper()
	p.Waits(`document.getElementById(` + strconv.Quote("f-"+path) + `)`)
	p.Reads(`{const i = document.getElementById(` + strconv.Quote("f-"+path) + `); for (let d = i.closest("details"); d; d = d.parentElement.closest("details")) d.open = true; i.focus(); i.select(); i.id}`)
	p.Does(chromedp.KeyEvent(value))
	p.Waits(`document.getElementById("text").value.includes(` + strconv.Quote(value) + `)`)
}

// Tabs presses Tab, or Shift and Tab, until what a selector names has the focus: nothing is clicked or focused by script.
func (p Planner) Tabs(selector string, options ...chromedp.KeyOption) {
	p.Helper()
	for range 600 {
		if p.Reads(`String(document.activeElement.matches(`+strconv.Quote(selector)+`))`) == "true" {
			return
		}
		p.Does(chromedp.KeyEvent(kb.Tab, options...))
	}
	p.Fatalf("Tab does not lead to %s", selector)
}

// Presses presses keys where the focus is.
func (p Planner) Presses(keys string, options ...chromedp.KeyOption) {
	p.Helper()
	p.Does(chromedp.KeyEvent(keys, options...))
}

// Overtypes puts a value into the field that has the focus.
func (p Planner) Overtypes(value string) {
	p.Helper()
	p.Presses("a", chromedp.KeyModifiers(chromedp.ModifierCtrl))
	p.Presses(value)
}

// Chooses opens the browser's dialog for files from the field that has the focus, by Enter, and chooses one there.
func (p Planner) Chooses(file string) {
	p.Helper()
	p.intercepts(true)
	defer p.intercepts(false)
	opened := make(chan cdp.BackendNodeID, 1)
	ctx, end := context.WithCancel(p.Ctx)
	defer end()
	if err := chromedp.Listen(ctx, func(event any) {
		if e, is := event.(*page.EventFileChooserOpened); is {
			opened <- e.BackendNodeID
		}
	}); err != nil {
		p.Fatal(err)
	}
	p.Presses(kb.Enter)
	select {
	case field := <-opened:
		p.Does(func(ctx context.Context, t *chromedp.Target) (none chromedp.Void, err error) {
			_, err = cdp.Call(ctx, t, dom.SetFileInputFiles, dom.SetFileInputFilesParams{Files: []string{file}, BackendNodeID: field})
			return none, err
		})
	case <-time.After(patience):
		p.Fatal("Enter opens no dialog for files")
	}
}

// intercepts has the dialog for files be told to the test, or shown again.
func (p Planner) intercepts(it bool) {
	p.Helper()
	p.Does(func(ctx context.Context, t *chromedp.Target) (none chromedp.Void, err error) {
		_, err = cdp.Call(ctx, t, page.SetInterceptFileChooserDialog, page.SetInterceptFileChooserDialogParams{Enabled: it})
		return none, err
	})
}

// Another opens the page in a further window of the same browser.
func (p Planner) Another() Planner {
	p.Helper()
	ctx, end := chromedp.NewContext(p.Ctx)
	p.Cleanup(end)
	q := Planner{p.T, ctx, p.File, p.address}
	q.Does(chromedp.Navigate(p.address))
	q.Refined()
	return q
}

// P50OfDays is an expression of the page for P50 of the days needed, to the last digit.
const P50OfDays = `document.querySelector("#answer dd").dataset.exact`
