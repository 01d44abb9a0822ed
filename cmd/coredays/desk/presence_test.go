package desk

import (
	"context"
	"net"
	"net/http"
	"strings"
	"testing"
	"time"
)

func TestCtrlCAsksFirstWhereSomethingIsUnsaved(t *testing.T) {
	d := New("")
	l, err := net.Listen("tcp4", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	ctx, interrupt := context.WithCancel(t.Context())
	asked, ended := make(chan struct{}), make(chan error, 1)
	go func() { ended <- d.Serve(ctx, l, func() { close(asked) }) }()
	says := func(body string) (ending bool) {
		t.Helper()
		r, err := http.NewRequestWithContext(t.Context(), http.MethodPost, "http://"+l.Addr().String()+d.Path()+"here", strings.NewReader(body))
		if err != nil {
			t.Fatal(err)
		}
		r.Header.Set(callHeader, "1")
		answer, err := http.DefaultClient.Do(r)
		if err != nil {
			t.Fatal(err)
		}
		defer answer.Body.Close()
		var got strings.Builder
		buffer := make([]byte, 1000)
		n, _ := answer.Body.Read(buffer)
		got.Write(buffer[:n])
		return strings.Contains(got.String(), `"ending":true`)
	}
	if says(`{"window":"a","unsaved":true}`) || says(`{"window":"b","unsaved":false}`) {
		t.Error("the desk would end before it was asked to")
	}
	interrupt()
	<-asked
	if !says(`{"window":"a","unsaved":true}`) {
		t.Error("the page is not told that the desk would end")
	}
	select {
	case err := <-ended:
		t.Fatalf("it ended with something unsaved: %v", err)
	default:
	}
	says(`{"window":"a","gone":true}`)
	if err := <-ended; err != nil {
		t.Error(err)
	}
}

func TestAWindowThatIsLongSilentHoldsNobodyUp(t *testing.T) {
	p := presence{windows: map[string]window{}}
	now := time.Now()
	p.note("a", true, false, now)
	if !p.unsaved(now.Add(time.Minute)) || p.unsaved(now.Add(forgottenAfter+time.Second)) {
		t.Error("a hidden window is forgotten, or one that is gone is not")
	}
	for i := range 2 * mostWindows {
		p.note(string(rune('b'+i)), false, false, now)
	}
	if len(p.windows) > mostWindows {
		t.Errorf("%d windows are remembered", len(p.windows))
	}
}
