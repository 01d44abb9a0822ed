package desk

import (
	"encoding/json"
	"net/http"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"coredays/model/listing"
	"coredays/scenario"
	"coredays/scenario/edit"
	"coredays/scenario/fault"
)

func TestACutTakenOverIsThePlanThatWasSimulated(t *testing.T) {
	p, err := scenario.Demonstration()
	if err != nil {
		t.Fatal(err)
	}
	cuts := p.Cuts()
	for _, cut := range cuts {
		text := scenario.DemonstrationText()
		for _, e := range withoutIt(p, cut) {
			if text, err = edit.Set(text, e.Path, e.Value); err != nil {
				t.Fatalf("without %s %s: %v", cut.Site, cut.What, err)
			}
		}
		got, err := scenario.Read("demonstration.yaml", text)
		if err != nil {
			t.Fatalf("without %s %s: %v", cut.Site, cut.What, err)
		}
		if diff := cmp.Diff(listing.Of(cut.Plan), listing.Of(got)); diff != "" {
			t.Errorf("without %s %s (-simulated +taken over)\n%.600s", cut.Site, cut.What, diff)
		}
	}
	if len(cuts) < 20 {
		t.Errorf("%d cuts", len(cuts))
	}
}

func TestDatesOfSailingAreTriedAndTakenOver(t *testing.T) {
	s := serve(t, "")
	s.desk.Dates = func(_ string, sails time.Time) ([]time.Time, error) {
		return []time.Time{sails, sails.AddDate(0, 5, 0)}, nil
	}
	text := string(scenario.DemonstrationText())
	_, body := s.call("search", question{Text: text, Search: "departures"}, nil)
	list := eventsIn(body)
	var f found
	if err := json.Unmarshal([]byte(list[len(list)-1].data), &f); err != nil || len(f.Proposals) != 2 || !f.Proposals[0].Best {
		t.Fatalf("%v: %+v", err, f)
	}
	if want := []change{{"sails", "2027-02-20T08:00Z"}}; !slices.Equal(f.Proposals[0].Take, want) {
		t.Errorf("the summer is taken over by %v, want %v", f.Proposals[0].Take, want)
	}
}

func TestEditsAreMadeAllOrNone(t *testing.T) {
	s := serve(t, "")
	code, body := s.call("edit", question{Text: "a: 1\nb: 2\n", Edits: []change{{"a", "3"}, {"b.c", "4"}}}, nil)
	if code != http.StatusUnprocessableEntity || strings.Contains(body, "text") {
		t.Errorf("%d %s", code, body)
	}
	if code, body = s.call("edit", question{Text: "a: 1\nb: 2\n", Edits: []change{{"a", "3"}, {"b", "4"}}}, nil); code != http.StatusOK || !strings.Contains(body, `a: 3\nb: 4\n`) {
		t.Errorf("%d %s", code, body)
	}
}

// What is offered is what the reader lists when something else is typed, and every key is one that it knows.
func TestWhatIsOfferedIsWhatTheReaderWants(t *testing.T) {
	at := map[string]string{"site": "sites[0]", "layer": "sites[0].layers[0]", "hole": "sites[0].holes[0]", "task": "sites[1].holes[4]"}
	faultAt := func(path string) string {
		_, err := scenario.WithSettings(scenario.DemonstrationText(), "demonstration.yaml", []string{path + "=nonsense"})
		list, _ := err.(fault.List)
		for _, f := range list {
			if f.Path == path || strings.HasPrefix(f.Path, path+"[") {
				return f.Wanted
			}
		}
		return ""
	}
	unknown := faultAt("sites[0].zzzz")
	if unknown == "" {
		t.Fatal("a key that nobody knows is taken")
	}
	unknown = unknown[:min(20, len(unknown))]
	all := offers()
	for kind, keys := range all.Keys {
		for _, key := range keys {
			if wanted := faultAt(at[kind] + "." + key); strings.HasPrefix(wanted, unknown) {
				t.Errorf("%s of a %s is offered, and the reader says %s", key, kind, wanted)
			}
		}
	}
	for key, words := range all.Words {
		place := at["site"]
		for kind, keys := range all.Keys {
			if slices.Contains(keys, key) {
				place = at[kind]
			}
		}
		switch key {
		case "lithology":
			place = at["layer"]
		case "with":
			place = at["hole"] + ".core[0]"
		}
		wanted := faultAt(place + "." + key)
		for _, word := range words {
			if !strings.Contains(wanted, word) {
				t.Errorf("%s: %q is offered, and the reader wants %s", key, word, wanted)
			}
		}
		if key != "lithology" && strings.Count(wanted, ",")+strings.Count(wanted, " or ") >= len(words) && len(words) > 1 {
			t.Errorf("%s: the reader wants %s, and offered is only %q", key, wanted, words)
		}
	}
}
