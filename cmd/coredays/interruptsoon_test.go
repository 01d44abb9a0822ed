package main

import (
	"bytes"
	"context"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"coredays/cmd/coredays/call"
)

// tooLate is how long after Ctrl-C a call has surely not heard it. Calls end within a second on an idle machine; a test
// that asked for that would fail on a busy one, or under the race detector.
const tooLate = 30 * time.Second

// Calls that take minutes end soon after Ctrl-C, whatever they are at.
func TestWhateverTakesLongEndsSoonAfterCtrlC(t *testing.T) {
	const patience = 100 * time.Millisecond
	const often = "1000000"
	holes := filepath.Join(t.TempDir(), "holes.csv")
	if err := os.WriteFile(holes, []byte(inventedHole), 0o666); err != nil {
		t.Fatal(err)
	}
	for _, line := range [][]string{
		{"simulate", "--replications", often},
		{"simulate", "--replications", often, "--shard", "1/2", "--part", filepath.Join(t.TempDir(), "one")},
		{"compare", "--orders", "--replications", "100000"},
		{"compare", "--drop", "--replications", often},
		{"compare", "--departures", "2027-01-14..2027-05-14/2d", "--replications", often},
		{"basis", "--simulate", often},
		{"diary", "--at", "P90", "--replications", often},
		{"sea", "--years", "1000"},
		{"hindcast", holes, "--replications", often},
	} {
		ctx, cancel := context.WithTimeout(t.Context(), patience)
		began := time.Now()
		code, _, stderr := called(ctx, line...)
		cancel()
		if took := time.Since(began); code != exitInterrupted || took > tooLate {
			t.Errorf("%q: exit %d after %v: %s", line, code, took, stderr)
		}
	}
}

const inventedHole = `program,leg,site,hole,hole_order,holes_at_site,latitude,longitude,water_depth_m,penetration_m,cored_m,n_cores,n_apc,n_hlapc,n_xcb,n_rcb,n_other,cored_apc_m,cored_xcb_m,cored_rcb_m,cored_other_m,start,end
X,1,S1,A,1,1,-48.5,158,3200,150,150,16,16,,0,0,0,150,0,0,0,2030-01-01T00:00,2030-01-03T12:00
`

// pulled is a standard output that ends a context with the first word that it gets: the answer is there then, the files
// are not.
type pulled struct {
	bytes.Buffer
	plug context.CancelFunc
}

func (p *pulled) Write(text []byte) (int, error) {
	p.plug()
	return p.Buffer.Write(text)
}

func TestCtrlCWhileFilesAreWrittenLeavesThoseOutThatAreNotWhole(t *testing.T) {
	dir := t.TempDir()
	ctx, cancel := context.WithCancel(t.Context())
	defer cancel()
	out := pulled{plug: cancel}
	var errs bytes.Buffer
	began := time.Now()
	code := run(ctx, []string{"simulate", "--replications", "20", "--report", dir + "/r.html", "--xlsx", dir + "/r.xlsx", "--csv", dir + "/tables", "--charts", dir + "/charts"}, &out, &errs)
	if took := time.Since(began); took > tooLate {
		t.Errorf("it went on for %v", took)
	}
	if code != exitInterrupted || !strings.Contains(out.String(), "Days needed") || !strings.Contains(errs.String(), "not written: interrupted") {
		t.Errorf("exit %d: %s", code, errs.String())
	}
	entries, err := os.ReadDir(dir)
	if err != nil || len(entries) > 0 {
		t.Errorf("left behind: %v, %v", entries, err)
	}
}

func TestWhatCannotBeStoppedIsLeftBehind(t *testing.T) {
	ctx, cancel := context.WithCancel(t.Context())
	never := make(chan error)
	time.AfterFunc(10*time.Millisecond, cancel)
	if err := call.OrInterrupted(ctx, func() error { return <-never }); err != call.ErrInterrupted {
		t.Error(err)
	}
	if err := call.OrInterrupted(t.Context(), func() error { return io.EOF }); err != io.EOF {
		t.Error(err)
	}
}
