// Package sea makes significant wave heights in time for a place and a date, the heave that a
// ship makes of them, and what the crew is given of them beforehand.
//
// The chain is: a Climate (monthly mean and variation of the height, built in or the user's)
// becomes a Table by day of the year; a Course says how the sea goes on in time; a Series is what
// one replication makes of it, hour by hour, as scores and as heights; a Response turns metres
// into heave; a Forecast says the crew the score to come, with its errors.
//
//	climate, err := sea.BuiltIn(-48.6, 158.1)
//	table, err := sea.NewTable(climate)
//	course := sea.ByProcess(sea.NewProcess(sea.LongMemory, sea.ShortMemory, unit.Hour))
//	var series sea.Series
//	series.Begin(course, chance.Replication(seed, number), sails)
//	height := series.Height(hour, table) // m, so many hours after sailing
//
// A Record of the user's own (ReadRecord: bad readings are left out and reported) becomes a
// Likeness with a table and a course of its own: pieces of the record put together (Blocks) from
// five years on, below that a Process with memories fitted to it. Tally counts how long a sea
// stays above and below heights and how long the wait for a calm is, gaps or not; Study sets a
// record beside the sea made like it.
//
// Heights are those of a 3-hour mean sea: the crew works in the true sea, not in the sampling
// error of a 20-minute buoy record.
//
// # How like a record a made sea is
//
// Against the records of five NDBC buoys, over heights of 2 to 6 m that occur, all year: pieces of
// the record have mean spells within 2 % on average (11 % at worst in one season) and waits for 24
// and 48 h within 3 % (14 % at worst; 6 % and 25 % in one season). A process fitted to the record:
// spells within 12 % (40 % at worst), waits within 10 % (30 %). A climate of monthly figures alone:
// 12 % (64 %) and 10 % (31 %). Ten years of record would themselves leave about 10 % on mean
// spells and 15 % on waits of the years to come.
//
// # What is left out
//
// Ice, current, tropical cyclones as such (only as far as they are in the monthly variation),
// wind, wave direction, and any dependence of the period on more than the height. The score's
// memory is the same in every season and at every height: real storms last longer than this at
// sheltered places and shorter in the Gulf of Alaska. Seas made by processes are rough together
// wherever the ship is; a sea made of pieces of a record knows nothing of that at another place.
// Single readings that jump up and down are not looked for in a record.
//
// # References
//
// "[from memory]" marks what was not read in the original and should be checked before it is
// relied on.
//
//   - Dodet, G. and others, 2020. The Sea State CCI dataset v1. Earth System Science Data 12,
//     1929. The heights behind the built-in climate.
//   - NOAA COADS winds: the wind term in the built-in climate's months between the quarters.
//   - NOAA National Data Buoy Center, stations 41044, 44007, 44008, 46059, 46085: the records
//     compared with in the tests.
//   - Guedes Soares, C. and Ferreira, A. M., 1996; Monbet, V., Ailliot, P. and Prevosto, M.,
//     2007, Probabilistic Engineering Mechanics [abstracts only]: Gaussian series behind a
//     transform of the height, and resampling of records.
//   - Rice's rate of crossings of a smooth Gaussian process [textbook]. The two-memory process is
//     textbook algebra, an Ornstein-Uhlenbeck process driven by another.
//   - Jensen, J. J., Mansour, A. E. and Olsen, A. S., 2004. Ocean Engineering 31, 61-85: heave of
//     a box-shaped ship in closed form [from memory; see Hull.Amplification].
//   - Pierson and Moskowitz; DNV-RP-C205: spectra and the peak factor by period [from memory].
package sea
