package sea

import (
	"testing"

	"coredays/model/chance"
	"coredays/model/unit"
)

// An expedition of 60 days: 1440 hours of height, one replication.
func benchmarkSeries(b *testing.B, c Course, t *Table) {
	var s Series
	sum, n := 0.0, 0
	b.ReportAllocs()
	for b.Loop() {
		s.Begin(c, chance.Replication(1, n), newYear(2027))
		for step := range 1440 {
			sum += s.Height(step, t)
		}
		n++
	}
	if sum <= 0 {
		b.Fatal("no sea")
	}
}

func BenchmarkSixtyDaysByProcess(b *testing.B) {
	benchmarkSeries(b, ByProcess(NewProcess(LongMemory, ShortMemory, unit.Hour)), tableOf(b, flat(2.5, 0.4)))
}

func BenchmarkSixtyDaysByFittedProcess(b *testing.B) {
	l := likenessOf(b, 4)
	benchmarkSeries(b, l.Course, l.Table)
}

func BenchmarkSixtyDaysByBlocks(b *testing.B) {
	l := likenessOf(b, 8)
	benchmarkSeries(b, l.Course, l.Table)
}
