package sea

import (
	"math"
	"testing"

	"coredays/model/chance"
)

func TestTableOfNormalsAgreesWithTheQuantile(t *testing.T) {
	table, luck, worst := normalTable(), chance.Replication(3, 0), 0.0
	for n := range 1_000_000 {
		worst = max(worst, math.Abs(table.draw(luck, n)-luck.Normal(n)))
	}
	if worst > 2e-4 || worst == 0 {
		t.Errorf("off by %.2g at worst", worst)
	}
}
