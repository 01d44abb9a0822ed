package main

import (
	"context"
	"os"
	"regexp"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// shown is a command of the README with what it prints: a block of one line of shell, and right
// after it a block of text.
var shown = regexp.MustCompile("(?m)^```sh\ngo run \\./cmd/coredays(.*)\n```\n+```text\n((?s:.*?))^```$")

// scenarioBlock is the scenario of the README.
var scenarioBlock = regexp.MustCompile("(?m)^```yaml\n((?s:.*?))^```$")

// readme goes to the top level, where the README's commands are to be called, and reads it.
func readme(t *testing.T) string {
	t.Helper()
	t.Chdir(top)
	text, err := os.ReadFile("README.md")
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

func TestTheReadmeShowsWhatTheProgramPrints(t *testing.T) {
	text := readme(t)
	places := shown.FindAllStringSubmatchIndex(text, -1)
	if !strings.Contains(text, "./cmd/coredays simulate") || len(places) == 0 {
		t.Fatal("README.md shows no simulation")
	}
	var now strings.Builder
	from := 0
	for _, at := range places {
		now.WriteString(text[from:at[4]])
		now.WriteString(prints(t, text[at[2]:at[3]]))
		from = at[5]
	}
	now.WriteString(text[from:])
	if *update {
		if err := os.WriteFile("README.md", []byte(now.String()), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	if difference := cmp.Diff(strings.Split(text, "\n"), strings.Split(now.String(), "\n")); difference != "" {
		t.Errorf("README.md shows other than what is printed now; go test ./cmd/coredays -update renews it (-README +now):\n%s", difference)
	}
}

// prints is what a command line prints.
func prints(t *testing.T, line string) string {
	t.Helper()
	code, stdout, stderr := called(context.Background(), wordsOf(line)...)
	if code != exitOK || stderr != "" {
		t.Fatalf("%s: exit %d: %s", line, code, stderr)
	}
	return stdout
}

// words takes a command line apart; double quotes keep blanks together.
func wordsOf(line string) (list []string) {
	for _, word := range regexp.MustCompile(`(?:"[^"]*"|[^\s"])+`).FindAllString(line, -1) {
		list = append(list, strings.ReplaceAll(word, `"`, ""))
	}
	return list
}

// The scenario that the README shows is the one that its command reads, and can be simulated as it
// stands there.
func TestTheReadmesScenarioIsTheOneThatItSimulates(t *testing.T) {
	text := readme(t)
	block := scenarioBlock.FindStringSubmatch(text)
	command := shown.FindStringSubmatch(text)
	if block == nil || command == nil {
		t.Fatal("README.md shows no scenario with its answer")
	}
	file, err := os.ReadFile(wordsOf(command[1])[1])
	if err != nil {
		t.Fatal(err)
	}
	if difference := cmp.Diff(string(file), block[1]); difference != "" {
		t.Errorf("the README's scenario is not %s (-file +README):\n%s", wordsOf(command[1])[1], difference)
	}
	copied := t.TempDir() + "/plan.yaml"
	if err := os.WriteFile(copied, []byte(block[1]), 0o644); err != nil {
		t.Fatal(err)
	}
	prints(t, ` simulate "`+copied+`" --replications 20`)
}
