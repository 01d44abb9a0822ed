package rig

import (
	"coredays/model/drillstring"
	"coredays/model/unit"
)

// Figure is a single number of a ship with where it comes from.
type Figure struct {
	Value  float64 // SI
	Text   string  // as written, with its unit
	Source string
}

// Tubulars is what a ship can hang in the water, and from what: ratings as her owner states them, to
// hold a plan against.
type Tubulars struct {
	Pipe           []PipeOnBoard // in the order in which it hangs, from the bit up
	Collars        Figure        // weight collars of an assembly
	CollarsOnBoard Figure
	Assemblies     Figure // complete ones on board, that in use included
	Derrick        Figure // static capacity, N
	Hoist          Figure // of blocks, line and drawworks, N
	Overpull       Figure // kept back for freeing the string, N
	Roll           Figure // lean of the ship that the top of the string must bear, radians
	GuideHorn      Figure // radius of the guide horn, m; 0 for none
}

// PipeOnBoard is the drill pipe of one kind.
type PipeOnBoard struct {
	drillstring.Stock
	Source string
}

// Length is that of all drill pipe on board.
func (t *Tubulars) Length() (sum unit.Length) {
	for _, p := range t.Pipe {
		sum += p.Length
	}
	return sum
}

// LeftInHole is the length of pipe that stays in a hole of a depth with an assembly: the string is severed above where it is
// stuck, on average half way down [judgement].
func LeftInHole(depth, assembly unit.Length) unit.Length { return max(0, depth-assembly) / 2 }

// Carries is what derrick and hoist both carry, the travelling gear included.
func (t *Tubulars) Carries() unit.Force { return unit.Force(min(t.Derrick.Value, t.Hoist.Value)) }

// Board is the assembly and the pipe that a string can be made of.
func (t *Tubulars) Board() (drillstring.Board, error) {
	table, err := drillstring.Published()
	if err != nil {
		return drillstring.Board{}, err
	}
	assembly, err := table.CoringAssembly(int(t.Collars.Value))
	board := drillstring.Board{Assembly: assembly}
	for _, p := range t.Pipe {
		board.Stock = append(board.Stock, p.Stock)
	}
	return board, err
}
