package study

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// opened reads a study from a file.
func opened(t *testing.T, text string) (*Study, error) {
	t.Helper()
	path := filepath.Join(t.TempDir(), "study.yaml")
	if err := os.WriteFile(path, []byte(text), 0o666); err != nil {
		t.Fatal(err)
	}
	return Open(path)
}

func TestEachScenarioIsTakenWithEachSettingOnEachDate(t *testing.T) {
	s, err := opened(t, "version: 1\nscenarios: [a.yaml, b.yaml]\ndates: 2027-01-14..2027-03-01/14d\nvary:\n  - {set: sea_days, to: [50 d, 56 d]}\n  - {set: 'sites[0].cap', to: [9 d, 12 d, 15 d]}\n")
	if err != nil {
		t.Fatal(err)
	}
	list := s.Variants()
	if len(list) != 12 {
		t.Fatalf("%d variants, by hand 2 × 2 × 3", len(list))
	}
	eighth := list[7]
	if eighth.Scenario.Name != "b.yaml" || filepath.Base(eighth.Scenario.Path) != "b.yaml" || !filepath.IsAbs(eighth.Scenario.Path) ||
		strings.Join(eighth.Settings, " and ") != "sea_days=50 d and sites[0].cap=12 d" || strings.Join(eighth.Values, " and ") != "50 d and 12 d" {
		t.Errorf("the eighth is %+v", eighth)
	}
	sails := time.Date(2026, 5, 5, 7, 30, 0, 0, time.UTC)
	dates, err := s.DatesOf(sails)
	if err != nil || len(dates) != 4 || !dates[3].Equal(time.Date(2027, 2, 25, 7, 30, 0, 0, time.UTC)) {
		t.Errorf("%v, %v", dates, err)
	}
	if s.Title != "study.yaml" {
		t.Errorf("without a title it is called %q", s.Title)
	}
	s.Dates = ""
	if dates, err := s.DatesOf(sails); err != nil || len(dates) != 1 || dates[0] != sails {
		t.Errorf("without dates: %v, %v", dates, err)
	}
}

// What is wrong is told all at once, on its line.
func TestAStudyWithFaultsIsRefused(t *testing.T) {
	_, err := opened(t, "version: 1\nscenarios: [a.yaml, a.yaml]\ndates: 2027-01-14..2027-03-01\nvary:\n  - {set: sails, to: [2027-01-01]}\n  - {to: [1]}\n  - {set: sea_days, to: [50 d, 50 d]}\n  - {set: sea_days, to: []}\nnights: 3\n")
	if err == nil {
		t.Fatal("it is taken")
	}
	for _, want := range []string{
		`study.yaml:2: scenarios[1]: "a.yaml": each scenario once`,
		`study.yaml:3: dates: "2027-01-14..2027-03-01": a range has a step after /`,
		`study.yaml:5: vary[0].set: "sails": another setting: dates say when each sails`,
		`study.yaml:6: vary[1].set: the path of a value`,
		`study.yaml:7: vary[2].to[1]: "50 d": each value of vary[2] once`,
		`study.yaml:8: vary[3].set: "sea_days": each setting once`,
		`study.yaml:8: vary[3].to: `,
		`study.yaml:9: nights: `,
	} {
		if !strings.Contains(err.Error(), want) {
			t.Errorf("%q is not told in\n%v", want, err)
		}
	}
	for text, want := range map[string]string{
		"version: 1\n":                                         "scenarios: a list of scenarios",
		"version: 2\nscenarios: [a.yaml]\n":                    "version",
		"version: 1\nscenarios: a.yaml\n":                      "a list, such as",
		"version: 1\nscenarios: [a.yaml]\ndates: 9000-01-01\n": "give dates from 1950 to 2150",
	} {
		if _, err := opened(t, text); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%q: %v, want %q", text, err, want)
		}
	}
	if _, err := Open("nowhere.yaml"); err == nil {
		t.Error("a file that is not there is taken")
	}
}

func TestAStudyOfTooManyPlansIsRefused(t *testing.T) {
	text := "version: 1\nscenarios: [a.yaml]\nvary:\n"
	for _, set := range []string{"a", "b", "c", "d", "e", "f", "g", "h"} {
		text += "  - {set: " + set + ", to: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20]}\n"
	}
	if _, err := opened(t, text); err == nil || !strings.Contains(err.Error(), "at most 100000 scenarios") {
		t.Errorf("%v", err)
	}
}
