package lookahead

import (
	"bytes"
	"context"
	"fmt"
	"math"
	"os"
	"regexp"
	"strconv"
	"testing"
	"time"

	"coredays/model/result"
	"coredays/model/riglog"
	"coredays/model/state"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/output/sheet"
	"coredays/scenario"
	"coredays/scenario/rigfile"
	"coredays/sim"
	"coredays/sim/lookahead"
	"coredays/sim/statistics"
)

var broughtUp = regexp.MustCompile(`m cut, ([\d.]+) up`)

// calibration counts what bands of simulated expeditions hold, stopped at one share of their way.
type calibration struct {
	n                  int
	home50, home80     int
	metres50, metres80 int
	width              float64 // mean width of the 80 % band of the arrival, d
	brier, plan        float64 // of the chances that items are done, and of the plan's own
	items              int
}

// Simulated expeditions whose end is known are stopped on their way, and the look-ahead from their diaries is held
// against it. COREDAYS_LOOKAHEAD=40 does the whole study, every tenth of the way of so many expeditions, and prints
// it; without it a few are stopped half way, and the bands must only not be far off.
func TestBandsHoldWhatTheyPromise(t *testing.T) {
	expeditions, tenths, replications := 8, []int{5}, 60
	whole := os.Getenv("COREDAYS_LOOKAHEAD")
	if whole != "" {
		expeditions, _ = strconv.Atoi(whole)
		tenths, replications = []int{1, 2, 3, 4, 5, 6, 7, 8, 9}, 200
	}
	data, err := os.ReadFile("../../../testdata/lookahead/plan.yaml")
	if err != nil {
		t.Fatal(err)
	}
	p, err := scenario.Read("plan.yaml", data)
	if err != nil {
		t.Fatal(err)
	}
	v, err := voyage.Compile(p)
	if err != nil {
		t.Fatal(err)
	}
	v = v.WithDays(29 * unit.Day) // so short that not all is sure
	ctx := context.Background()
	prior := sim.Replicate(ctx, v, sim.Run{Seed: 77, Replications: 300})
	chance := make([]float64, v.Items)
	for i := range chance {
		chance[i] = mean(prior.Column(prior.Constrained, prior.Layout.Item(i, statistics.ItemDone)))
	}
	truth := sim.Replicate(ctx, v, sim.Run{Seed: 5, Replications: expeditions})
	table := make([]calibration, 10)
	for e := range expeditions {
		d := sim.Diary(ctx, v, 5, e, true)
		papers := papersOf(t, d)
		sailed := d.Entries[len(d.Entries)-1].To.Sub(p.Sails)
		for _, tenth := range tenths {
			at := p.Sails.Add(sailed * time.Duration(tenth) / 10).Round(time.Minute)
			st, faults := state.Read(p, papers, at)
			if len(faults) > 0 {
				t.Fatal(e, tenth, faults)
			}
			x := sim.TakeUp(v, st)
			if _, err := lookahead.Learn(v, x, papers); err != nil {
				t.Fatal(err)
			}
			x.KnowSea(wavesAt(d, at), nil)
			o := sim.GoOn(ctx, x, sim.Choice{}, sim.Run{Seed: 1, Replications: replications})
			table[tenth].count(o, d, truth.Row(truth.Constrained, e), chance, sailed.Seconds())
		}
	}
	for _, tenth := range tenths {
		c := &table[tenth]
		n := float64(c.n)
		line := fmt.Sprintf("%d tenths: arrival 50 %% band %.2f, 80 %% band %.2f, %.2f d wide; metres %.2f, %.2f; Brier %.3f, of the plan %.3f",
			tenth, float64(c.home50)/n, float64(c.home80)/n, c.width/n, float64(c.metres50)/n, float64(c.metres80)/n, c.brier/float64(c.items), c.plan/float64(c.items))
		if whole != "" {
			fmt.Println(line)
		}
		// Of 8 expeditions a band of 0.8 holds 3 or fewer once in 100 times (binomial).
		if whole == "" && (c.home80 <= 3 || c.metres80 <= 3 || c.brier > c.plan) {
			t.Error(line)
		}
	}
}

func (c *calibration) count(o *sim.Onward, d *result.Diary, truth statistics.Row, chance []float64, sailed float64) {
	c.n++
	home := statistics.Summarise(o.Column(o.Constrained, statistics.ColDays))
	within := func(values []float64, x, share float64) int {
		below := 0.0
		for _, y := range values {
			if y < x {
				below++
			} else if y == x {
				below += 0.5
			}
		}
		if math.Abs(below/float64(len(values))-0.5) <= share/2 {
			return 1
		}
		return 0
	}
	days := o.Column(o.Constrained, statistics.ColDays)
	c.home50 += within(days, sailed, 0.5)
	c.home80 += within(days, sailed, 0.8)
	c.width += (home.P90 - home.P10) / 86400
	var up float64
	for i := range d.Entries {
		if m := broughtUp.FindStringSubmatch(d.Entries[i].Note); m != nil {
			x, _ := strconv.ParseFloat(m[1], 64)
			up += x
		}
	}
	var metres []float64
	for n := range o.Replications() {
		sum := 0.0
		for tool := statistics.ColTool; tool < statistics.ColUsed; tool += 3 {
			sum += o.Row(o.Constrained, n)[tool+2]
		}
		metres = append(metres, sum)
	}
	c.metres50 += within(metres, up, 0.5)
	c.metres80 += within(metres, up, 0.8)
	for i, plan := range chance {
		column := o.Layout.Item(i, statistics.ItemDone)
		p, done := mean(o.Column(o.Constrained, column)), truth[column]
		c.brier += (p - done) * (p - done)
		c.plan += (plan - done) * (plan - done)
		c.items++
	}
}

func mean(values []float64) (sum float64) {
	for _, x := range values {
		sum += x
	}
	return sum / float64(max(1, len(values)))
}

// papersOf is a diary as the log that a crew would keep, read as any other.
func papersOf(t *testing.T, d *result.Diary) *riglog.Papers {
	t.Helper()
	var table bytes.Buffer
	if err := sheet.Diary(&table, d); err != nil {
		t.Fatal(err)
	}
	var papers riglog.Papers
	if err := new(rigfile.Reading).Read(&papers, "log.csv", table.Bytes()); err != nil {
		t.Fatal(err)
	}
	return &papers
}

// wavesAt are the waves of a diary at a moment.
func wavesAt(d *result.Diary, at time.Time) float64 {
	for i := range d.Entries {
		if e := &d.Entries[i]; at.Before(e.To) && e.To.Sub(e.From) < 3*time.Hour {
			return float64(e.Waves)
		} else if at.Before(e.To) {
			break
		}
	}
	return math.NaN()
}
