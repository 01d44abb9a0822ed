package scenario

import (
	"bytes"
	"strings"
	"testing"

	"coredays/scenario/document"
	"coredays/scenario/edit"
)

func TestAnEditChangesItsOwnBytesAlone(t *testing.T) {
	text := "# top\na: 1 m   # one é\nb: {low: 2, high: 'it''s'}   # ] two\nlist:\n  - name: x # c\n    d: \"q # \\\" q\"\n  - name: y\norder: [x, y]\n"
	for _, c := range []struct{ path, value, old, new string }{
		{"a", "3 m", "1 m ", "3 m "},
		{"b.high", "9", "'it''s'", "9"},
		{"b.low", "", "low: 2, ", ""},
		{"b.high", "", ", high: 'it''s'", ""},
		{"b.mid", "4", "'it''s'}", "'it''s', mid: 4}"},
		{"b", "7", "{low: 2, high: 'it''s'}", "7"},
		{"list[0].d", "e: f", `"q # \" q"`, `"e: f"`},
		{"list[0].e", "5", "q\"\n", "q\"\n    e: 5\n"},
		{"list[0].name", "", "name: x # c\n    ", ""},
		{"list[1]", "", "  - name: y\n", ""},
		{"order", "[y, x]", "[x, y]", "[y, x]"},
		{"order[0]", "", "x, y]", "y]"},
		{"order[2]", "z", "x, y]", "x, y, z]"},
		{"a", "", "a: 1 m   # one é\n", ""},
		{"new", "6 m", "order: [x, y]\n", "order: [x, y]\nnew: 6 m\n"},
		{"a", "# no comment", "1 m ", `"# no comment" `},
		{"a", "@home", "1 m ", `"@home" `},
	} {
		got, err := edit.Set([]byte(text), c.path, c.value)
		if want := strings.Replace(text, c.old, c.new, 1); err != nil || string(got) != want || !strings.Contains(text, c.old) {
			t.Errorf("%s=%q gives (%v)\n%s\nwant\n%s", c.path, c.value, err, got, want)
		}
	}
}

func TestAnEditThatCannotBeMadeByItselfChangesNothing(t *testing.T) {
	text := "a: &x 1\nb: *x\nc: >\n  long\n  text\nd: {e: 1}\nl: [1]\n"
	for _, path := range []string{"a", "b", "c", "d.e.f", "q.r", "l[7]", "l[-1]", "", "d..e", "l[0]x"} {
		if got, err := edit.Set([]byte(text), path, "2"); err == nil {
			t.Errorf("%q was changed to\n%s", path, got)
		}
	}
	if _, err := edit.Set([]byte("a: [1"), "a", "2"); err == nil {
		t.Error("what is no YAML was changed")
	}
}

func TestEveryWaterDepthOfTheDemonstrationCanBeChangedAndBack(t *testing.T) {
	p, err := Demonstration()
	if err != nil {
		t.Fatal(err)
	}
	for i := range p.Sites {
		path := document.At("sites", i) + ".water_depth"
		changed, err := edit.Set(demonstrationText, path, "1234 m")
		if err != nil {
			t.Fatal(err)
		}
		q, err := Read("demonstration.yaml", changed)
		if err != nil || q.Sites[i].WaterDepth == p.Sites[i].WaterDepth || len(q.Sites) != len(p.Sites) {
			t.Errorf("%s: %v", path, err)
		}
		was := strings.Fields(strings.Split(string(demonstrationText), "water_depth: ")[i+1])
		back, err := edit.Set(changed, path, was[0]+" "+was[1])
		if err != nil || !bytes.Equal(back, demonstrationText) {
			t.Errorf("%s: the way back does not end where it began: %v", path, err)
		}
	}
}

func FuzzAnEditSaysWhatWasAskedOrNothing(f *testing.F) {
	f.Add("a: {b: [1, 2]} # c\n", "a.b", "3")
	f.Add("a:\n- b: 'x'\n", "a[0].b", "y: z")
	f.Fuzz(func(t *testing.T, text, path, value string) {
		changed, err := edit.Set([]byte(text), path, value)
		if err == nil && len(changed) > len(text)+len(path)+8*len(value)+40 {
			t.Errorf("%q, %s=%q grew to %q", text, path, value, changed)
		}
	})
}
