// Package check holds a plan against what ship, string, ground and sea allow, without simulating it.
//
//	findings := check.Plan(v, estimate)
//	verdict := check.Worst(findings)
//
// Each finding has a figure, its limit and where the limit comes from. Stop means that the plan
// breaks a rating, an approval or a law of nature, and can't be done as it stands. Caution means that somebody must
// look at it: what is only unlikely is one, with its chance where that is known, for holes are on record that nobody
// would have counted on. Pass means that nothing was found, which is no clearance: see the cautions that every
// printout carries.
//
// # What is not looked at
//
// Coring after the bit is released: logging releases it and comes last in every hole of a plan, so that
// it can't be asked for. Casing and re-entry cones, which a plan doesn't have. Re-entry without
// hardware is looked at as what leads to it: a bit that wears out in a hole without a funnel. The swell
// that distant cyclones leave, tides and eddies, ship traffic, cables, permits. Fatigue of pipe. Connections within the barrels and at
// the bit. How a compensator's pull
// changes along its stroke, and the stroke that a drilled joint takes up. How the sea widens the ship's
// own circle: one figure of it is held against the one allowed.
//
// # References
//
// Sources stand beside the limits. "Common practice" and "from memory" mark rules of thumb of the trade
// that were not read from a page; "judgement" marks ours.
package check
