package chart

import (
	"encoding/xml"
	"strings"
	"testing"

	"coredays/model/result"
	"coredays/output/outputtest"
)

func TestChartsOfAComparisonTellEveryRowInWords(t *testing.T) {
	for name, c := range map[string]*result.Comparison{"plans": outputtest.TwoPlans(), "orders": outputtest.ThreeOrders(), "dates": outputtest.ManyDates(), "cuts": outputtest.FourCuts(), "single": outputtest.Comparisons["single"]()} {
		list := append(Alternatives(c), Cuts(c)...)
		words := ""
		for _, ch := range list {
			svg, err := ch.SVG()
			if err != nil {
				t.Fatal(err)
			}
			if err := xml.Unmarshal([]byte(svg), new(struct{})); err != nil || len(ch.Behind) == 0 {
				t.Errorf("%s: %v, %d tables behind", name, err, len(ch.Behind))
			}
			words += ch.Desc
		}
		rows := len(c.Alternatives)
		if c.Question == result.WhatToCut {
			rows = len(c.Cuts)
		}
		if n := strings.Count(words, "all "); len(list) == 0 || n < rows {
			t.Errorf("%s: %d charts, %d of %d rows told: %s", name, len(list), n, rows, words)
		}
	}
}

func TestMoreRowsThanASheetTakesHaveFurtherChartsOfTheSameAxes(t *testing.T) {
	list := Alternatives(outputtest.ManyDates())
	if len(list) != 2 || list[0].Name == list[1].Name || !strings.HasSuffix(list[1].Title, "rows 41 to 45") {
		t.Fatalf("%d charts, the last %q", len(list), list[len(list)-1].Title)
	}
	for i := range list[0].panels {
		one, other := list[0].panels[i].plot.X, list[1].panels[i].plot.X
		if one.Min != other.Min || one.Max != other.Max {
			t.Errorf("panel %d goes from %v to %v, and from %v to %v", i, one.Min, one.Max, other.Min, other.Max)
		}
	}
}
