package desk_test

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

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
