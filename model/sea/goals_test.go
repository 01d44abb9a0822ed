package sea

import (
	"math"
	"path/filepath"
	"slices"
	"testing"

	"coredays/model/unit"
)

// goal is what a generator should reach against the record that it is to be like: errors of the
// share above in percentage points, of the spells and waits in percent. Cells are a height at a
// station with 1-97 % of the time above and 30 ways up, in 3-hour means; each generator makes the
// hours of the record 60 times over, gaps and all. The goals are those that a trial of the same
// methods in another program met on eight buoys and a hindcast point. 0 is no goal.
type goal struct {
	share, shareWorst          float64
	spell, spell90, spellWorst float64
	calm                       float64 // length that one calm in ten exceeds
	inWindow, inWindowWorst    float64 // share of the time in calms of a day, points
	wait, wait90, waitWorst    float64 // for 24 and 48 h
}

var (
	blocksGoal       = goal{0.5, 1.5, 5, 8, 15, 10, 0.5, 1.5, 6, 0, 20}
	blocksSeasonGoal = goal{1, 2.5, 8, 15, 30, 15, 1, 2.5, 10, 0, 25}
	fittedGoal       = goal{0.5, 1.5, 15, 30, 50, 20, 1, 3, 12, 0, 40}
	climateGoal      = goal{1, 3, 20, 35, 0, 25, 1.5, 4, 20, 30, 0}
)

// mode is a way to make seas from a record.
type mode struct {
	name    string
	year    goal
	seasons goal
	make    func(t *testing.T, r *Record) (Course, *Table)
}

var modes = []mode{
	{"blocks of the record", blocksGoal, blocksSeasonGoal, func(t *testing.T, r *Record) (Course, *Table) {
		table, err := TableOf(r)
		if err != nil {
			t.Fatal(err)
		}
		b, err := NewBlocks(r)
		if err != nil {
			t.Fatal(err)
		}
		return ByBlocks(b, table, "goal"), table
	}},
	{"process fitted to the record", fittedGoal, goal{}, func(t *testing.T, r *Record) (Course, *Table) {
		table, err := TableOf(r)
		if err != nil {
			t.Fatal(err)
		}
		m := MemoryOf(r, table)
		return ByProcess(NewProcess(m.Long, m.Short, unit.Hour)), table
	}},
	{"climate alone", climateGoal, goal{}, func(t *testing.T, r *Record) (Course, *Table) {
		return ByProcess(NewProcess(LongMemory, ShortMemory, unit.Hour)), tableOf(t, r.Monthly("the record"))
	}},
}

// replicates of each record; 20 are the least for the goals.
const replicates = 60

var goalHeights = []float64{2, 2.5, 3, 4, 5, 6}

func TestGeneratorsReachTheirGoalsAtEveryBuoy(t *testing.T) {
	files, err := filepath.Glob(filepath.Join(dataset(t), "ndbc_*.csv"))
	if err != nil || len(files) < 5 {
		t.Fatal("five buoy records are wanted:", files, err)
	}
	for _, m := range modes {
		t.Run(m.name, func(t *testing.T) {
			var year, seasons errorsOf
			for _, file := range files {
				r := buoy(t, file)
				course, table := m.make(t, r)
				record := NewTally(BySeason, goalHeights)
				record.Add(r.Start, r.Heights)
				made := r.Twins(t.Context(), course, table, goalHeights, 1, replicates)
				for i := range goalHeights {
					year.add(record.At(i, int(AllYear)), made.At(i, int(AllYear)))
					for s := DJF; s < Seasons; s++ {
						seasons.add(record.At(i, int(s)), made.At(i, int(s)))
					}
				}
			}
			year.judge(t, "all year", m.year)
			seasons.judge(t, "by season", m.seasons)
		})
	}
}

// Against years that a generator has not seen, what the first half of a record gives the second:
// spells within 15 % on average for pieces and 25 % for processes, waits within 25 %. The first half
// itself is 11 and 21 % off in the trial.
func TestGeneratorsOfTheFirstHalfOfARecordForetellTheSecond(t *testing.T) {
	files, err := filepath.Glob(filepath.Join(dataset(t), "ndbc_*.csv"))
	if err != nil || len(files) < 5 {
		t.Fatal("five buoy records are wanted:", files, err)
	}
	goals := []goal{{spell: 15, wait: 25}, {spell: 25, wait: 25}, {spell: 25, wait: 25}}
	for k, m := range modes {
		var year, floor errorsOf
		for _, file := range files {
			first, second := halves(buoy(t, file))
			course, table := m.make(t, first)
			record, before := NewTally(BySeason, goalHeights), NewTally(BySeason, goalHeights)
			record.Add(second.Start, second.Heights)
			before.Add(first.Start, first.Heights)
			made := second.Twins(t.Context(), course, table, goalHeights, 1, 20)
			for i := range goalHeights {
				year.add(record.At(i, 0), made.At(i, 0))
				floor.add(record.At(i, 0), before.At(i, 0))
			}
		}
		year.judge(t, m.name, goals[k])
		if k == 0 {
			floor.judge(t, "first half", goal{})
		}
	}
}

// halves are the first and second half of a record.
func halves(r *Record) (first, second *Record) {
	n := len(r.Heights) / 2
	return &Record{Start: r.Start, Heights: r.Heights[:n]}, &Record{Start: r.at(n), Heights: r.Heights[n:]}
}

// errorsOf are the errors of many cells.
type errorsOf struct{ share, spell, calm, inWindow, wait []float64 }

func (e *errorsOf) add(record, made *Spells) {
	if q := record.ShareAbove(); q < 0.01 || q > 0.97 || record.Crossings() < 60 {
		return
	}
	percent := func(got, want float64) float64 { return 100 * math.Abs(got/want-1) }
	e.share = append(e.share, 100*math.Abs(made.ShareAbove()-record.ShareAbove()))
	e.spell = append(e.spell, percent(made.MeanAbove(), record.MeanAbove()), percent(made.MeanBelow(), record.MeanBelow()))
	want, _ := record.CalmAt(0.9)
	got, _ := made.CalmAt(0.9)
	e.calm = append(e.calm, percent(got, want))
	e.inWindow = append(e.inWindow, 100*math.Abs(made.ShareInWindows(1)-record.ShareInWindows(1)))
	e.wait = append(e.wait, percent(made.MeanWait(1), record.MeanWait(1)), percent(made.MeanWait(2), record.MeanWait(2)))
}

// judge compares with a goal and prints where the generator stands.
func (e *errorsOf) judge(t *testing.T, which string, g goal) {
	t.Helper()
	for _, line := range []struct {
		what             string
		errors           []float64
		mean, nine, most float64
	}{
		{"share above, points", e.share, g.share, 0, g.shareWorst},
		{"mean spells, %", e.spell, g.spell, g.spell90, g.spellWorst},
		{"P90 of calms, %", e.calm, g.calm, 0, 0},
		{"share in calms of a day, points", e.inWindow, g.inWindow, 0, g.inWindowWorst},
		{"waits for 24 and 48 h, %", e.wait, g.wait, g.wait90, 0},
		{"waits for 24 and 48 h, % (worst)", e.wait, 0, 0, g.waitWorst},
	} {
		sorted := slices.Sorted(slices.Values(line.errors))
		n, sum := len(sorted), 0.0
		for _, x := range sorted {
			sum += x
		}
		mean, nine, worst := sum/float64(n), sorted[n*9/10], sorted[n-1]
		t.Logf("%-10s %-34s %3d values: mean %5.2f (goal %g), nine in ten within %5.2f (%g), worst %5.2f (%g)", which, line.what, n, mean, line.mean, nine, line.nine, worst, line.most)
		if over(mean, line.mean) || over(nine, line.nine) || over(worst, line.most) {
			t.Errorf("%s: %s misses its goal", which, line.what)
		}
	}
}

func over(got, goal float64) bool { return goal > 0 && got > goal }
