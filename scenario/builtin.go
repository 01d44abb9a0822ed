package scenario

import (
	"bytes"
	_ "embed"
	"sync"

	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/scenario/fault"
	"coredays/scenario/lithology"
)

//go:embed drillship.yaml
var drillshipText []byte

//go:embed demonstration.yaml
var demonstrationText []byte

//go:embed starter.yaml
var starterText []byte

// stock is what is built in: it comes with the program and never changes.
type stock struct {
	ship   vessel
	faults fault.List // none, which a test holds
}

// builtIn reads the built-in ship once.
var builtIn = sync.OnceValue(func() stock {
	ship, faults := readShip("drillship.yaml", drillshipText)
	_, more := lithology.BuiltIn()
	return stock{ship, append(faults, more...)}
})

// Demonstration is the built-in scenario, an invented expedition.
func Demonstration() (*plan.Plan, error) { return Read("demonstration.yaml", demonstrationText) }

// DemonstrationText is the file of the built-in scenario.
func DemonstrationText() []byte { return bytes.Clone(demonstrationText) }

// Starter is a commented scenario to begin one's own from.
func Starter() []byte { return bytes.Clone(starterText) }

// BuiltInShip is the ship that needs no file.
func BuiltInShip() rig.Ship { return builtIn().ship.Ship }
