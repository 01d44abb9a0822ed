package records

import (
	"math"

	"coredays/model/record"
	"coredays/model/unit"
)

// recoveredColumn may be missing from a table of holes: metres recovered are then not scored.
const recoveredColumn = "recovered_m"

// mostExpanded is the most that is recovered of what was drilled, as a share: cores expand, by 18 % at the 98th
// hundredth of extended-barrel cores (core summary, doi:10.5281/zenodo.10498831); the rest is room for slips.
const mostExpanded = 2

// catch reads how many cores a hole has by the record and what was recovered in all. A hole without cores
// brought nothing up.
func (t *recordTable) catch(h *record.Hole) {
	h.All = t.maybeCount("n_cores", mostOnRecord)
	if !t.has("n_cores") {
		h.All = h.CoreCount()
	}
	h.Recovered = unit.Length(math.NaN())
	if _, known := t.column[recoveredColumn]; known && t.has(recoveredColumn) {
		h.Recovered = unit.Length(t.number(recoveredColumn, 0, mostExpanded*deepestHole))
	} else if h.All == 0 {
		h.Recovered = 0
	}
}
