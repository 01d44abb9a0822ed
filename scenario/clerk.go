package scenario

import (
	"coredays/model/plan"
	"coredays/model/sea"
	"coredays/scenario/entry"
)

// clerk reads the parts of an expedition and of a ship.
type clerk struct {
	*entry.Reader
	anywhere []plan.Unusable          // what stops work at any site
	records  map[string]*sea.Likeness // of the sea, by path
	reads    []string                 // paths of the files that the scenario names
	out      []bool                   // whether each site is left out
	without  []string                 // names of the sites and holes that are left out
}
