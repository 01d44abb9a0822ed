package main

import (
	"bufio"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/spf13/cobra"

	"coredays/scenario"
)

// TestTheExamplesOfEachHelpTextRun runs every line of them in a folder with the files that they
// name.
func TestTheExamplesOfEachHelpTextRun(t *testing.T) {
	if testing.Short() {
		t.Skip("takes some seconds")
	}
	shell, err := exec.LookPath("sh")
	if err != nil {
		t.Skip("the examples need a shell")
	}
	for _, line := range examples(newRoot(screenOn(io.Discard), io.Discard)) {
		t.Run(line, func(t *testing.T) {
			t.Parallel()
			dir := t.TempDir()
			furnish(t, dir)
			if strings.HasPrefix(line, "coredays desk") {
				servesUntilInterrupted(t, shell, line, dir)
				return
			}
			cmd := exec.Command(shell, "-c", line)
			cmd.Dir = dir
			if out, err := cmd.CombinedOutput(); err != nil {
				t.Errorf("%v\n%s", err, out)
			}
		})
	}
}

// servesUntilInterrupted waits for the address of the desk, then presses Ctrl-C.
func servesUntilInterrupted(t *testing.T, shell, line, dir string) {
	t.Helper()
	cmd := exec.Command(shell, "-c", "exec "+line+" --no-open")
	cmd.Dir = dir
	out, err := cmd.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	said := bufio.NewScanner(out)
	for said.Scan() && !strings.Contains(said.Text(), "Ctrl-C") {
	}
	if err := cmd.Process.Signal(os.Interrupt); err != nil {
		t.Error(err)
	}
	if err := cmd.Wait(); err != nil {
		t.Error(err)
	}
}

// furnish puts the files into a folder that the examples speak of.
func furnish(t *testing.T, dir string) {
	t.Helper()
	files := map[string][]byte{"plan.yaml": scenario.Starter(), "study.yaml": []byte("version: 1\nscenarios: [plan.yaml]\ndates: 2027-06-01,2027-09-01\n"), "sites.csv": []byte("Site,Latitude,Longitude,Water depth (m)\nAX-01,33 30.0N,52 15.0W,4450\n")}
	for name, extract := range map[string]string{"holes.csv": "published/site_days.csv", "cores.csv": "published/core_cycles.csv", "log.csv": "scenarios/log.csv",
		"voyage.yaml": "lookahead/plan.yaml", "shiplog.csv": "lookahead/log.csv", "deck.csv": "lookahead/cores.csv", "forecast.csv": "lookahead/forecast.csv"} {
		data, err := os.ReadFile("../../testdata/" + extract)
		if err != nil {
			t.Fatal(err)
		}
		files[name] = data
	}
	for name, data := range files {
		if err := os.WriteFile(filepath.Join(dir, name), data, 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// examples are the lines of the examples of a command and those below it; each command of ours
// must have some.
func examples(cmd *cobra.Command) (lines []string) {
	for line := range strings.Lines(cmd.Example) {
		lines = append(lines, strings.TrimSpace(line))
	}
	for _, sub := range cmd.Commands() {
		lines = append(lines, examples(sub)...)
	}
	return lines
}

func TestEachCommandHasAnExampleThatCallsIt(t *testing.T) {
	for _, cmd := range newRoot(screenOn(io.Discard), io.Discard).Commands() {
		if name := cmd.Name(); name != "help" && name != "completion" && !strings.Contains(cmd.Example, "coredays "+name) {
			t.Errorf("%s has no example", name)
		}
	}
}
