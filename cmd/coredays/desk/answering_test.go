package desk

import (
	"context"
	"encoding/json"
	"errors"
	"net/http"
	"strings"
	"testing"
	"time"

	"coredays/scenario"
)

// event is one of a stream.
type event struct{ name, data string }

func eventsIn(body string) (list []event) {
	for _, block := range strings.Split(strings.TrimSpace(body), "\n\n") {
		name, data, _ := strings.Cut(block, "\n")
		list = append(list, event{strings.TrimPrefix(name, "event: "), strings.TrimPrefix(data, "data: ")})
	}
	return list
}

func names(list []event) string {
	var all []string
	for _, e := range list {
		all = append(all, e.name)
	}
	return strings.Join(all, " ")
}

func TestAnAnswerIsRoughThenRefinedThenHeldAgainstThePinnedPlan(t *testing.T) {
	s := serve(t, "")
	text := string(scenario.DemonstrationText())
	_, body := s.call("answer", question{Text: strings.Replace(text, "56 d", "60 d", 1), Pinned: text}, nil)
	list := eventsIn(body)
	if names(list) != "read answer answer difference sea" {
		t.Fatalf("events %q", names(list))
	}
	for i, want := range []int{roughly, refined} {
		var a struct {
			Rough      bool
			Simulation struct{ Replications int }
			Facts      []struct{ Exact string }
			Charts     []chartSaid
		}
		if err := json.Unmarshal([]byte(list[1+i].data), &a); err != nil {
			t.Fatal(err)
		}
		if a.Simulation.Replications != want || a.Rough != (i == 0) || len(a.Facts) != 6 || (len(a.Charts) > 0) != (i == 1) {
			t.Errorf("answer %d has %d replications, rough %v, %d facts, %d charts", i, a.Simulation.Replications, a.Rough, len(a.Facts), len(a.Charts))
		}
	}
	// Sea days are a limit alone: they change what gets done, and not what the programme needs.
	if !strings.Contains(list[3].data, "The same days as the pinned plan, in every replication.") {
		t.Errorf("difference %s", list[3].data)
	}
}

func TestFaultsComeWithTheirPlaceAndWithoutAnAnswer(t *testing.T) {
	s := serve(t, "")
	text := strings.NewReplacer("3420 m", "deep", "2650 m", "-1 m").Replace(string(scenario.DemonstrationText()))
	_, body := s.call("answer", question{Text: text}, nil)
	list := eventsIn(body)
	var r reading
	if err := json.Unmarshal([]byte(list[0].data), &r); err != nil || names(list) != "read" {
		t.Fatalf("%v, events %q", err, names(list))
	}
	if len(r.Faults) != 2 || r.Faults[0].Path != "sites[0].water_depth" || r.Faults[0].Value != "deep" || r.Faults[1].Path != "sites[1].water_depth" {
		t.Errorf("faults %+v", r.Faults)
	}
}

func TestANewQuestionEndsTheOneBefore(t *testing.T) {
	turn := newTurn()
	first, done, err := turn.take(t.Context(), &question{})
	if err != nil {
		t.Fatal(err)
	}
	go func() { <-first.Done(); done() }() // as a run that never ends by itself
	_, done, err = turn.take(t.Context(), &question{})
	if err != nil || !errors.Is(context.Cause(first), errSuperseded) {
		t.Errorf("%v; the first ended by %v", err, context.Cause(first))
	}
	done()
}

func TestAQuestionThatWasOvertakenDoesNotEndTheNewerOne(t *testing.T) {
	turn := newTurn()
	newer, done, err := turn.take(t.Context(), &question{Window: "one", Number: 8})
	if err != nil {
		t.Fatal(err)
	}
	older, giveUp := context.WithTimeout(t.Context(), time.Second) // where it is let in it would wait for ever
	defer giveUp()
	if _, _, err := turn.take(older, &question{Window: "one", Number: 7}); !errors.Is(err, errSuperseded) || newer.Err() != nil {
		t.Errorf("the older question gets %v, the newer one is ended by %v", err, context.Cause(newer))
	}
	hungUp, hangUp := context.WithCancel(t.Context())
	hangUp()
	if _, _, err := turn.take(hungUp, &question{Window: "two", Number: 1}); !errors.Is(err, errSuperseded) || newer.Err() != nil {
		t.Errorf("a question that nobody waits for gets %v, the one in hand is ended by %v", err, context.Cause(newer))
	}
	go func() { <-newer.Done(); done() }()
	if _, done, err := turn.take(t.Context(), &question{Window: "two", Number: 1}); err != nil || newer.Err() == nil {
		t.Errorf("another window's question gets %v", err)
	} else {
		done()
	}
}

func TestAThousandQuestionsEndInOneAnswer(t *testing.T) {
	s := serve(t, "")
	text := string(scenario.DemonstrationText())
	ctx, hangUp := context.WithCancel(t.Context())
	for range 8 {
		go func() {
			for range 125 {
				r, err := http.NewRequestWithContext(ctx, http.MethodPost, s.URL+s.desk.Path()+"read", strings.NewReader(`{"text":"a: ["}`))
				if err != nil {
					return
				}
				r.Header.Set(callHeader, "1")
				if answer, err := s.Client().Do(r); err == nil {
					answer.Body.Close()
				}
			}
		}()
	}
	defer hangUp()
	if _, body := s.call("answer", question{Text: text}, nil); names(eventsIn(body)) != "read answer answer sea" {
		t.Errorf("events %q", names(eventsIn(body)))
	}
}

func TestASearchFindsAnOrderAndIsStoppedByHangingUp(t *testing.T) {
	s := serve(t, "")
	text := string(scenario.DemonstrationText())
	_, body := s.call("search", question{Text: text, Search: "orders"}, nil)
	list := eventsIn(body)
	last := list[len(list)-1]
	var found struct{ Proposals []proposal }
	if err := json.Unmarshal([]byte(last.data), &found); err != nil || last.name != "found" || len(found.Proposals) == 0 || len(found.Proposals[0].Take) != 1 || !found.Proposals[0].Best {
		t.Fatalf("%v %s: %+v", err, last.name, found)
	}
	ctx, hangUp := context.WithTimeout(t.Context(), 50*time.Millisecond)
	defer hangUp()
	r, _ := http.NewRequestWithContext(ctx, http.MethodPost, s.URL+s.desk.Path()+"search", strings.NewReader(`{"search":"orders","text":`+quotedJSON(text)+`}`))
	r.Header.Set(callHeader, "1")
	if answer, err := s.Client().Do(r); err == nil {
		answer.Body.Close()
	}
	_, done, err := s.desk.turn.take(t.Context(), &question{}) // waits for ever unless the workers are let go
	if err != nil {
		t.Fatal(err)
	}
	done()
}

func quotedJSON(text string) string {
	b, _ := json.Marshal(text)
	return string(b)
}
