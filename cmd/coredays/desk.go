package main

import (
	"context"
	"fmt"
	"io"
	"net"
	"os/exec"
	"path/filepath"
	"runtime"
	"slices"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"coredays/cmd/coredays/call"
	"coredays/cmd/coredays/desk"
	"coredays/model/voyage"
	"coredays/output"
	"coredays/output/page"
	"coredays/output/sheet"
	"coredays/scenario/document"
	"coredays/sim/statistics"
)

// atDesk is a call of desk.
type atDesk struct {
	port   int
	noOpen bool
}

var portBound = call.Bound{Flag: "port", Least: 0, Most: 65535, Why: "0 takes one that is free"}

func newDesk() *cobra.Command {
	var a atDesk
	cmd := &cobra.Command{
		Use:   "desk [SCENARIO]",
		Short: "Plan and answer side by side in a local page",
		Long: `Desk prints, and opens in the browser, an address on this machine with a page: the plan on one side,
what it means on the other, renewed as one types. It saves to the same file and keeps its comments.
Without a file it shows the built-in demonstration. Only this machine reaches the page, and only who
has the whole address. Ctrl-C ends it, and asks first where something is not saved; a second Ctrl-C ends it at once.`,
		Example: `  coredays desk plan.yaml
  coredays desk --port 0`,
		Args: call.OneScenario,
		RunE: func(c *cobra.Command, args []string) error {
			return a.serve(c.Context(), args, c.OutOrStdout())
		},
	}
	cmd.Flags().IntVar(&a.port, "port", 0, "port on the loopback; 0 takes one that is free")
	cmd.Flags().BoolVar(&a.noOpen, "no-open", false, "print the address and open no browser")
	return cmd
}

func (a *atDesk) serve(ctx context.Context, args []string, stdout io.Writer) error {
	if err := portBound.Holds(a.port); err != nil {
		return err
	}
	file := ""
	if len(args) == 1 {
		if !slices.Contains([]string{".yaml", ".yml"}, strings.ToLower(filepath.Ext(args[0]))) {
			return call.AsFault(fmt.Errorf("%s: the desk edits scenarios in YAML, whose names end in .yaml or .yml", args[0]))
		}
		opened, err := document.OpenFile(args[0])
		if err != nil {
			return call.AsFault(fmt.Errorf("the scenario can't be read: %w", err))
		}
		opened.Close()
		file = args[0]
	}
	d := laid(file)
	l, err := net.Listen("tcp4", net.JoinHostPort("127.0.0.1", strconv.Itoa(a.port)))
	if err != nil {
		return call.AsFault(err)
	}
	address := "http://" + l.Addr().String() + d.Path()
	fmt.Fprintf(stdout, "The desk is at\n  %s\nCtrl-C ends it.\n", address)
	if !a.noOpen {
		openBrowser(ctx, address)
	}
	return call.AsFault(d.Serve(ctx, l, func() {
		fmt.Fprintln(stdout, "Something on the page is not saved. The desk ends when it is saved, or the page closed; Ctrl-C again ends it at once, and what is unsaved is lost.")
	}))
}

// laid is a desk with a scenario, and all that it writes.
func laid(file string) *desk.Desk {
	d := desk.New(file)
	d.Dates = call.Departures
	d.Report, d.Workbook = written(func(_ context.Context, w io.Writer, r *output.Report) error { return page.Report(w, r) }), written(sheet.Workbook)
	return d
}

// written has the desk write a file as simulate does.
func written(write func(context.Context, io.Writer, *output.Report) error) desk.Write {
	return func(ctx context.Context, to io.Writer, v *voyage.Voyage, results *statistics.Results, warnings []string, invented bool) error {
		s := results.Closely()
		s.Warnings, s.Invented = slices.Concat(warnings, s.Warnings), invented
		r := reportOf(ctx, v, results, s)
		if r == nil {
			return context.Cause(ctx)
		}
		r.Replications = results.Columns()
		return write(ctx, to, r)
	}
}

// openBrowser shows an address if this machine has a way to; it is printed anyhow.
func openBrowser(ctx context.Context, address string) {
	call := map[string][]string{"darwin": {"open"}, "windows": {"rundll32", "url.dll,FileProtocolHandler"}}[runtime.GOOS]
	if call == nil {
		call = []string{"xdg-open"}
	}
	browser := exec.CommandContext(context.WithoutCancel(ctx), call[0], append(call[1:], address)...)
	if browser.Start() == nil {
		go func() { _ = browser.Wait() }()
	}
}
