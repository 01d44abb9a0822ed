package records

import (
	"io"
	"math"

	"coredays/model/coring"
	"coredays/model/record"
	"coredays/model/unit"
)

// coreColumns must be in a table of cores.
var coreColumns = []string{"program", "leg", "site", "hole", "core", "type", "cored_m", "recovered_m", "time_on_deck"}

// coreTypes are the letters by which cores of the tools are numbered.
var coreTypes = func() map[string]coring.Tool {
	types := map[string]coring.Tool{}
	for t := range coring.Tools {
		types[t.Letter()] = t
	}
	return types
}()

// longestCoredCore is beyond any core: the longest barrel is 19 m, from memory.
const longestCoredCore = 40.0

// ReadCores reads a table of cores by hole, in the order of the file. Rows of other tools and drilled
// intervals are passed over; rows that can't be read are left out and listed.
func ReadCores(name string, r io.Reader) (map[record.CoreHole][]record.Core, []record.LeftOut, error) {
	t, err := openTable(name, r, coreColumns)
	if err != nil {
		return nil, nil, err
	}
	holes := map[record.CoreHole][]record.Core{}
	for t.next() {
		tool, cored := coreTypes[t.text("type")]
		if !cored {
			continue
		}
		hole := record.CoreHole{Program: t.word("program"), Leg: t.word("leg"), Site: t.word("site"), Hole: t.word("hole")}
		core := record.Core{Tool: tool, Number: t.count("core", 0, mostOnRecord), Cored: unit.Length(t.maybe("cored_m", 0, longestCoredCore)),
			Recovered: unit.Length(math.NaN())}
		if t.has("recovered_m") {
			core.Recovered = unit.Length(t.number("recovered_m", 0, longestCoredCore))
		}
		if t.has("time_on_deck") {
			core.OnDeck = t.moment("time_on_deck")
		}
		if t.keep() {
			holes[hole] = append(holes[hole], core)
		}
	}
	return holes, sortedOut(t.out), t.someRows(name)
}
