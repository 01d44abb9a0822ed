package main

import (
	"context"
	"fmt"
	"io"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"coredays/cmd/coredays/call"
	"coredays/model/sea"
	"coredays/model/voyage"
	"coredays/output/json"
	"coredays/output/text"
	"coredays/output/text/seastate"
	"coredays/scenario"
	"coredays/scenario/document"
)

// seaCall is a call of sea.
type seaCall struct {
	chosen
	site  string
	years int
	seed  uint64
	all   bool
	call.Answer
}

func newSea() *cobra.Command {
	var s seaCall
	cmd := &cobra.Command{
		Use:   "sea [SCENARIO | RECORD.csv]",
		Short: "The sea at a place: workable time, storms and waits by month",
		Long: `Sea makes many years of sea at each site of a scenario, as the simulator does, and prints by month
how much of the time each class of work can go on, how long storms last, how long the wait for a
calm day is, and what share of her days a coring ship should expect to lose. Without a file it
takes the built-in demonstration.

A record is a table of times and significant wave heights, one line each, with headings such as
time and hs: a buoy's or a hindcast's. Its own spells and waits are set beside those of the sea
made like it, with what was found wrong in it. Working limits are then those of the built-in ship
in deep water.`,
		Example: `  coredays sea
  coredays sea plan.yaml --years 200 --seed 7
  coredays sea plan.yaml --json sea.json`,
		Args: call.OneScenario,
		RunE: func(c *cobra.Command, args []string) error {
			return s.execute(c.Context(), args, c.Flags().Changed("years"), c.OutOrStdout())
		},
	}
	s.chosen.addFlags(cmd)
	cmd.Flags().Var((*call.FreeText)(&s.site), "site", "only the site of this `name`")
	cmd.Flags().IntVar(&s.years, "years", 0, "how many years of sea to make; 100 without it, 400 beside a record, whose hours are made 20 times at least")
	cmd.Flags().Uint64Var(&s.seed, "seed", 1, "seed of all chance: the same seed gives the same answer")
	cmd.Flags().BoolVar(&s.all, "all", false, "print every month, class of work and spell of each site")
	s.Answer.AddFlags(cmd)
	return cmd
}

// execute works out the sea of each place and reports; given says that the years are.
func (s *seaCall) execute(ctx context.Context, args []string, given bool, stdout io.Writer) error {
	if err := call.YearsBound.Holds(s.years); given && err != nil {
		return err
	}
	var questions []sea.Question
	err := call.OrInterrupted(ctx, func() (err error) {
		questions, err = s.questions(args)
		return err
	})
	if err != nil {
		return err
	}
	var studies []*sea.Study
	for _, q := range questions {
		if q.Years, q.Seed = s.years, s.seed; !given {
			q.Years = usualYears(q)
		}
		study := q.Study(ctx)
		if study == nil {
			return call.ErrInterrupted
		}
		studies = append(studies, study)
	}
	return s.Give(stdout, func(w io.Writer) error { return seastate.Print(w, studies, text.Detail{All: s.all}) }, func(w io.Writer) error { return json.Sea(w, studies) })
}

// usualYears is how many years are made where nothing else is asked for: enough for the storms of
// each month, and beside a record for its own chance to be most of the difference.
func usualYears(q sea.Question) int {
	if q.Likeness != nil {
		return 400
	}
	return 100
}

// questions are those of the sites asked for, or that of a record.
func (s *seaCall) questions(args []string) ([]sea.Question, error) {
	if len(args) > 0 && isRecord(args[0]) {
		if s.site != "" || len(s.settings) > 0 {
			return nil, fmt.Errorf("--site and --set are for a scenario, and %s is a record", args[0])
		}
		q, err := recordQuestion(args[0])
		return []sea.Question{q}, call.AsFault(err)
	}
	v, _, err := s.load(args)
	if err != nil {
		return nil, err
	}
	var questions []sea.Question
	var names []string
	for i := range v.Sites {
		names = append(names, v.Sites[i].Name)
		if s.site == "" || s.site == v.Sites[i].Name {
			questions = append(questions, v.Sea(i))
		}
	}
	if len(questions) == 0 {
		return nil, fmt.Errorf("--site %q: give one of %s", s.site, strings.Join(names, ", "))
	}
	return questions, nil
}

// isRecord describes a record from a scenario by the extension of its name.
func isRecord(file string) bool {
	return slices.Contains([]string{".csv", ".tsv", ".txt", ".dat"}, strings.ToLower(filepath.Ext(file)))
}

// recordQuestion asks for the sea of a record, with the limits of the built-in ship in deep water.
func recordQuestion(path string) (sea.Question, error) {
	likeness, err := openRecord(path)
	if err != nil {
		return sea.Question{}, err
	}
	q := sea.Question{Place: filepath.Base(path), Source: "the record " + filepath.Base(path), Notes: likeness.Notes,
		Course: likeness.Course, Table: likeness.Table, Likeness: likeness}
	q.Limits, q.Coring, err = deepWaterLimits()
	return q, err
}

func openRecord(path string) (*sea.Likeness, error) {
	file, err := document.OpenFile(path)
	if err != nil {
		return nil, fmt.Errorf("the record can't be read: %w", err)
	}
	defer file.Close()
	record, err := sea.ReadRecord(file)
	if err != nil {
		return nil, scenario.RecordFault(path, err)
	}
	likeness, err := sea.NewLikeness(record, filepath.Base(path))
	if err != nil {
		return nil, fmt.Errorf("%s: %w", path, err)
	}
	return likeness, nil
}

// deepWaterLimits are the limits of the built-in ship at the deepest site of the demonstration.
func deepWaterLimits() ([]sea.Limit, int, error) {
	p, err := scenario.WithSettings(scenario.DemonstrationText(), "demonstration.yaml", nil)
	if err != nil {
		return nil, 0, err
	}
	v, err := voyage.Compile(p)
	if err != nil {
		return nil, 0, err
	}
	deepest := 0
	for i := range v.Sites {
		if v.Sites[i].Floor > v.Sites[deepest].Floor {
			deepest = i
		}
	}
	q := v.Sea(deepest)
	return q.Limits, q.Coring, nil
}
