package share

import (
	"bytes"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"coredays/model/listing"
)

// packed is the bytes of a share with three values.
func packed(t *testing.T, head Head) []byte {
	t.Helper()
	p, err := Pack(&head)
	if err != nil {
		t.Fatal(err)
	}
	for _, value := range []float64{1.5, 2.5, 3.5} {
		if err := p.Put(value); err != nil {
			t.Fatal(err)
		}
	}
	var whole bytes.Buffer
	if err := p.Write(&whole); err != nil {
		t.Fatal(err)
	}
	return whole.Bytes()
}

// inFiles puts shares into files.
func inFiles(t *testing.T, heads ...Head) (paths []string) {
	t.Helper()
	dir := t.TempDir()
	for i, head := range heads {
		path := filepath.Join(dir, string(rune('a'+i)))
		if err := os.WriteFile(path, packed(t, head), 0o666); err != nil {
			t.Fatal(err)
		}
		paths = append(paths, path)
	}
	return paths
}

var plan = [][]listing.Line{{{Path: "SeaDays", Value: "56"}, {Path: "Title", Value: "a"}}}

func TestWhatIsPutIsTaken(t *testing.T) {
	path := inFiles(t, Head{Call: Call{Command: "simulate", Seed: 7}, Which: Which{2, 3}, Plans: plan})[0]
	o, err := Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer o.Close()
	if o.Head.Call.Seed != 7 || o.Head.Which != (Which{2, 3}) || PlansDiffer(o.Head.Plans, plan) != "" {
		t.Errorf("%+v", o.Head)
	}
	for _, want := range []float64{1.5, 2.5, 3.5} {
		var got float64
		if err := o.Take(&got); err != nil || got != want {
			t.Errorf("%g, %v, want %g", got, err, want)
		}
	}
	if err := o.Take(new(float64)); err == nil || !strings.Contains(err.Error(), "holds less than it should") {
		t.Errorf("beyond its end: %v", err)
	}
}

func TestADamagedShareIsRefused(t *testing.T) {
	whole := packed(t, Head{Plans: plan})
	open := func(data []byte) error { _, err := unpack(bytes.NewReader(data), int64(len(data))); return err }
	if err := open(whole); err != nil {
		t.Fatal(err)
	}
	random := rand.New(rand.NewPCG(1, 1))
	for range 400 {
		at, bit := random.IntN(len(whole)), random.IntN(8)
		flipped := bytes.Clone(whole)
		flipped[at] ^= 1 << bit
		if open(flipped) == nil {
			t.Errorf("bit %d of byte %d is flipped, and nobody notices", bit, at)
		}
	}
	for name, damaged := range map[string][]byte{"without its last byte": whole[:len(whole)-1], "with a byte behind it": append(bytes.Clone(whole), 0),
		"doubled": append(bytes.Clone(whole), whole...), "cut to its half": whole[:len(whole)/2], "empty": nil, "its first line alone": []byte(magic)} {
		if open(damaged) == nil {
			t.Errorf("a share %s is taken", name)
		}
	}
}

func TestOnlyAnOrdinaryFileIsAShare(t *testing.T) {
	for _, path := range []string{os.DevNull, "/dev/zero", t.TempDir()} {
		if _, err := Open(path); err == nil || !strings.Contains(err.Error(), "no ordinary file") {
			t.Errorf("%s: %v", path, err)
		}
	}
}

func TestAllSharesComeOnceAndInTheirOrder(t *testing.T) {
	third := func(n int) Head { return Head{Which: Which{n, 3}, Plans: plan} }
	all, err := OpenAll(inFiles(t, third(3), third(1), third(2)))
	if err != nil {
		t.Fatal(err)
	}
	defer all.Close()
	for i, o := range all {
		if o.Head.Which.Number != i+1 {
			t.Errorf("share %v comes as number %d", o.Head.Which, i+1)
		}
	}
	for want, heads := range map[string][]Head{
		"missing: share 2/3;":              {third(1), third(3)},
		"missing: share 1/3, 3/3;":         {third(2)},
		"share 2/3 is there twice: ":       {third(1), third(2), third(2), third(3)},
		"one of 2 shares, not of 3":        {third(1), {Which: Which{2, 2}, Plans: plan}},
		"no share but a search on its way": {{Plans: plan}},
	} {
		if _, err := OpenAll(inFiles(t, heads...)); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("got %v, want %q", err, want)
		}
	}
}

func TestSharesOfOtherWorkAreRefused(t *testing.T) {
	one := Head{Call: Call{"compare", []string{"a"}, []string{"--drop"}, []string{"x=1"}, false, 1, 100}, Program: "p 1", Which: Which{1, 2}, Plans: plan}
	for want, change := range map[string]func(*Head){
		"of coredays simulate, not of coredays compare":   func(h *Head) { h.Call.Command = "simulate" },
		`of ["b"], not of ["a"]`:                          func(h *Head) { h.Call.Files = []string{"b"} },
		`with [], not with ["--drop"]`:                    func(h *Head) { h.Call.Options = nil },
		`--set [], not ["x=1"]`:                           func(h *Head) { h.Call.Settings = nil },
		"one was sailed with --anyway":                    func(h *Head) { h.Call.Anyway = true },
		"seed 2, not 1":                                   func(h *Head) { h.Call.Seed = 2 },
		"of 50 replications, not 100":                     func(h *Head) { h.Call.Replications = 50 },
		"sailed by p 2, not by p 1":                       func(h *Head) { h.Program = "p 2" },
		"SeaDays is 56 in the one and 57 in the other":    func(h *Head) { h.Plans = [][]listing.Line{{{Path: "SeaDays", Value: "57"}, plan[0][1]}} },
		"there are 1 plans in the one and 2 in the other": func(h *Head) { h.Plans = append(plan, plan[0]) },
		"one of 4 shares, not of 2":                       func(h *Head) { h.Which = Which{2, 4} },
	} {
		other := one
		other.Which.Number = 2
		change(&other)
		if _, err := OpenAll(inFiles(t, one, other)); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("got %v, want %q", err, want)
		}
	}
}
