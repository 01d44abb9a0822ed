package rig

import "coredays/model/unit"

// clearance is how far above the sea floor a bit is held between holes [common practice].
const clearance = unit.Length(30)

// ClearOf is the depth below the sea surface of a bit that is clear of a sea floor; in very shallow water half way down.
func ClearOf(floor unit.Length) unit.Length { return max(floor-clearance, floor/2) }
