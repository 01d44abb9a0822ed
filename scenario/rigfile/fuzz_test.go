package rigfile

import (
	"math"
	"os"
	"strings"
	"testing"

	"coredays/model/riglog"
)

// seeds are the dirty files whose first line has a word.
func seeds(f *testing.F, word string) {
	data, err := os.ReadFile(dirty)
	if err != nil {
		f.Fatal(err)
	}
	for _, c := range strings.Split(string(data), "== ")[1:] {
		_, rest, _ := strings.Cut(c, "\n")
		file, _, _ := strings.Cut(rest, "--\n")
		if strings.Contains(file, word) {
			f.Add([]byte(strings.ReplaceAll(file, "→", "\t")))
		}
	}
}

// held reads a file, which must neither panic nor give a figure that is no figure of a rig.
func held(t *testing.T, data []byte) *riglog.Papers {
	var p riglog.Papers
	if err := new(Reading).Read(&p, "f.csv", data); err != nil && !strings.HasPrefix(err.Error(), "f.csv") {
		t.Errorf("an error without its file: %v", err)
	}
	for _, n := range p.Notes {
		if n.File == "" || n.Why == "" || n.Cure == "" {
			t.Errorf("a note without file, reason or cure: %+v", n)
		}
	}
	return &p
}

func FuzzOperations(f *testing.F) {
	seeds(f, "what")
	f.Fuzz(func(t *testing.T, data []byte) {
		p := held(t, data)
		for i := range p.Lines {
			l := &p.Lines[i]
			if !l.To.After(l.From) || l.Hours() > 2*longestLine || math.IsInf(float64(l.Depth), 0) || i > 0 && l.From.Before(p.Lines[i-1].From) {
				t.Errorf("line %+v", l)
			}
		}
		for _, d := range riglog.Balance(p.Lines) {
			if d.Hours() < 0 || d.Hours() > 24+1e-6 {
				t.Errorf("a day of %g h: %+v", d.Hours(), d)
			}
		}
	})
}

func FuzzCores(f *testing.F) {
	seeds(f, "time_on_deck")
	f.Fuzz(func(t *testing.T, data []byte) {
		p := held(t, data)
		for i := range p.Cores {
			if c := &p.Cores[i]; c.Number < 0 || math.IsInf(float64(c.Top), 0) || float64(c.Cored) < 0 {
				t.Errorf("core %+v", c)
			}
		}
	})
}

func FuzzRecording(f *testing.F) {
	seeds(f, "block_m")
	f.Fuzz(func(t *testing.T, data []byte) {
		p := held(t, data)
		for _, r := range p.Recordings {
			for i := range r.Time {
				if i > 0 && r.Time[i] <= r.Time[i-1] || math.IsNaN(r.Hook[i]) || math.IsInf(r.Hook[i], 0) {
					t.Errorf("sample %d: %g s, %g N", i, r.Time[i], r.Hook[i])
				}
			}
		}
	})
}

func FuzzWords(f *testing.F) {
	f.Add([]byte("words:\n  passage: [transit]\n  connection: [add joint, c]\n"), "out of hole, laid out assembly and secured")
	f.Fuzz(func(t *testing.T, list []byte, what string) {
		w, err := ReadWords("w.yaml", list)
		if err != nil {
			return
		}
		if doing, all := w.meaning(what); all && len(doing) == 0 {
			t.Errorf("%q has a meaning without an activity", what)
		}
	})
}
