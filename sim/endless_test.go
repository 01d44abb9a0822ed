package sim

import (
	"context"
	"testing"
	"time"

	"coredays/model/plan"
	"coredays/model/rig"
)

// endless are plans of which one replication takes minutes, each in another loop of the engine.
func endless() map[string]*plan.Plan {
	waits := oneSite(pistonHole("A", 100))
	waits.Sites[0].Unusable = plan.Unusable{Because: "ice", Every: just(1e-3), Lasts: just(1e-3)}
	works := tasks(just(3e10 * hours))
	repairs := oneSite(pistonHole("A", 100))
	repairs.Ship.Rates[rig.BreakdownEvery], repairs.Ship.Rates[rig.RepairTime] = just(1), just(3e10*hours)
	sails := oneSite(pistonHole("A", 100))
	sails.Ship.Rates[rig.SailingSpeed] = just(1e-9)
	return map[string]*plan.Plan{"waiting": waits, "working": works, "repairing": repairs, "sailing": sails}
}

// endsSoon fails where a call goes on for a second after its context has ended; it takes a hundredth of that.
func endsSoon(t testing.TB, name string, call func(context.Context)) {
	t.Helper()
	const soon = 30 * time.Millisecond
	ctx, cancel := context.WithTimeout(t.Context(), soon)
	defer cancel()
	began := time.Now()
	call(ctx)
	if took := time.Since(began); took < soon/2 || took > soon+time.Second {
		t.Errorf("%s ended after %v; its context had ended after %v", name, took, soon)
	}
}
