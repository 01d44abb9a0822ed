// Coredays plans a scientific coring expedition on a riserless drillship: how many days each site
// will really take, how much core will be recovered, and how sure that is.
package main

import (
	"context"
	"io"
	"os"
	"os/signal"
	"syscall"
)

func main() { os.Exit(interruptible(os.Args[1:], os.Stdout, os.Stderr)) }

// interruptible carries out a command line. Ctrl-C, or the end of the time that a cluster gives, has it
// report what is done; a second one ends it at once.
func interruptible(args []string, stdout, stderr io.Writer) int {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	context.AfterFunc(ctx, stop)
	return run(ctx, args, stdout, stderr)
}
