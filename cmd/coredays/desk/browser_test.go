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
	wanted := p.Reads(`document.querySelector("#found strong").textContent`)
	p.Does(chromedp.Click[string]("#found button"))
	p.Waits(`[...document.querySelectorAll("#history .link")].at(-1).textContent == ` + strconv.Quote(wanted))
	p.Refined()
}

// TestTheDeskIsPictured writes pictures of the page for people to look at, where DESK_PICTURES names a folder.
func TestTheDeskIsPictured(t *testing.T) {
	folder := os.Getenv("DESK_PICTURES")
	if folder == "" {
		t.Skip("DESK_PICTURES names no folder")
	}
	for _, width := range []int64{360, 800, 1600} {
		p := desktest.At(t, width, laid)
		picture, err := chromedp.Run(p.Ctx, chromedp.FullScreenshot(100))
		if err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(folder, strconv.FormatInt(width, 10)+".png"), picture, 0o644); err != nil {
			t.Fatal(err)
		}
	}
}
