package simtest

import (
	"context"
	"testing"
	"time"

	"coredays/model/plan"
	"coredays/model/rig"
)

// Endless are plans of which one replication takes minutes, each in another loop of the engine.
func Endless() map[string]*plan.Plan {
	waits := OneSite(PistonHole("A", 100))
	waits.Sites[0].Unusable = plan.Unusable{Because: "ice", Every: Just(1e-3), Lasts: Just(1e-3)}
	works := Tasks(Just(3e10 * Hours))
	repairs := OneSite(PistonHole("A", 100))
	repairs.Ship.Rates[rig.BreakdownEvery], repairs.Ship.Rates[rig.RepairTime] = Just(1), Just(3e10*Hours)
	sails := OneSite(PistonHole("A", 100))
	sails.Ship.Rates[rig.SailingSpeed] = Just(1e-9)
	return map[string]*plan.Plan{"waiting": waits, "working": works, "repairing": repairs, "sailing": sails}
}

// EndsSoon fails where a call goes on for a second after its context has ended; it takes a hundredth of that.
func EndsSoon(t testing.TB, name string, call func(context.Context)) {
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
