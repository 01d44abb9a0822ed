// Package rigfile reads what a rig writes down: operations logs, core tables and recordings of the rig's channels, as
// CSV, TSV or workbook. Which of the three a table is, its heading says. Such files are seldom in order: what can
// be read is read, and everything that was wrong is noted with its file, its line and its cure. Nothing is put right
// silently, and what can't be read for certain is left out.
//
// # Operations log
//
// The columns are from (a time; UTC, unless it has a zone or the heading says local), to (else the next line's from)
// or hours, what (the ship's own words), site, hole, depth_mbsf, and where known bit_from_m, bit_to_m (of the bit below
// the sea surface), stands, note. A line may lump work together ("out of hole, laid out assembly, secured").
//
// # Core table
//
// The columns are site, hole, core, type (H, F, X, R; another for what is no core of these tools), top_depth_mbsf,
// cored_m, recovered_m, time_on_deck, water_depth_m, and where known leg.
//
// # Recording
//
// The columns are time (or seconds), block_m, hook_load with its unit in the heading (hook_load_klbf, hook_load_t,
// hook_load_kN), and where recorded bit_depth_m and wire_m.
package rigfile
