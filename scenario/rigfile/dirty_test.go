package rigfile

import (
	"flag"
	"fmt"
	"os"
	"strings"
	"testing"
	"time"

	"coredays/model/riglog"
)

var update = flag.Bool("update", false, "write the messages as they are")

// dirty is a file of cases: "== NAME", the file as it came, "--", and what is told of it. A name that ends in +10:00 is read
// with that zone.
const dirty = "testdata/dirty.txt"

// Every dirty file has exactly its messages, each with its line and its cure; an error is that of the whole file.
func TestDirtyFilesAreToldExactlyWhatIsWrong(t *testing.T) {
	data, err := os.ReadFile(dirty)
	if err != nil {
		t.Fatal(err)
	}
	var out strings.Builder
	cases := strings.Split(string(data), "== ")[1:]
	for _, c := range cases {
		name, rest, _ := strings.Cut(c, "\n")
		file, want, _ := strings.Cut(rest, "--\n")
		got := messages(name, file)
		fmt.Fprintf(&out, "== %s\n%s--\n%s", name, file, got)
		if got != want && !*update {
			t.Errorf("%s:\n%sgot\n%swant\n%s", name, file, got, want)
		}
	}
	if len(cases) < 40 {
		t.Errorf("%d dirty files, want 40", len(cases))
	}
	if *update {
		if err := os.WriteFile(dirty, []byte(out.String()), 0o666); err != nil {
			t.Fatal(err)
		}
	}
}

// messages are what is told of a file, and how much of it was read.
func messages(name, file string) string {
	var r Reading
	if strings.HasSuffix(name, "+10:00") {
		r.Zone = time.FixedZone("ship", 10*3600)
	}
	var p riglog.Papers
	if err := r.Read(&p, "f.csv", []byte(strings.ReplaceAll(file, "→", "\t"))); err != nil {
		return err.Error() + "\n"
	}
	var b strings.Builder
	for _, n := range p.Notes {
		fmt.Fprintf(&b, "%d: %s: %s", n.Row, n.Why, n.Cure)
		if n.Lost {
			b.WriteString(" (left out)")
		}
		b.WriteByte('\n')
	}
	hours := 0.0
	for i := range p.Lines {
		hours += p.Lines[i].Hours()
	}
	switch {
	case len(p.Recordings) > 0:
		fmt.Fprintf(&b, "read: %d samples\n", len(p.Recordings[0].Time))
	case len(p.Cores) > 0:
		timed := 0
		for i := range p.Cores {
			if !p.Cores[i].OnDeck.IsZero() {
				timed++
			}
		}
		fmt.Fprintf(&b, "read: %d cores, %d with times, the last at %g m in hole %s\n", len(p.Cores), timed, float64(p.Cores[len(p.Cores)-1].Top), p.Cores[len(p.Cores)-1].Hole)
	default:
		fmt.Fprintf(&b, "read: %d lines, %.2f h", len(p.Lines), hours)
		if len(p.Lines) > 0 {
			fmt.Fprintf(&b, ", from %s", p.Lines[0].From.Format("2 Jan 15:04"))
		}
		b.WriteByte('\n')
	}
	return b.String()
}
