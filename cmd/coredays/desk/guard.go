package desk

import (
	"crypto/rand"
	"crypto/subtle"
	"net"
	"net/http"
	"net/url"
	"strings"
)

const (
	mostBody  = 6 << 20 // bytes: a scenario of 4 MiB with what JSON adds
	mostCalls = 32      // at a time; a page makes three
	// callHeader is on every call of the page. Another site can't send it without being asked for its origin first.
	callHeader = "X-Coredays-Desk"
)

// newSecret is what an address must hold: 128 bits at least, which nobody finds by trying.
func newSecret() string { return rand.Text() }

// guard lets nobody in but the page that was opened with the secret, at this address.
type guard struct {
	secret string
	calls  chan struct{}
	next   http.Handler // sees paths without the secret
}

func (g guard) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	header := w.Header()
	header.Set("Content-Security-Policy", "default-src 'none'; script-src 'self'; style-src 'self'; img-src data:; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'")
	header.Set("X-Content-Type-Options", "nosniff")
	header.Set("Referrer-Policy", "no-referrer")
	header.Set("Cross-Origin-Resource-Policy", "same-origin")
	header.Set("Cross-Origin-Opener-Policy", "same-origin")
	header.Set("Cache-Control", "no-store")
	if !isLoopback(r.Host) {
		http.Error(w, "not at this host", http.StatusMisdirectedRequest)
		return
	}
	if origin := r.Header.Get("Origin"); origin != "" && origin != "http://"+r.Host {
		http.Error(w, "not from another site", http.StatusForbidden)
		return
	}
	if site := r.Header.Get("Sec-Fetch-Site"); site == "cross-site" || site == "same-site" { // another port is the same site
		http.Error(w, "not from another site", http.StatusForbidden)
		return
	}
	given, rest, _ := strings.Cut(strings.TrimPrefix(r.URL.Path, "/"), "/")
	if subtle.ConstantTimeCompare([]byte(given), []byte(g.secret)) != 1 {
		http.Error(w, "this needs the whole address that coredays desk printed", http.StatusForbidden)
		return
	}
	if r.Method != http.MethodGet && r.Header.Get(callHeader) == "" {
		http.Error(w, "not without the header of the page", http.StatusForbidden)
		return
	}
	select {
	case g.calls <- struct{}{}:
		defer func() { <-g.calls }()
	default:
		http.Error(w, "too many calls at a time", http.StatusServiceUnavailable)
		return
	}
	r.Body = http.MaxBytesReader(w, r.Body, mostBody)
	within := r.Clone(r.Context())
	within.URL = &url.URL{Path: "/" + rest}
	g.next.ServeHTTP(w, within)
}

// isLoopback reports whether a request names this machine by number or as localhost: a name that
// somebody else made to lead here does not.
func isLoopback(host string) bool {
	name, _, err := net.SplitHostPort(host)
	if err != nil {
		name = host
	}
	ip := net.ParseIP(strings.Trim(name, "[]"))
	return name == "localhost" || ip != nil && ip.IsLoopback()
}
