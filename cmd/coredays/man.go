package main

import (
	"bytes"
	"context"
	"errors"
	"io"
	"os"
	"path/filepath"
	"runtime/debug"
	"strings"
	"time"

	"github.com/spf13/cobra"
	"github.com/spf13/cobra/doc"
	"github.com/spf13/pflag"

	"coredays/cmd/coredays/call"
	"coredays/output"
)

func newMan() *cobra.Command {
	return &cobra.Command{
		Use:   "man DIR",
		Short: "Manual pages of all commands",
		Long: `Man writes a manual page of each command into a folder, for man(1). Completion of commands and flags
for a shell comes from "coredays completion".`,
		Example: `  coredays man man1
  coredays completion bash > coredays.bash`,
		Args: call.Taking(1, 1, "the folder to write to"),
		RunE: func(cmd *cobra.Command, args []string) error {
			return call.AsFault(manuals(cmd.Context(), cmd.Root(), args[0]))
		},
	}
}

// manuals writes the pages, those of sub commands too.
func manuals(ctx context.Context, root *cobra.Command, folder string) error {
	if err := os.MkdirAll(folder, 0o777); err != nil {
		return err
	}
	root.DisableAutoGenTag = true
	return manualsOf(ctx, root, folder)
}

func manualsOf(ctx context.Context, cmd *cobra.Command, folder string) error {
	built := buildTime()
	header := doc.GenManHeader{Title: strings.ToUpper(strings.ReplaceAll(cmd.CommandPath(), " ", "-")), Section: "1", Source: program(), Manual: "coredays", Date: &built}
	var page bytes.Buffer
	if err := doc.GenMan(cmd, &header, &page); err != nil {
		return err
	}
	file := filepath.Join(folder, strings.ReplaceAll(cmd.CommandPath(), " ", "-")+".1")
	failed := output.WriteFile(ctx, file, func(w io.Writer) error {
		_, err := io.WriteString(w, withWhatFlagsTake(cmd, page.String()))
		return err
	})
	for _, c := range cmd.Commands() {
		if c.IsAvailableCommand() && !c.IsAdditionalHelpTopicCommand() {
			failed = errors.Join(failed, manualsOf(ctx, c, folder))
		}
	}
	return failed
}

// withWhatFlagsTake has each flag of a manual page say what it takes, as its help does: the library's page has the
// default in that place, of which there is mostly none.
func withWhatFlagsTake(cmd *cobra.Command, page string) string {
	say := func(f *pflag.Flag) {
		taken, _ := pflag.UnquoteUsage(f)
		head := "\\fB--" + f.Name + "\\fP"
		before, rest, found := strings.Cut(page, head)
		if !found {
			return
		}
		line, rest, _ := strings.Cut(rest, "\n")
		switch value := strings.Trim(line, "[]=\""); {
		case taken == "":
			line = ""
		case value == "" || value == "[]":
			line = "=\\fI" + taken + "\\fP"
		default:
			line = "=\\fI" + taken + "\\fP (" + value + " if not given)"
		}
		page = before + head + line + "\n" + rest
	}
	cmd.NonInheritedFlags().VisitAll(say)
	cmd.InheritedFlags().VisitAll(say)
	return page
}

// buildTime is the date of the source as far as the build says; the pages of one build are the same on
// any day.
func buildTime() time.Time {
	if info, ok := debug.ReadBuildInfo(); ok {
		for _, s := range info.Settings {
			if at, err := time.Parse(time.RFC3339, s.Value); s.Key == "vcs.time" && err == nil {
				return at
			}
		}
	}
	return time.Unix(0, 0).UTC()
}
