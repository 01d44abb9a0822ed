package desk

import (
	"encoding/json"
	"fmt"
	"net/http"
)

// stream sends events as they come (server-sent events, the HTML standard, section 9.2).
type stream struct {
	w http.ResponseWriter
	c *http.ResponseController
}

func newStream(w http.ResponseWriter) stream {
	w.Header().Set("Content-Type", "text/event-stream")
	return stream{w, http.NewResponseController(w)}
}

// send sends an event with its data on one line.
func (s stream) send(event string, data any) error {
	line, err := json.Marshal(data)
	if err != nil {
		return err
	}
	if _, err := fmt.Fprintf(s.w, "event: %s\ndata: %s\n\n", event, line); err != nil {
		return err
	}
	return s.c.Flush()
}
