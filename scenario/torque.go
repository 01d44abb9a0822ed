package scenario

import (
	"strings"

	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/scenario/document"
)

const mostTorque = 1e6 // N m, 738 klbf ft; more is a slip of the unit

// torque reads a force on an arm of a foot or a metre, if it is there.
func (c *clerk) torque(path string, s *document.Spread, to *rig.Figure) {
	if s == nil {
		return
	}
	torque := 0.0
	for suffix, arm := range map[string]unit.Length{" ft": unit.Foot, " m": 1} {
		if force, found := strings.CutSuffix(s.Value.Value, suffix); found {
			newtons, _ := unit.OfForce.Parse(force) // 0 is too little
			torque = newtons * float64(arm)
		}
	}
	if !(torque > 0 && torque <= mostTorque) { // not-a-number neither
		c.Fault(path, s.Value.Value, `a torque above 0 kN m and at most 1000 kN m, such as "60 klbf ft" or "81 kN m"`)
		return
	}
	*to = rig.Figure{Value: torque, Text: s.Value.Value, Source: c.Words(document.Join(path, "source"), s.Source, c.Source(path))}
}
