package desk

import (
	"fmt"
	"net/http"
	"os"
	"os/exec"
	"strings"
	"testing"
	"time"
)

// saver is the environment variable that has this test save to a file until it is killed.
const saver = "COREDAYS_DESK_SAVES_TO"

// plans are two versions of a plan of 2 MB.
func plans() [2]string {
	more := strings.Repeat("# "+strings.Repeat("a remark ", 20)+"\n", 11000)
	return [2]string{"title: one\n" + more, "title: two\n" + more}
}

func TestAProcessKilledInASaveLeavesTheOldPlanOrTheNew(t *testing.T) {
	both := plans()
	if file := os.Getenv(saver); file != "" {
		s := serve(t, file)
		for i := 0; ; i++ {
			if code, body := s.call("save", question{Text: both[i%2], Digest: digestOf([]byte(both[(i+1)%2]))}, nil); code != http.StatusOK {
				t.Fatalf("%d %.200s", code, body)
			}
			if i == 0 {
				fmt.Println("saving")
			}
		}
	}
	for round := range 3 {
		file := planFile(t)
		if err := os.WriteFile(file, []byte(both[1]), 0o644); err != nil {
			t.Fatal(err)
		}
		child := exec.CommandContext(t.Context(), os.Args[0], "-test.run", t.Name())
		child.Env = append(os.Environ(), saver+"="+file)
		out, err := child.StdoutPipe()
		if err != nil {
			t.Fatal(err)
		}
		if err := child.Start(); err != nil {
			t.Skip(err)
		}
		_, _ = out.Read(make([]byte, 10)) // it has saved once
		time.Sleep(time.Duration(7*round+1) * time.Millisecond)
		_ = child.Process.Kill()
		_ = child.Wait()
		now, err := os.ReadFile(file)
		if err != nil || string(now) != both[0] && string(now) != both[1] {
			t.Fatalf("killed in a save, the file holds %d bytes of %d (%v)", len(now), len(both[0]), err)
		}
		s := serve(t, file) // what the killed one left beside it is in nobody's way
		if code, body := s.call("save", question{Text: "title: three\n", Digest: digestOf(now)}, nil); code != http.StatusOK {
			t.Errorf("%d %s", code, body)
		}
	}
}
