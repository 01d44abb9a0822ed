package heave

import "coredays/model/unit"

// LargestInTenMinutes is the largest heave expected in ten minutes over the significant heave,
// both double amplitudes: sqrt(ln N / 2) of a narrow Rayleigh sea [textbook], 1.43 for the N = 60
// cycles of 10 s in ten minutes. Published limits are often stated as the largest in ten minutes;
// the heave of Hull and Response is significant.
const LargestInTenMinutes = 1.4

// LargestWave is the largest wave to expect in three hours over the significant height: sqrt(ln N / 2) of a narrow Rayleigh sea
// [textbook], as for heave, with N = 1000 waves of some 11 s.
const LargestWave = 1.86

// LargestHeave is the largest heave expected in ten minutes for a significant heave.
func LargestHeave(significant unit.Length) unit.Length { return significant * LargestInTenMinutes }

// SignificantHeave is the significant heave for a largest heave in ten minutes, such as a published
// limit.
func SignificantHeave(largest unit.Length) unit.Length { return largest / LargestInTenMinutes }
