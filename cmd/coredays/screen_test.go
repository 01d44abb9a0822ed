package main

import (
	"bytes"
	"strings"
	"testing"

	"github.com/spf13/cobra"

	"coredays/output/text"
)

// terminalOf is a terminal of 90 columns and 10 lines, with some of the environment.
func terminalOf(out *bytes.Buffer, environment map[string]string) *screen {
	return &screen{out: out, terminal: true, width: 90, height: 10, colour: "auto",
		lookup: func(name string) (string, bool) { value, set := environment[name]; return value, set }}
}

// shownBy is what a command of some name brings onto a screen.
func shownBy(t *testing.T, s *screen, name, answer string) string {
	t.Helper()
	cmd := &cobra.Command{Use: name}
	if err := s.begin(cmd); err != nil {
		t.Fatal(err)
	}
	if _, err := cmd.OutOrStdout().Write([]byte(answer)); err != nil {
		t.Fatal(err)
	}
	if err := s.end(); err != nil {
		t.Fatal(err)
	}
	return s.out.(*bytes.Buffer).String()
}

func TestALongAnswerOnATerminalGoesThroughThePager(t *testing.T) {
	long, short := strings.Repeat("a line\n", 11), "a line\n"
	for _, c := range []struct {
		what, command, answer, pager string
		alone, pipe                  bool
		want                         string
	}{
		{what: "long", command: "check", answer: long, pager: "sed s/a/the/", want: strings.ReplaceAll(long, "a line", "the line")},
		{what: "short", command: "check", answer: short, pager: "sed s/a/the/", want: short},
		{what: "without a pager", command: "check", answer: long, pager: "sed s/a/the/", alone: true, want: long},
		{what: "PAGER empty", command: "check", answer: long, pager: "", want: long},
		{what: "no such pager", command: "check", answer: long, pager: "no-such-pager-here 2>/dev/null", want: long},
		{what: "a scenario", command: "init", answer: long, pager: "sed s/a/the/", want: long},
		{what: "no terminal", command: "check", answer: long, pager: "sed s/a/the/", pipe: true, want: long},
	} {
		s := terminalOf(&bytes.Buffer{}, map[string]string{"PAGER": c.pager})
		s.alone, s.terminal = c.alone, !c.pipe
		if got := shownBy(t, s, c.command, c.answer); got != c.want {
			t.Errorf("%s: %q", c.what, got)
		}
	}
}

func TestAnAnswerIsAsWideAsTheTerminalWithinReason(t *testing.T) {
	for _, c := range []struct {
		width   int
		columns string
		want    int
	}{{90, "", 90}, {90, "72", leastWidth}, {0, "", text.PageWidth}, {0, "80", 80}, {300, "", mostWidth}, {20, "", leastWidth}, {90, "many", 90}} {
		s := terminalOf(nil, map[string]string{"COLUMNS": c.columns})
		s.width = c.width
		if got := s.columns(); got != c.want {
			t.Errorf("terminal of %d, COLUMNS %q: %d columns, want %d", c.width, c.columns, got, c.want)
		}
	}
}

func TestColourIsForTerminalsAndNotUnderNoColor(t *testing.T) {
	for _, c := range []struct {
		colour      string
		terminal    bool
		environment map[string]string
		want        bool
	}{
		{"auto", true, nil, true}, {"auto", false, nil, false}, {"auto", true, map[string]string{"NO_COLOR": "1"}, false},
		{"auto", true, map[string]string{"NO_COLOR": ""}, true}, {"auto", true, map[string]string{"TERM": "dumb"}, false},
		{"always", false, map[string]string{"NO_COLOR": "1"}, true}, {"never", true, nil, false},
	} {
		s := terminalOf(nil, c.environment)
		s.colour, s.terminal = c.colour, c.terminal
		if got := s.inColour(); got != c.want {
			t.Errorf("%+v: %v", c, got)
		}
	}
	s := terminalOf(nil, nil)
	s.colour = "green"
	if err := s.begin(&cobra.Command{}); err == nil {
		t.Error("--color green is taken")
	}
}
