package sea

import (
	"coredays/model/chance"
	"path/filepath"
	"testing"
)

func TestTmp(t *testing.T) {
	files, _ := filepath.Glob(filepath.Join(dataset(t), "ndbc_*.csv"))
	for _, m := range modes[:2] {
		for _, file := range files {
			r := buoy(t, file)
			course, table := m.make(t, r)
			record, made := make([][Seasons]Spells, len(goalHeights)), make([][Seasons]Spells, len(goalHeights))
			Gather(record, r.Start, r.Heights, goalHeights)
			for k := range 60 {
				Gather(made, r.Start, twin(r, course, table, chance.Replication(1, k)), goalHeights)
			}
			for i, h := range goalHeights {
				for s := AllYear; s < Seasons; s++ {
					a, b := &record[i][s], &made[i][s]
					if q := a.ShareAbove(); q < 0.01 || q > 0.97 || a.Crossings() < 60 {
						continue
					}
					if s == AllYear || m.name[0] == 'b' && (b.MeanWait(1)/a.MeanWait(1) > 1.2 || b.MeanWait(1)/a.MeanWait(1) < 0.8 || b.MeanWait(2)/a.MeanWait(2) > 1.2 || b.MeanWait(2)/a.MeanWait(2) < 0.8) {
						t.Logf("%s %s %g %v q %.3f above %.2f %.2f  wait24 %.2f/%.2f=%.2f  48: %.2f/%.2f=%.2f", m.name[:6], filepath.Base(file)[5:10], h, s, a.ShareAbove(), b.MeanAbove()/a.MeanAbove(), b.MeanBelow()/a.MeanBelow(), b.MeanWait(1), a.MeanWait(1), b.MeanWait(1)/a.MeanWait(1), b.MeanWait(2), a.MeanWait(2), b.MeanWait(2)/a.MeanWait(2))
					}
				}
			}
		}
	}
}
func TestTmpMem(t *testing.T) {
	files, _ := filepath.Glob(filepath.Join(dataset(t), "ndbc_*.csv"))
	for _, file := range files {
		r := buoy(t, file)
		table, _ := TableOf(r)
		m := MemoryOf(r, table)
		t.Log(filepath.Base(file)[5:10], m.Long.Hours(), m.Short.Hours())
	}
}
