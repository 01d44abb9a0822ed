package main

import (
	"fmt"
	"io"
	"slices"

	"github.com/spf13/cobra"
)

// asked are the commands by what people come with.
var asked = []struct {
	question string
	commands []string
}{
	{"How many days, how much core, how sure", []string{"simulate", "compare", "diary", "sea"}},
	{"Can it be done, and what does it rest on", []string{"check", "basis", "hindcast"}},
	{"On board", []string{"lookahead", "rates"}},
	{"To write a plan and to try it out", []string{"init", "desk"}},
}

// helpOfRoot prints what the program is for and its commands, those first that most people want.
func helpOfRoot(w io.Writer, root *cobra.Command) {
	fmt.Fprintf(w, "%s\n", root.Long)
	told := map[string]bool{}
	line := func(c *cobra.Command) {
		told[c.Name()] = true
		fmt.Fprintf(w, "  %-11s %s\n", c.Name(), c.Short)
	}
	for _, group := range asked {
		fmt.Fprintf(w, "\n%s\n", group.question)
		for _, name := range group.commands {
			if i := slices.IndexFunc(root.Commands(), func(c *cobra.Command) bool { return c.Name() == name }); i >= 0 {
				line(root.Commands()[i])
			}
		}
	}
	fmt.Fprintln(w, "\nBesides")
	for _, c := range root.Commands() {
		if !told[c.Name()] && !c.Hidden {
			line(c)
		}
	}
	fmt.Fprint(w, `
Without a file those of plans take the built-in demonstration: "coredays simulate" is a first try.
"coredays COMMAND --help" explains a command with examples; "coredays --version" tells the version.
For all: --color auto, always or never (bold headings); --no-pager.
`)
}
