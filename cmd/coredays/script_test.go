package main

import (
	"encoding/json"
	"errors"
	"flag"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"

	"coredays/scenario"
)

var update = flag.Bool("update", false, "write golden answers and the README's output anew")

// TestMain puts the program on the path of the tests that run it as a process.
func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"coredays": main, "coredays-weighed": weighed})
}

// TestScripts calls the program as people do. The first word of a script's name is the command that
// it tries. Each script finds the starter scenario as starter.yaml.
func TestScripts(t *testing.T) {
	scripts := []string{"testdata/script/simulate_same.txtar"} // where goroutines meet
	if !testing.Short() {
		scripts, _ = filepath.Glob("testdata/script/*.txtar")
	}
	testscript.Run(t, testscript.Params{
		Files:               scripts,
		UpdateScripts:       *update,
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		Setup: func(e *testscript.Env) error {
			return os.WriteFile(filepath.Join(e.WorkDir, "starter.yaml"), scenario.Starter(), 0o644)
		},
		Cmds: map[string]func(*testscript.TestScript, bool, []string){
			"exits":   exits,
			"json":    isJSON,
			"folder":  folderHolds,
			"usage":   usage,
			"refused": refused,
		},
	})
}

// exits runs a command that must end with the exit code given first.
func exits(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: exits CODE command [args...]")
	}
	code := 0
	if err := ts.Exec(args[1], args[2:]...); err != nil {
		failed, ok := errors.AsType[*exec.ExitError](err)
		if !ok {
			ts.Fatalf("%v", err)
		}
		code = failed.ExitCode()
	}
	if want, err := strconv.Atoi(args[0]); err != nil || code != want {
		ts.Fatalf("exit code %d, want %s", code, args[0])
	}
}

// usage runs coredays with a call that is wrong: exit 2, nothing on standard output, and on standard
// error one message, of which the first argument is a part, and where to find help.
func usage(ts *testscript.TestScript, neg bool, args []string) {
	exits(ts, neg, append([]string{"2", "coredays"}, args[1:]...))
	lines := refusal(ts, args[0])
	if !strings.HasPrefix(lines[len(lines)-1], `"coredays help" lists the commands`) {
		ts.Fatalf("no way to help in %q", lines)
	}
}

// refused runs coredays with a plan or data at fault: exit 1, nothing on standard output, and the
// first argument in the first line of standard error.
func refused(ts *testscript.TestScript, neg bool, args []string) {
	exits(ts, neg, append([]string{"1", "coredays"}, args[1:]...))
	refusal(ts, args[0])
}

// refusal is what standard error holds when standard output holds nothing.
func refusal(ts *testscript.TestScript, want string) []string {
	if out := ts.ReadFile("stdout"); out != "" {
		ts.Fatalf("standard output should be empty and is %q", out)
	}
	lines := strings.Split(strings.TrimSpace(ts.ReadFile("stderr")), "\n")
	if !strings.Contains(lines[0], want) {
		ts.Fatalf("%q does not say %q", lines[0], want)
	}
	return lines
}

// isJSON wants a file to hold one JSON value and nothing else.
func isJSON(ts *testscript.TestScript, neg bool, args []string) {
	decoder := json.NewDecoder(strings.NewReader(ts.ReadFile(args[0])))
	var value map[string]any
	err := decoder.Decode(&value)
	if err == nil {
		if _, more := decoder.Token(); more != io.EOF {
			err = errors.New("more than one value")
		}
	}
	if (err == nil) == neg {
		ts.Fatalf("%s: JSON is not what was expected: %v", args[0], err)
	}
}

// folderHolds wants a folder to hold the files given and no others.
func folderHolds(ts *testscript.TestScript, neg bool, args []string) {
	entries, err := os.ReadDir(ts.MkAbs(args[0]))
	ts.Check(err)
	var names []string
	for _, e := range entries {
		names = append(names, e.Name())
	}
	if got, want := strings.Join(names, " "), strings.Join(args[1:], " "); (got == want) == neg {
		ts.Fatalf("%s holds %q, want %q", args[0], got, want)
	}
}
