// Coredays plans a scientific coring expedition on a riserless drillship: how many days each site
// will really take, how much core will come up, and how sure that is.
package main

import (
	"context"
	"io"
	"os"
	"os/signal"
)

func main() { os.Exit(interruptible(os.Args[1:], os.Stdout, os.Stderr)) }

// interruptible carries out a command line. Ctrl-C has it report what is done; a second one ends
// it at once.
func interruptible(args []string, stdout, stderr io.Writer) int {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	context.AfterFunc(ctx, stop)
	return run(ctx, args, stdout, stderr)
}
