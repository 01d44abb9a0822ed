package main

import (
	"os"
	"runtime/debug"
	"time"

	"github.com/spf13/cobra"
	"github.com/spf13/cobra/doc"

	"coredays/cmd/coredays/call"
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
		RunE: func(cmd *cobra.Command, args []string) error { return call.AsFault(manuals(cmd.Root(), args[0])) },
	}
}

// manuals writes the pages.
func manuals(root *cobra.Command, folder string) error {
	if err := os.MkdirAll(folder, 0o777); err != nil {
		return err
	}
	root.DisableAutoGenTag = true
	built := buildTime()
	return doc.GenManTree(root, &doc.GenManHeader{Title: "COREDAYS", Section: "1", Source: program(), Manual: "coredays", Date: &built}, folder)
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
