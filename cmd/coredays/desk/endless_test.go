package desk

import (
	"context"
	"fmt"
	"net/http"
	"strings"
	"testing"
	"time"

	"coredays/scenario"
)

// endless is a plan of so many sites, holes and days that nobody waits for its answer.
func endless() string {
	var b strings.Builder
	b.WriteString("version: 1\nsails: 2027-02-20T08:00Z\nsea_days: 400 d\nports:\n  from: {name: Port Merrin, position: 46.1S 171.2E}\n  to: {name: Port Merrin, position: 46.1S 171.2E}\nship: riserless drillship\nsites:\n")
	for i := range 60 {
		fmt.Fprintf(&b, "  - name: S%d\n    position: %.1fS 160E\n    water_depth: 5000 m\n    approved_to: 600 mbsf\n    layers: [{bottom: 600 mbsf, lithology: diatom ooze}]\n    weather: {climate: built in}\n    holes:\n", i, 40+float64(i)/10)
		for h := range 20 {
			fmt.Fprintf(&b, "      - {name: H%d, core: [{with: APC, to: refusal}, {with: XCB, to: 600 mbsf}]}\n", h)
		}
	}
	return b.String()
}

func TestAPlanThatNeverEndsGivesWayToTheNext(t *testing.T) {
	s := serve(t, "")
	ctx, hangUp := context.WithCancel(t.Context())
	defer hangUp()
	asking := make(chan struct{})
	go func() {
		r, err := http.NewRequestWithContext(ctx, http.MethodPost, s.URL+s.desk.Path()+"answer", strings.NewReader(`{"text":`+quotedJSON(endless())+`}`))
		if err != nil {
			return
		}
		r.Header.Set(callHeader, "1")
		answer, err := s.Client().Do(r)
		close(asking)
		if err == nil {
			defer answer.Body.Close()
			_, _ = answer.Body.Read(make([]byte, 1<<20))
			<-ctx.Done()
		}
	}()
	select {
	case <-asking:
	case <-time.After(time.Second):
	}
	if _, body := s.call("answer", question{Text: string(scenario.DemonstrationText())}, nil); names(eventsIn(body)) != "read answer answer sea" {
		t.Errorf("events %q", names(eventsIn(body)))
	}
}
