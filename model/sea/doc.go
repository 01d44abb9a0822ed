// Package sea makes significant wave heights in time for a place and a date, the heave that a
// ship makes of them, and what the crew is told of them beforehand.
//
// The chain is: a Climate (monthly mean and variation of the height, built in or the user's)
// becomes a Table by day of the year; a Process gives a standard normal score that keeps its
// memory from hour to hour; Table.Height turns the score into metres; a Response turns metres
// into heave; a Forecast tells the crew the score to come, with its errors.
//
//	climate, err := sea.BuiltIn(-48.6, 158.1)
//	table, err := sea.NewTable(climate)
//	process := sea.NewProcess(sea.LongMemory, sea.ShortMemory, 3*unit.Hour)
//	state := process.Start(n1, n2)          // two independent standard normals
//	height := table.Height(dayOfYear, state.Score())
//	state = process.Next(state, n3, n4)     // 3 h later
//
// Heights are those of a 3-hour mean sea: the crew works in the true sea, not in the sampling
// error of a 20-minute buoy record.
//
// # What is left out
//
// Ice, current, tropical cyclones as such (only as far as they are in the monthly variation),
// wind, wave direction, and any dependence of the period on more than the height. The score's
// memory is the same in every season and at every height: real storms last longer than this at
// sheltered places and shorter in the Gulf of Alaska. Expect about 12 % error of mean spells and
// waits from a climate alone; ten years of record would themselves leave about 10 % on mean
// spells and 15 % on waits (compared on eight NDBC buoys and one hindcast point).
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
//     transform of the height.
//   - Rice's rate of crossings of a smooth Gaussian process [textbook]. The two-memory process is
//     textbook algebra, an Ornstein-Uhlenbeck process driven by another.
//   - Jensen, J. J., Mansour, A. E. and Olsen, A. S., 2004. Ocean Engineering 31, 61-85: heave of
//     a box-shaped ship in closed form [from memory; see Hull.Amplification].
//   - Pierson and Moskowitz; DNV-RP-C205: spectra and the peak factor by period [from memory].
package sea
