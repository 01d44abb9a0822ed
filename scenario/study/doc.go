// Package study reads the file of a study: many plans that differ in what it lists, each simulated as it is by itself.
// This page is the manual of that file.
//
// A study is YAML, TOML or JSON as a scenario is, and its faults are told alike:
//
//	version: 1
//	title: Two transects, when and for how long      # without it the name of the file
//	scenarios: [north.yaml, south.yaml]              # from the folder of this file on
//	dates: 2027-01-14..2028-12-14/30d                # without it each scenario sails on its own date
//	vary:                                            # without it each is as it stands
//	  - {set: sea_days, to: [50 d, 56 d, 60 d]}
//	  - {set: "sites[SB-01].cap", to: [9 d, 12 d]}
//
// Each scenario is taken with each value of each setting and on each date: here 2 × 3 × 2 × 24 plans. A setting is what
// --set takes, path and value; a value with braces goes in quotes, such as
// "{low: 18 stands/h, mid: 22 stands/h, high: 25 stands/h}". Dates are what --departures of coredays compare takes: a
// list, or first..last/step; a date without a time has that of the scenario.
package study
