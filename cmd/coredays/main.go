// Coredays plans a scientific coring expedition on a riserless drillship: how many days each site
// will really take, how much core will come up, and how sure that is.
package main

import (
	"context"
	"os"
	"os/signal"
)

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	code := run(ctx, os.Args[1:], os.Stdout, os.Stderr)
	stop()
	os.Exit(code)
}
