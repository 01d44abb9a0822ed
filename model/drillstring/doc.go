// Package drillstring is the mechanics of a string of pipe and collars hanging from a ship: what
// it weighs, what it may carry, how far it reaches, how hard the bit can be loaded.
//
//	table, err := drillstring.Published()              // pipe, collars and make-up torque
//	assembly, err := table.CoringAssembly(10)          // bit weight collars, taper, transition
//	board := drillstring.Board{Assembly: assembly, Stock: stock}
//	reach := board.Reach(conditions)                   // deepest, and what stops it
//	hung, err := board.Hang(4000, conditions)          // bit 4000 m below the rig floor
//	load := hung.HookLoad(conditions)                  // in parts
//	margin := hung.Margin(conditions)                  // pipe- and hoist-limited
//
// Everything is SI; sections are listed from the bit up. A tension is the force at the top of a
// section, where it is greatest. Nothing here clears a string for use: the maker's current tables,
// the last inspection and licensed people decide.
//
// # What is left out
//
// Tool joints and threads (ratings are those of the pipe body; where the joint is weaker the maker's
// table says so), combined torque and tension, fatigue and its history, collapse and burst, hole
// drag, current drag and vortex shedding, the water that moves with the pipe, damping of heave,
// the lag of the assembly's mass in the elastic bar, the compensator (heave loads here are those of a
// string hung from the ship without it), the pressure of pumping, and the few metres of pipe in air.
//
// # References
//
// "[from memory]" marks what was not read in the original and should be checked before it is relied
// on. Where a page reproduces a standard, the page was read and not the standard.
//
//   - API RP 7G, 16th edition: tensile table and stretch as reproduced at
//     ru.scribd.com/document/436117436 and www.drillingformulas.com/tag/drillstring-elongation/;
//     errata of May 2000 at www.scribd.com/doc/97695986 [first page]; the rest [from memory].
//   - Farr's formula for the make-up torque of rotary shouldered connections, as in API RP 7G: abstract at
//     osti.gov/biblio/5965604; stress of tool joints, 72,000 psi: drillingmanual.com, torsional strength of
//     tool joints; stress of collars and dimensions of threads [from memory].
//   - API RP 9B: form of the round trip's work as at www.drillingformulas.com/round-trip-ton-miles-calculation/
//     and www.scribd.com/document/376571338 (which names RP 9B).
//   - Data sheet of 5 in 19.50 lb/ft S-135 NC50 pipe: scribd.com/document/552214615.
//   - Data sheet of drill collars, yield by size: ja.scribd.com/document/142874918.
//   - ODP Technical Note 31, tool sheets Drill String and BHA: the tapered string, its 4-1/8 in least
//     bore, its reach of about 8375 m, the parts of the assembly.
//   - Lapeyrouse, Formulas and Calculations for Drilling, Production and Workover, 2nd edition:
//     free point, margin of overpull, as reproduced on the pages named beside the tests.
//   - Air and Gas Drilling Field Guide, 3rd edition, p. 92: margin limited by the hoist.
//   - US patent 3618679 (1971) [abstract]: a guide horn spreads the roll of a ship along the pipe so
//     that the fibre stress stays below the fatigue limit.
//   - Lubinski: neutral point, fatigue limit of 20,000 psi in S-135 pipe [from memory].
//   - Teale, R., 1965. The concept of specific energy in rock drilling. Int. J. Rock Mech. Min. Sci. 2,
//     57-73 [from memory; the form as at calculator5.snowdaycalculatornow.com].
//   - Rods and bars: textbook mechanics.
package drillstring
