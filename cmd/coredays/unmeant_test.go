package main

import (
	"context"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"runtime"
	"strconv"
	"strings"
	"testing"
	"time"

	"coredays/scenario"
)

// unmeant is a case of testdata/unmeant.txt, which says how they are written.
type unmeant struct {
	name          string
	replace, with []string
	call          []string
	sets          []string
	refused       string
	cautioned     string
}

const (
	endless    = time.Minute // a case that takes so long never ends
	mostMemory = 100 << 20   // bytes
)

func TestPlansThatNobodyCanMeanAreToldSo(t *testing.T) {
	cases := unmeants(t)
	if len(cases) < 60 {
		t.Errorf("%d cases, wanted at least 60", len(cases))
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			t.Parallel()
			c.check(t)
		})
	}
}

func unmeants(t *testing.T) (cases []unmeant) {
	data, err := os.ReadFile("testdata/unmeant.txt")
	if err != nil {
		t.Fatal(err)
	}
	for line := range strings.Lines(string(data)) {
		line = strings.TrimSuffix(line, "\n")
		word, rest, found := strings.Cut(line, ": ")
		if strings.HasPrefix(line, "#") || line == "" {
			continue
		}
		if word == "case" {
			cases = append(cases, unmeant{name: rest, call: []string{"simulate", "starter.yaml", "--replications", "20"}})
			continue
		}
		c := &cases[len(cases)-1]
		switch {
		case found && word == "replace":
			c.replace = append(c.replace, rest)
		case found && word == "with":
			c.with = append(c.with, repeated(rest))
		case found && word == "set":
			c.sets = append(c.sets, repeated(rest))
		case found && word == "call":
			c.call = strings.Fields(rest)
		case found && word == "refused":
			c.refused = rest
		case found && word == "cautioned":
			c.cautioned = rest
		default:
			t.Fatalf("what is %q?", line)
		}
	}
	return cases
}

var repetition = regexp.MustCompile(`<(\d+) x ([^<>]*)>`)

// repeated writes <3 x S#, > as S0, S1, S2, .
func repeated(text string) string {
	return repetition.ReplaceAllStringFunc(text, func(found string) string {
		parts := repetition.FindStringSubmatch(found)
		times, _ := strconv.Atoi(parts[1])
		var all strings.Builder
		for i := range times {
			all.WriteString(strings.NewReplacer("#", strconv.Itoa(i), `\n`, "\n").Replace(parts[2]))
		}
		return all.String()
	})
}

func (c unmeant) check(t *testing.T) {
	file := filepath.Join(t.TempDir(), "starter.yaml")
	text := string(scenario.Starter())
	if c.replace != nil {
		old := strings.Join(c.replace, "\n")
		if n := strings.Count(text, old); n != 1 {
			t.Fatalf("%q stands %d times in the starter, wanted once", old, n)
		}
		text = strings.Replace(text, old, strings.Join(c.with, "\n"), 1)
	}
	if err := os.WriteFile(file, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	code, stdout, stderr := c.weigh(t, file, c.call...)
	if c.refused != "" {
		c.wasRefused(t, code, stdout, stderr)
		return
	}
	if code != exitOK {
		t.Fatalf("exit %d: %s", code, stderr)
	}
	_, stdout, _ = c.weigh(t, file, "check", "starter.yaml", "--json", "-")
	c.wasCautioned(t, stdout)
}

// weigh runs the program where the file is, and holds it to its time and memory.
func (c unmeant) weigh(t *testing.T, file string, call ...string) (code int, stdout, stderr string) {
	ctx, cancel := context.WithTimeout(t.Context(), endless)
	defer cancel()
	args := append([]string(nil), call...)
	for _, s := range c.sets {
		args = append(args, "--set", s)
	}
	cmd := exec.CommandContext(ctx, "coredays-weighed", args...)
	cmd.Dir = filepath.Dir(file)
	weight := filepath.Join(cmd.Dir, "weight")
	cmd.Env = append(os.Environ(), weightFile+"="+weight)
	var out, errs strings.Builder
	cmd.Stdout, cmd.Stderr = &out, &errs
	err := cmd.Run()
	if ctx.Err() != nil {
		t.Fatalf("it does not end")
	}
	if cmd.ProcessState == nil {
		t.Fatal(err)
	}
	told, _ := os.ReadFile(weight)
	bytes, err := strconv.Atoi(string(told))
	if err != nil || bytes > mostMemory && !testing.Short() { // the race detector, which runs the short tests, takes several times as much
		t.Errorf("%d bytes of memory, %v; at most %d", bytes, err, mostMemory)
	}
	return cmd.ProcessState.ExitCode(), out.String(), errs.String()
}

// located is how a refusal begins, or has within: a line of the file, a setting or a flag.
var located = regexp.MustCompile(`(?m)(^|\()(starter\.yaml:\d+|--set: |--[a-z]+ )`)

func (c unmeant) wasRefused(t *testing.T, code int, stdout, stderr string) {
	switch {
	case code != exitFault && code != exitUsage, stdout != "":
		t.Errorf("exit %d with %.300q", code, stdout)
	case !strings.Contains(stderr, c.refused), !located.MatchString(stderr):
		t.Errorf("not told what is wrong, or not where:\n%s\nwant:\n%s", stderr, c.refused)
	case len(stderr) > 4000:
		t.Errorf("told in %d letters", len(stderr))
	}
}

func (c unmeant) wasCautioned(t *testing.T, stdout string) {
	var answer struct {
		Items    []struct{ Site, Hole, What, Verdict, Where, Cure string }
		Warnings []string
	}
	if err := json.Unmarshal([]byte(stdout), &answer); err != nil {
		t.Fatalf("%v in %q", err, stdout)
	}
	var told []string
	for _, item := range answer.Items {
		if item.Verdict == "caution" {
			line := item.What + ": " + item.Cure
			told = append(told, line)
			if strings.Contains(line, c.cautioned) && item.Where != "" && item.Cure != "" {
				return
			}
		}
	}
	t.Errorf("no caution, with where it stands and what helps, %q among\n%s", c.cautioned, strings.Join(told, "\n"))
}

// weightFile names the file for the most memory that the program had.
const weightFile = "COREDAYS_TEST_WEIGHT"

// weighed is the program that says afterwards how much memory it had.
func weighed() {
	code := interruptible(os.Args[1:], os.Stdout, os.Stderr)
	if err := os.WriteFile(os.Getenv(weightFile), []byte(strconv.Itoa(peak())), 0o600); err != nil {
		code = exitFault
	}
	os.Exit(code)
}

var highWater = regexp.MustCompile(`VmHWM:\s+(\d+) kB`)

// peak is the most memory that this process had, bytes: as the system has it where it says, else all that
// was ever asked of it.
func peak() int {
	if status, err := os.ReadFile("/proc/self/status"); err == nil {
		if found := highWater.FindSubmatch(status); found != nil {
			kB, _ := strconv.Atoi(string(found[1]))
			return kB << 10
		}
	}
	var all runtime.MemStats
	runtime.ReadMemStats(&all)
	return int(all.Sys)
}
