package sea

import "testing"

// An instrument that is stuck says one height for ever. A sea stated to centimetres never does so for a day; one
// stated to half metres may for two days, not for three.
func TestAHeightThatStaysIsFrozenTheSoonerTheFinerItIsTold(t *testing.T) {
	for _, c := range []struct {
		step   float64 // m between the heights stated
		hours  int
		frozen bool
	}{
		{0.01, 23, false}, {0.01, 24, true}, {0.1, 23, false}, {0.1, 24, true},
		{0.2, 24, false}, {0.5, 48, false}, {0.5, 71, false}, {0.5, 72, true},
	} {
		var readings []reading
		tell := func(height float64) {
			readings = append(readings, reading{at: int64(len(readings)) * 3600, height: height, line: len(readings) + 2})
		}
		for i := range 50 {
			tell(2 + c.step*float64(i%3))
		}
		for range c.hours + 1 {
			tell(4)
		}
		for i := range 50 {
			tell(2 + c.step*float64(i%3))
		}
		var report Report
		kept, want := screened(readings, &report), 100+c.hours+1
		if c.frozen {
			want = 100
		}
		if len(kept) != want || (report.Found[Frozen].Rows > 0) != c.frozen {
			t.Errorf("one height for %d h, told in steps of %g m: %d readings kept, want %d; %+v", c.hours, c.step, len(kept), want, report.Found[Frozen])
		}
	}
}
