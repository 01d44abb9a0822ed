package desk

import (
	"bytes"
	"encoding/json"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"
)

// served is a desk with a server on the loopback.
type served struct {
	*testing.T
	desk *Desk
	*httptest.Server
}

func serve(t *testing.T, file string) served {
	t.Helper()
	d := New(file)
	s := httptest.NewServer(d.Handler())
	t.Cleanup(s.Close)
	return served{t, d, s}
}

// call asks as the page does, after what change makes of the request.
func (s served) call(what string, q any, change func(*http.Request)) (code int, body string) {
	s.Helper()
	var sent bytes.Buffer
	if err := json.NewEncoder(&sent).Encode(q); err != nil {
		s.Fatal(err)
	}
	r, err := http.NewRequestWithContext(s.Context(), http.MethodPost, s.URL+s.desk.Path()+what, &sent)
	if err != nil {
		s.Fatal(err)
	}
	r.Header.Set(callHeader, "1")
	if change != nil {
		change(r)
	}
	answer, err := s.Client().Do(r)
	if err != nil {
		s.Fatal(err)
	}
	defer answer.Body.Close()
	var got bytes.Buffer
	_, _ = got.ReadFrom(answer.Body)
	return answer.StatusCode, got.String()
}

func TestNobodyIsLetInButThePage(t *testing.T) {
	s := serve(t, "")
	if code, body := s.call("open", nil, nil); code != http.StatusOK || !strings.Contains(body, "AN INVENTED EXPEDITION") {
		t.Fatalf("the page itself gets %d %.100s", code, body)
	}
	for name, c := range map[string]struct {
		change func(*http.Request)
		want   int
	}{
		"another host":           {func(r *http.Request) { r.Host = "plans.example:80" }, http.StatusMisdirectedRequest},
		"a number made of names": {func(r *http.Request) { r.Host = "127.0.0.1.example" }, http.StatusMisdirectedRequest},
		"another origin":         {func(r *http.Request) { r.Header.Set("Origin", "http://plans.example") }, http.StatusForbidden},
		"no origin of a file":    {func(r *http.Request) { r.Header.Set("Origin", "null") }, http.StatusForbidden},
		"another port":           {func(r *http.Request) { r.Header.Set("Origin", "http://127.0.0.1:1") }, http.StatusForbidden},
		"a site fetching":        {func(r *http.Request) { r.Header.Set("Sec-Fetch-Site", "cross-site") }, http.StatusForbidden},
		"no secret":              {func(r *http.Request) { r.URL.Path = "/open" }, http.StatusForbidden},
		"half a secret":          {func(r *http.Request) { r.URL.Path = s.desk.Path()[:9] + "/open" }, http.StatusForbidden},
		"no header":              {func(r *http.Request) { r.Header.Del(callHeader) }, http.StatusForbidden},
		"a path upwards":         {func(r *http.Request) { r.Method, r.URL.Path = http.MethodGet, s.desk.Path()+"../server.go" }, http.StatusForbidden},
		"a path upwards, hidden": {func(r *http.Request) { r.Method, r.URL.Path = http.MethodGet, s.desk.Path()+"..%2fserver.go" }, http.StatusNotFound},
		"another method":         {func(r *http.Request) { r.Method = http.MethodPut }, http.StatusMethodNotAllowed},
	} {
		code, body := s.call("open", nil, c.change)
		if code != c.want || strings.Contains(body, "EXPEDITION") || strings.Contains(body, "package desk") {
			t.Errorf("%s gets %d %.100s, want %d", name, code, body, c.want)
		}
	}
}

func TestEveryAnswerCarriesAStrictPolicy(t *testing.T) {
	s := serve(t, "")
	answer, err := s.Client().Get(s.URL + s.desk.Path())
	if err != nil {
		t.Fatal(err)
	}
	answer.Body.Close()
	policy := answer.Header.Get("Content-Security-Policy")
	if !strings.HasPrefix(policy, "default-src 'none';") || strings.Contains(policy, "unsafe") || !strings.Contains(policy, "frame-ancestors 'none'") {
		t.Errorf("policy %q", policy)
	}
	if answer.Header.Get("Referrer-Policy") != "no-referrer" {
		t.Error("the address with its secret is handed on")
	}
}

func TestAHundredMegabytesAreRefused(t *testing.T) {
	s := serve(t, "")
	if code, _ := s.call("read", question{Text: strings.Repeat("a", 100<<20)}, nil); code != http.StatusRequestEntityTooLarge {
		t.Errorf("code %d", code)
	}
}

func TestCallsBeyondTheBoundAreTurnedAway(t *testing.T) {
	g := guard{"s", make(chan struct{}, mostCalls), nil}
	for range mostCalls {
		g.calls <- struct{}{}
	}
	w, r := httptest.NewRecorder(), httptest.NewRequest(http.MethodGet, "http://127.0.0.1/s/", nil)
	if g.ServeHTTP(w, r); w.Code != http.StatusServiceUnavailable {
		t.Errorf("code %d", w.Code)
	}
}

func TestSecretsAreLongAndNeverTheSame(t *testing.T) {
	if a, b := newSecret(), newSecret(); a == b || len(a) < 26 {
		t.Errorf("%q, %q", a, b)
	}
}
