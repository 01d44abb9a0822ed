package ground

import "coredays/model/unit"

const klbf = 1000 * unit.PoundForce

// rockWeight is the least weight on bit with which a rock is cut as its rate has it. All from memory and common practice: 2,000 to
// 4,000 lbf for each inch of a roller-cone bit in hard rock, on a 9-7/8 in bit, down to little but the weight of the assembly.
var rockWeight = map[string]unit.Force{
	"chalk": 8 * klbf, "claystone": 10 * klbf, "volcaniclastic": 10 * klbf, "limestone": 15 * klbf, "chert": 20 * klbf, "basalt": 20 * klbf,
	"gabbro": 20 * klbf, "massive gabbro": 20 * klbf,
}

// RockWeight is the weight on bit that a lithology needs; what has none is sediment.
func RockWeight(lithology string) (weight unit.Force, rock bool) {
	weight, rock = rockWeight[lithology]
	return weight, rock
}
