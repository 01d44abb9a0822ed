package sea

import (
	"math/rand/v2"
	"testing"

	"coredays/model/unit"
)

// Two normals, a step of 3 h, and its height in metres.
func BenchmarkThreeHourStepWithHeight(b *testing.B) {
	table, p := tableOf(b, flat(2.5, 0.4)), NewProcess(LongMemory, ShortMemory, 3*unit.Hour)
	r := rand.New(rand.NewPCG(7, 7))
	s := p.Start(r.NormFloat64(), r.NormFloat64())
	sum, day := 0.0, 1
	b.ReportAllocs()
	for b.Loop() {
		s = p.Next(s, r.NormFloat64(), r.NormFloat64())
		sum += table.Height(day, s.Score())
		if day++; day > 366 {
			day = 1
		}
	}
	if sum <= 0 {
		b.Fatal("no sea")
	}
}

func TestStepAndHeightAllocateNothing(t *testing.T) {
	table, p := tableOf(t, flat(2.5, 0.4)), NewProcess(LongMemory, ShortMemory, 3*unit.Hour)
	s, sum := p.Start(0.1, 0.2), 0.0
	if n := testing.AllocsPerRun(1000, func() {
		s = p.Next(s, 0.3, -0.2)
		sum += table.Height(40, s.Score())
	}); n != 0 {
		t.Errorf("%g allocations a step", n)
	}
}
