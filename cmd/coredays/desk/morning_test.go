package desk

import (
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// shipsPaper is a file of the ship's whose morning it is.
func shipsPaper(t *testing.T, name string) *paper {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("../../../testdata/lookahead", name))
	if err != nil {
		t.Fatal(err)
	}
	return &paper{name, data}
}

func TestALogGivesTheMorningPage(t *testing.T) {
	s := serve(t, "")
	plan := string(shipsPaper(t, "plan.yaml").Data)
	code, body := s.call("morning", question{Text: plan, Papers: papers{Log: shipsPaper(t, "log.csv"), Cores: shipsPaper(t, "cores.csv"), Forecast: shipsPaper(t, "forecast.csv")}}, nil)
	if code != http.StatusOK || !strings.Contains(body, "leave") || !strings.Contains(body, "morning-ahead") || !strings.Contains(body, "morning-choices") {
		t.Errorf("%d %.500s", code, body)
	}
	code, body = s.call("morning", question{Text: plan, Papers: papers{Log: &paper{"/etc/passwd", []byte("not a log\n")}}}, nil)
	if code != http.StatusUnprocessableEntity || !strings.Contains(body, "passwd") || strings.Contains(body, "/etc") {
		t.Errorf("what is no log gives %d %.500s", code, body)
	}
	if code, _ = s.call("morning", question{Text: plan}, nil); code != http.StatusUnprocessableEntity {
		t.Errorf("without a log: %d", code)
	}
}
