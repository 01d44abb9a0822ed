package scenario

import (
	"strings"
	"testing"
)

func TestAKeyThatHasAnotherNameNowIsNamed(t *testing.T) {
	_, err := Read("plan.yaml", []byte("version: 1\nrates: {piston_pace: 110 %}\n"))
	if err == nil || !strings.Contains(err.Error(), `it is "piston_duration_factor" now`) {
		t.Errorf("got %v", err)
	}
}
