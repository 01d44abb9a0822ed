package alternatives

import (
	"fmt"
	"slices"

	"coredays/model/result"
	"coredays/output/words"
)

// AnswerLines answer a comparison in sentences; where there is nothing to compare they say so.
func AnswerLines(c *result.Comparison) []string {
	switch {
	case !Answers(c):
		return MadeOf(c)
	case c.Question == result.WhatToCut:
		return slices.Concat([]string{AsPlannedSentence(c)}, BestCutSentences(c), oneDaySentence(c))
	}
	return slices.Concat([]string{FirstHeading(c) + "."}, FirstLines(c), StandingLines(c))
}

// oneDaySentence says what a day more is worth, where one was tried.
func oneDaySentence(c *result.Comparison) []string {
	for _, d := range c.Days {
		if d.Days == 1 {
			return []string{fmt.Sprintf("With one day more, rank 1 gets done %s, the whole programme %s.", words.Often(d.First, c.Replications), words.Often(d.All, c.Replications))}
		}
	}
	return nil
}
