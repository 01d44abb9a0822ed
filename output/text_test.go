package output_test

import (
	"errors"
	"io"
	"math"
	"strings"
	"testing"
	"unicode/utf8"

	"coredays/model/result"
	"coredays/output/json"
	"coredays/output/outputtest"
	"coredays/output/text"
	"coredays/output/words"
)

var summaries = map[string]func() *result.Summary{
	"ordinary": outputtest.Ordinary, "single": outputtest.Single, "alternate_never_reached": outputtest.NeverReachedAlternate, "long_names": outputtest.LongNames,
}

func textOf(t *testing.T, s *result.Summary) string {
	t.Helper()
	return printed(t, func(w io.Writer) error { return text.Simulation(w, s, text.Detail{All: true}) })
}

func TestTextIsThatOfTheGoldenFiles(t *testing.T) {
	for name, summary := range summaries {
		matchGolden(t, name+".txt", textOf(t, summary()))
		matchGolden(t, name+"_short.txt", printed(t, func(w io.Writer) error { return text.Simulation(w, summary(), text.Detail{}) }))
	}
}

func TestNoLineIsWiderThanThePage(t *testing.T) {
	for name, summary := range summaries {
		for line := range strings.Lines(textOf(t, summary())) {
			line = strings.TrimSuffix(line, "\n")
			if utf8.RuneCountInString(line) > text.PageWidth || words.Displayed(line) > text.PageWidth {
				t.Errorf("%s: %d columns: %q", name, words.Displayed(line), line)
			}
			if line != strings.TrimRight(line, " ") {
				t.Errorf("%s: blanks at the end of %q", name, line)
			}
		}
	}
}

func TestLongNamesArePrintedWhole(t *testing.T) {
	unbroken := strings.NewReplacer(" ", "", "\n", "").Replace(textOf(t, outputtest.LongNames()))
	for _, name := range []string{strings.Repeat("very-long-folder/", 8) + "ternsoftheridge.yaml", strings.Repeat("x", 250)} {
		if !strings.Contains(unbroken, name) {
			t.Errorf("%q is not there", name)
		}
	}
	// In a table a wrapped name has the figures of its first line between its parts.
	rest := unbroken
	for _, part := range words.Wrap(strings.Repeat("深海の峰", 15), text.SiteWidth) {
		_, after, found := strings.Cut(rest, part)
		if rest = after; !found {
			t.Errorf("part %q of a name is not there", part)
		}
	}
}

func TestTerminalEscapesInNamesAreHarmless(t *testing.T) {
	if got := textOf(t, outputtest.LongNames()); strings.ContainsAny(got, "\x1b\r\t") {
		t.Errorf("control characters in %q", got)
	}
}

// poison makes every figure of a spread not-a-number.
func poison(s *result.Spread) {
	none := math.NaN()
	*s = result.Spread{N: s.N, Mean: none, SD: math.Inf(1), P10: none, P50: math.Inf(-1), P90: none,
		P10CI: [2]float64{none, none}, P50CI: [2]float64{none, math.Inf(1)}, P90CI: [2]float64{none, none}}
}

// poisoned is a summary without a single number.
func poisoned() *result.Summary {
	s := outputtest.Ordinary()
	s.Allotted.ChanceAll, s.Allotted.ChancePrimary, s.Allotted.Late = math.NaN(), math.NaN(), math.NaN()
	spreads := []*result.Spread{&s.InPort, &s.Needed.Total, &s.Allotted.InHand, &s.Allotted.Recovered,
		&s.Recovery.Cored, &s.Recovery.Recovered, &s.Recovery.Percent, &s.Recovery.Cores}
	for c := range s.Needed.ByClass {
		spreads = append(spreads, &s.Needed.ByClass[c])
	}
	for t := range s.Recovery.ByTool {
		r := &s.Recovery.ByTool[t]
		spreads = append(spreads, &r.Cores, &r.Cored, &r.Recovered, &r.Percent)
	}
	for i := range s.Sites {
		site := &s.Sites[i]
		site.ChanceReached, site.ChanceComplete = math.NaN(), math.Inf(1)
		spreads = append(spreads, &site.Days, &site.Waiting, &site.Arrives, &site.Leaves, &site.Cored, &site.Recovered,
			&site.Percent, &site.Cores, &site.Coverage)
		for j := range site.Holes {
			h := &site.Holes[j]
			h.ChanceDone, h.ChanceRefused = math.NaN(), math.NaN()
			spreads = append(spreads, &h.Days, &h.Depth, &h.Refusal)
		}
	}
	for _, spread := range spreads {
		poison(spread)
	}
	s.Drivers[0].Share, s.Consumables[0].P90 = math.NaN(), math.NaN()
	return s
}

func TestWhatIsNoNumberIsNeverPrinted(t *testing.T) {
	for _, s := range []*result.Summary{poisoned(), {}, {Replications: 3, Sites: []result.Site{{}}}} {
		got := textOf(t, s)
		for _, word := range []string{"NaN", "Inf", "inf", "%!", "-0 ", "-0.0"} {
			if strings.Contains(got, word) {
				t.Errorf("%q in\n%s", word, got)
			}
		}
	}
}

func TestSingleReplicationHasNoSpread(t *testing.T) {
	got := textOf(t, outputtest.Single())
	for _, word := range []string{"P10", "P90", "±", "of 100"} {
		if strings.Contains(got, word) {
			t.Errorf("%q in\n%s", word, got)
		}
	}
}

func TestSimulationErrorIsToldWhereItIsWide(t *testing.T) {
	s := outputtest.Ordinary() // 41.6 d, half width 0.63 d: more than 1 in 100
	if got := textOf(t, s); !strings.Contains(got, "P50 41.6 d (±0.6 d simulation error)") {
		t.Errorf("no simulation error in\n%s", got)
	}
	s.Needed.Total.P50CI = [2]float64{41.4 * outputtest.Day, 41.8 * outputtest.Day}
	if got := textOf(t, s); strings.Contains(got, "simulation error") {
		t.Errorf("simulation error of 0.2 d told of 41.6 d in\n%s", got)
	}
	s.Needed.Total.P50CI = [2]float64{}
	if got := textOf(t, s); strings.Contains(got, "simulation error") {
		t.Errorf("simulation error told without an interval in\n%s", got)
	}
}

type broken struct{}

var errBroken = errors.New("no room")

func (broken) Write([]byte) (int, error) { return 0, errBroken }

func TestFailingWriterIsReported(t *testing.T) {
	for name, err := range map[string]error{
		"Text": text.Simulation(broken{}, outputtest.Ordinary(), text.Detail{}), "JSON": json.Simulation(broken{}, outputtest.Ordinary()),
		"Diary": text.Diary(broken{}, tern(), false), "DiaryJSON": json.Diary(broken{}, tern()),
	} {
		if !errors.Is(err, errBroken) {
			t.Errorf("%s: %v", name, err)
		}
	}
}
