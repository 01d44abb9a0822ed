package cluster

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
)

// examples is the folder of the examples, seen from this package.
const examples = "../../../testdata/examples"

// built is the program, built for the test.
func built(t *testing.T) string {
	t.Helper()
	program := filepath.Join(t.TempDir(), "coredays")
	if out, err := exec.Command("go", "build", "-o", program, "coredays/cmd/coredays").CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	return program
}

// furnished is a folder of a study as the examples have it, beside that of its scenario.
func furnished(t *testing.T) string {
	t.Helper()
	top := t.TempDir()
	folder := filepath.Join(top, "examples")
	for from, to := range map[string]string{"study.yaml": "examples/study.yaml", "../scenarios/first.yaml": "scenarios/first.yaml",
		"slurm/share.sh": "examples/share.sh", "slurm/merge.sh": "examples/merge.sh", "slurm/submit.sh": "examples/submit.sh"} {
		data, err := os.ReadFile(filepath.Join(examples, from))
		if err != nil {
			t.Fatal(err)
		}
		to = filepath.Join(top, to)
		if err := os.MkdirAll(filepath.Dir(to), 0o777); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(to, data, 0o777); err != nil {
			t.Fatal(err)
		}
	}
	return folder
}

// run runs a command in a folder and gives what it prints.
func run(t *testing.T, folder string, env []string, name string, args ...string) string {
	t.Helper()
	cmd := exec.Command(name, args...)
	cmd.Dir, cmd.Env = folder, append(os.Environ(), env...)
	var errs bytes.Buffer
	cmd.Stderr = &errs
	out, err := cmd.Output()
	if err != nil {
		t.Fatalf("%s %q: %v\n%s%s", name, args, err, out, errs.String())
	}
	return string(out)
}

// answers are the files that the examples make of a study.
var answers = []string{"study.txt", "study.json", "study.html", "table/plans.csv", "table/dictionary.csv"}

// sameAsOneMachine holds the answer in a folder against that of one machine, byte for byte.
func sameAsOneMachine(t *testing.T, program, folder, replications string) {
	t.Helper()
	alone := furnished(t)
	text := run(t, alone, nil, program, "study", "study.yaml", "--replications", replications, "--csv", "table", "--report", "study.html", "--json", "study.json")
	if err := os.WriteFile(filepath.Join(alone, "study.txt"), []byte(text), 0o666); err != nil {
		t.Fatal(err)
	}
	for _, name := range answers {
		want, err := os.ReadFile(filepath.Join(alone, name))
		if err != nil {
			t.Fatal(err)
		}
		got, err := os.ReadFile(filepath.Join(folder, name))
		if err != nil {
			t.Error(err)
		} else if !bytes.Equal(got, want) {
			t.Errorf("%s is not that of one machine: %d bytes, not %d", name, len(got), len(want))
		}
	}
}
