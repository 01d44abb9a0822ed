package desk_test

import (
	"context"
	"io"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"

	"coredays/cmd/coredays/desk"
	"coredays/cmd/coredays/desk/desktest"
	"coredays/model/voyage"
	"coredays/output"
	"coredays/output/page"
	"coredays/output/sheet"
	"coredays/sim/statistics"
)

// laid is a desk that writes short reports and workbooks.
func laid(file string) *desk.Desk {
	written := func(write func(io.Writer, *output.Report) error) desk.Write {
		return func(_ context.Context, to io.Writer, v *voyage.Voyage, r *statistics.Results, _ []string, _ bool) error {
			return write(to, &output.Report{Summary: r.Closely(), Plan: v.Plan, Replications: r.Columns()})
		}
	}
	d := desk.New(file)
	d.Report = written(page.Report)
	d.Workbook = written(func(to io.Writer, r *output.Report) error { return sheet.Workbook(context.Background(), to, r) })
	return d
}

func TestAPlannerDragsASiteAndTakesAnOrderOver(t *testing.T) {
	p := desktest.At(t, 1400, laid)
	p.Reads(`{
const card = name => document.querySelector("[data-site=" + name + "]"), data = new DataTransfer();
card("SB-01").dispatchEvent(new DragEvent("dragstart", {dataTransfer: data, bubbles: true}));
card("SB-03").dispatchEvent(new DragEvent("drop", {dataTransfer: data, bubbles: true, cancelable: true}));
"dropped"}`)
	p.Waits(`document.getElementById("text").value.includes("order: [SB-01, SB-03, SB-02, SB-04, SB-05]")`)
	p.Refined()
	before := p.Reads(desktest.P50OfDays)
	p.Reads(`document.getElementById("f-sites[0].holes[1].left_out").click(), "hole B left out"`)
	p.Waits(`document.querySelectorAll("#history li").length == 3`)
	p.Refined()
	if after := p.Reads(desktest.P50OfDays); len(after) < 3 || after[:2] >= before[:2] {
		t.Errorf("without hole B the programme needs %s days, with it %s", after, before)
	}
	if names := p.Reads(`document.querySelector("#chart-track img").alt`); !strings.Contains(names, "SB-05") {
		t.Errorf("the map is of %q", names)
	}
	p.Does(chromedp.Click[string]("#undo"))
	p.Refined()
	p.Does(chromedp.Click[string]("#orders"))
	p.Waits(`document.querySelector("#found button") != null`)
	if own := p.Reads(`[...document.querySelectorAll("#found li")].filter(l => l.textContent.includes("the order on screen")).map(l => String(l.querySelector("button"))).join()`); own != "null" {
		t.Errorf("beside the order that the plan has already stands %q", own)
	}
	wanted := p.Reads(`document.querySelector("#found strong").textContent`)
	p.Does(chromedp.Click[string]("#found button"))
	p.Waits(`[...document.querySelectorAll("#history .link")].at(-1).textContent == ` + strconv.Quote(wanted))
	p.Refined()
}

func TestAnEditThatChangesNothingLeavesTheAnswer(t *testing.T) {
	p := desktest.At(t, 1400, laid)
	before := p.Reads(desktest.P50OfDays)
	p.Reads(`{const i = document.getElementById("f-sea_days"); i.value = "56 d "; i.dispatchEvent(new Event("input", {bubbles: true})); "a blank more"}`)
	p.Refined()
	if after := p.Reads(desktest.P50OfDays); after != before {
		t.Errorf("the answer went from %s to %s", before, after)
	}
}

// TestTheDeskIsPictured writes pictures of the page for people to look at, where DESK_PICTURES names a folder.
func TestTheDeskIsPictured(t *testing.T) {
	if os.Getenv("DESK_PICTURES") == "" {
		t.Skip("DESK_PICTURES names no folder")
	}
	for _, width := range []int64{360, 800, 1200, 1600} {
		takesAPicture(t, desktest.At(t, width, laid), strconv.FormatInt(width, 10))
	}
}

// takesAPicture writes the whole page as it stands into the folder that DESK_PICTURES names, if it names one.
func takesAPicture(t *testing.T, p desktest.Planner, name string) {
	t.Helper()
	folder := os.Getenv("DESK_PICTURES")
	if folder == "" {
		return
	}
	picture, err := chromedp.Run(p.Ctx, chromedp.FullScreenshot(100))
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(folder, name+".png"), picture, 0o644); err != nil {
		t.Fatal(err)
	}
}
