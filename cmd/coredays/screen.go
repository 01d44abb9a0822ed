package main

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"os/exec"
	"slices"
	"strconv"
	"strings"

	"github.com/spf13/cobra"
	"golang.org/x/term"

	"coredays/output/text"
)

// screen is standard output as people have it before them: as wide as the terminal, in bold where that can be seen,
// and through a pager where the answer is longer than the terminal is high. On anything else than a terminal it
// hands on what is written, as it is.
type screen struct {
	out           io.Writer
	terminal      bool
	width, height int                         // columns and lines; 0 where nothing says
	lookup        func(string) (string, bool) // of the environment

	colour string // auto, always or never
	alone  bool   // without a pager

	paged bytes.Buffer
	held  bool // what is written waits for the pager
}

// screenOn looks at where standard output goes.
func screenOn(out io.Writer) *screen {
	s := &screen{out: out, lookup: os.LookupEnv, colour: "auto"}
	if file, is := out.(*os.File); is && term.IsTerminal(int(file.Fd())) {
		s.terminal = true
		if width, height, err := term.GetSize(int(file.Fd())); err == nil {
			s.width, s.height = width, height
		}
	}
	return s
}

func (s *screen) env(name string) string {
	value, _ := s.lookup(name)
	return value
}

var colours = []string{"auto", "always", "never"}

func (s *screen) addFlags(root *cobra.Command) {
	root.PersistentFlags().StringVar(&s.colour, "color", "auto", "bold headings: `WHEN` is auto (on a terminal, unless NO_COLOR is set), always or never")
	root.PersistentFlags().BoolVar(&s.alone, "no-pager", false, "print a long answer on a terminal without a pager (PAGER, or less)")
}

// Widths of an answer: below the least tables can't be read, and lines above the most are hard to follow.
const (
	leastWidth = 80
	mostWidth  = 140
)

// begin makes a command print on the screen.
func (s *screen) begin(cmd *cobra.Command) error {
	if !slices.Contains(colours, s.colour) {
		return fmt.Errorf("--color %q: give one of %s", s.colour, strings.Join(colours, ", "))
	}
	s.held = s.terminal && !s.alone && s.pager() != "" && !slices.Contains(unpaged, cmd.Name())
	cmd.Root().SetOut(text.Screen{Writer: s, Width: s.columns(), Colour: s.inColour()})
	return nil
}

// unpaged are the commands whose output goes into a file, or goes on while they run.
var unpaged = []string{"desk", "init", "man", "completion", "bash", "zsh", "fish", "powershell", "help"}

// columns is how wide an answer is: as wide as COLUMNS or the terminal says, within reason.
func (s *screen) columns() int {
	width := s.width
	if n, err := strconv.Atoi(s.env("COLUMNS")); err == nil && n > 0 {
		width = n
	}
	if width == 0 {
		return text.PageWidth
	}
	return min(max(width, leastWidth), mostWidth)
}

// inColour follows no-color.org: a NO_COLOR that is not empty turns colour off, unless the call asks for it.
func (s *screen) inColour() bool {
	if s.colour == "auto" {
		return s.terminal && s.env("NO_COLOR") == "" && s.env("TERM") != "dumb"
	}
	return s.colour == "always"
}

// pager is the command that long answers are shown by; empty for none.
func (s *screen) pager() string {
	p, set := s.lookup("PAGER")
	switch {
	case !set:
		return "less"
	case p == "cat":
		return ""
	}
	return p
}

// Write hands on, or keeps for the pager.
func (s *screen) Write(b []byte) (int, error) {
	if s.held {
		return s.paged.Write(b)
	}
	return s.out.Write(b)
}

// end shows what was kept: through the pager where it is longer than the terminal is high.
func (s *screen) end() error {
	if s.paged.Len() == 0 {
		return nil
	}
	if s.height == 0 || bytes.Count(s.paged.Bytes(), []byte("\n")) < s.height {
		_, err := s.paged.WriteTo(s.out)
		return err
	}
	whole := bytes.NewReader(s.paged.Bytes())
	show := exec.Command("sh", "-c", s.pager())
	show.Stdin, show.Stdout, show.Stderr = whole, s.out, os.Stderr
	show.Env = os.Environ()
	if s.env("LESS") == "" {
		show.Env = append(show.Env, "LESS=FRX") // ends on one screen, lets bold through, leaves the answer standing
	}
	if err := show.Start(); err != nil {
		_, err = io.Copy(s.out, whole)
		return err
	}
	if err := show.Wait(); err != nil && show.ProcessState.ExitCode() == 127 { // sh found no such command
		_, err = s.paged.WriteTo(s.out)
		return err
	}
	return nil // a pager that is left early has shown what was wanted
}
