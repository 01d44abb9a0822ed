// Package places says what a position and a month already tell, coarsely: tropical cyclones, sea ice,
// strong currents, the depth of water, land.
//
//	storms := places.CyclonesNear(p, time.September)
//	if storms.Days > 0.03 { … }
//
// The tables are for cautions and defaults, not for decisions: cells of half a degree to 2.5 degrees, the
// climate of past decades, and errors that each table's source says (see ReliefSource, CurrentSource,
// CycloneSource, IceSource, which go with every sentence that uses them). A place is looked up in the cell
// that holds it; nothing is blended between cells.
//
// # What is not in it
//
// Swell that a distant storm leaves, which outlives it by days and reaches where no storm of the table came:
// only what the climate of waves has of it. Lows of high latitudes: those are in the waves too. Fog, ship
// traffic, cables, tides, eddies. Ice between the years: the table knows a rule and an edge.
//
// # Spells
//
// YearAt has what closes a place month by month; Year.At draws it: cyclones with the flight from them, ice
// where it is the rule. A month's storms and ice change at its first day, which nature does not.
//
// # Files
//
// cyclones.gz, currents.gz, relief.gz and ice.gz are made by coredays/cmd/packplaces from the tables that
// the sources name, without loss.
//
// # References
//
//   - ETOPO5, 5 arc-minute relief: NOAA National Geophysical Data Center 1988, Data Announcement 88-MGG-02.
//   - OSCAR surface currents: Earth & Space Research 2009, doi:10.5067/OSCAR-03D01.
//   - HURDAT2: Landsea and Franklin 2013, Monthly Weather Review 141, 3576.
//   - Best tracks of the Joint Typhoon Warning Center, US Navy.
package places

//go:generate go run coredays/cmd/packplaces -to .
