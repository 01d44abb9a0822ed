package desk

import (
	"encoding/json"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"coredays/scenario"
)

// planFile is a copy of the demonstration in a folder of its own.
func planFile(t *testing.T) string {
	t.Helper()
	file := filepath.Join(t.TempDir(), "plan.yaml")
	if err := os.WriteFile(file, scenario.DemonstrationText(), 0o644); err != nil {
		t.Fatal(err)
	}
	return file
}

func (s served) opened() (o opened) {
	s.Helper()
	_, body := s.call("open", nil, nil)
	if err := json.Unmarshal([]byte(body), &o); err != nil {
		s.Fatal(err)
	}
	return o
}

func holds(t *testing.T, file, want string) {
	t.Helper()
	if got, err := os.ReadFile(file); err != nil || string(got) != want {
		t.Errorf("%s holds %d bytes, want %d (%v)", file, len(got), len(want), err)
	}
	if left, _ := filepath.Glob(filepath.Join(filepath.Dir(file), "*.part*")); len(left) > 0 {
		t.Errorf("left behind: %q", left)
	}
}

func TestAPlanIsSavedWithItsComments(t *testing.T) {
	file := planFile(t)
	s := serve(t, file)
	o := s.opened()
	_, body := s.call("edit", question{Text: o.Text, Edits: []change{{"sites[0].water_depth", "3000 m"}}}, nil)
	var edited struct{ Text string }
	if err := json.Unmarshal([]byte(body), &edited); err != nil {
		t.Fatal(err)
	}
	if code, body := s.call("save", question{Text: edited.Text, Digest: o.Digest}, nil); code != http.StatusOK {
		t.Fatalf("%d %s", code, body)
	}
	holds(t, file, strings.Replace(string(scenario.DemonstrationText()), "3420 m", "3000 m", 1))
}

func TestAFileChangedUnderneathIsShownAndNotWrittenOver(t *testing.T) {
	file := planFile(t)
	s := serve(t, file)
	o := s.opened()
	if err := os.WriteFile(file, []byte("title: somebody else's\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	code, body := s.call("save", question{Text: "title: mine\n", Digest: o.Digest}, nil)
	if code != http.StatusConflict || !strings.Contains(body, "somebody else's") {
		t.Errorf("%d %s", code, body)
	}
	holds(t, file, "title: somebody else's\n")
}

func TestNoPathIsTakenFromThePage(t *testing.T) {
	file := planFile(t)
	s := serve(t, file)
	for _, name := range []string{"../out.yaml", filepath.Join(t.TempDir(), "out.yaml"), `..\out.yaml`, "a/b.yaml", ".hidden.yaml", "plan.txt", "..", "plan.yaml", "nul\x00.yaml", strings.Repeat("a", 300) + ".yaml"} {
		if code, body := s.call("save", question{Text: "x: 1\n", Name: name}, nil); code != http.StatusUnprocessableEntity {
			t.Errorf("%q: %d %s", name, code, body)
		}
	}
	holds(t, file, string(scenario.DemonstrationText()))
	if code, _ := s.call("save", question{Text: "x: 1\n", Name: "other.yaml"}, nil); code != http.StatusOK || s.opened().File != filepath.Join(filepath.Dir(file), "other.yaml") {
		t.Errorf("a plan beside it: %d, %s", code, s.opened().File)
	}
}

func TestWhereTheDiskIsFullTheOldFileStays(t *testing.T) {
	file := planFile(t)
	s := serve(t, file)
	o := s.opened()
	var was syscall.Rlimit
	if err := syscall.Getrlimit(syscall.RLIMIT_FSIZE, &was); err != nil {
		t.Skip(err)
	}
	// A limit to the size of files has writing fail midway, as a full disk does.
	if err := syscall.Setrlimit(syscall.RLIMIT_FSIZE, &syscall.Rlimit{Cur: 4096, Max: was.Max}); err != nil {
		t.Skip(err)
	}
	code, body := s.call("save", question{Text: o.Text + "# more\n", Digest: o.Digest}, nil)
	if err := syscall.Setrlimit(syscall.RLIMIT_FSIZE, &was); err != nil {
		t.Fatal(err)
	}
	if code != http.StatusInsufficientStorage {
		t.Errorf("%d %s", code, body)
	}
	holds(t, file, o.Text)
}
