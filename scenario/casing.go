package scenario

import (
	"coredays/model/plan"
	"coredays/scenario/document"
	"coredays/scenario/entry"
)

// casing reads the strings of casing of a hole. The first of a new hole comes in with its cone; a hole has to be drilled
// for any other. What is cased is not cored: cores of it come from another hole.
func (r siteReader) casing(path string, f itemFile, h *plan.Hole) {
	if f.Casing == nil {
		return
	}
	at := document.Join(path, "casing")
	if f.Reentry.Given && h.Reentry != plan.Cone {
		r.Fault(document.Join(path, "reentry"), f.Reentry.Value, "cone, or no word: casing hangs in one")
	}
	h.Reentry = plan.Cone
	if !f.IfLost.Given {
		h.IfLost = plan.GiveUp // another cone and its casing are days of work
	}
	for i, c := range entry.Few(r.Reader, at, f.Casing, entry.MostStages) {
		inner := document.At(at, i)
		first := i == 0 && !f.Existing.Given
		string := plan.Casing{Name: r.Name(document.Join(inner, "string"), c.String), By: r.casingWay(document.Join(inner, "by"), c.By, first)}
		string.To = r.Depth(document.Join(inner, "to"), c.To)
		switch to := document.Join(inner, "to"); {
		case !c.To.Given:
			r.Fault(to, "", "the depth of its shoe, such as 60 mbsf")
		case string.To > 0 && string.To <= h.CasedTo():
			r.Fault(to, c.To.Value, "deeper than the string around it, "+exactly(h.CasedTo()))
		default:
			r.reachable(to, c.To, string.To)
		}
		string.Cemented = r.Yes(document.Join(inner, "cemented"), c.Cemented, string.By == plan.InADrilledHole)
		h.Casing = append(h.Casing, string)
	}
	if f.DrillAheadTo.Given && h.DrillAheadTo > 0 && h.DrillAheadTo < h.CasedTo() {
		r.Fault(document.Join(path, "drill_ahead_to"), f.DrillAheadTo.Value, "no less than the casing reaches, "+exactly(h.CasedTo())+", or no word")
	}
}

// casingWay reads how a string comes to its depth.
func (r siteReader) casingWay(path string, f document.Text, first bool) plan.CasingWay {
	way := plan.CasingWay(r.Choice(path, f, "jetting", "drilling in", "drilled hole"))
	switch {
	case !f.Given && !first:
		return plan.InADrilledHole
	case first && way == plan.InADrilledHole:
		r.Fault(path, f.Value, "jetting or drilling in: the first string of a new hole comes in with its cone")
	case !first && way != plan.InADrilledHole:
		r.Fault(path, f.Value, "drilled hole, or no word: only the first string of a new hole comes in by itself")
	}
	return way
}
