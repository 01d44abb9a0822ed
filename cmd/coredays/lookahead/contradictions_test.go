package lookahead

import (
	"os"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"coredays/model/plan"
	"coredays/scenario"
)

// expedition is the invented one of the README.
func expedition(t testing.TB) (*plan.Plan, Papers) {
	t.Helper()
	read := func(name string) []byte {
		data, err := os.ReadFile("../../../testdata/lookahead/" + name)
		if err != nil {
			t.Fatal(err)
		}
		return data
	}
	p, err := scenario.Read("plan.yaml", read("plan.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	return p, Papers{Log: File{"log.csv", read("log.csv")}, Cores: &File{"cores.csv", read("cores.csv")}}
}

// What contradicts the plan, the clock or the papers themselves is refused, with the lines that do. Each case changes
// some text of a file that is right.
func TestLogsThatContradictAreRefused(t *testing.T) {
	p, good := expedition(t)
	if _, _, err := Read(p, good); err != nil {
		t.Fatal(err)
	}
	if len(contradictions) < 30 {
		t.Errorf("%d cases, want 30", len(contradictions))
	}
	for _, c := range contradictions {
		f := good
		if c.at != "" {
			at, err := time.Parse(time.RFC3339, c.at)
			if err != nil {
				t.Fatal(err)
			}
			f.At = at
		}
		change := func(file File) File {
			if !strings.Contains(string(file.Data), c.old) {
				t.Fatalf("%s: %s has no %q", c.what, file.Name, c.old)
			}
			return File{file.Name, []byte(strings.Replace(string(file.Data), c.old, c.new, 1))}
		}
		switch {
		case c.state != "":
			f.State = &File{"state.yaml", []byte(c.state)}
		case c.cores:
			changed := change(*f.Cores)
			f.Cores = &changed
		default:
			f.Log = change(f.Log)
		}
		_, _, err := Read(p, f)
		if err == nil {
			t.Errorf("%s: it was taken", c.what)
			continue
		}
		first, _, _ := strings.Cut(err.Error(), "\n")
		if difference := cmp.Diff(c.want, first); difference != "" {
			t.Errorf("%s (-want +got):\n%s", c.what, difference)
		}
	}
}

// contradiction is a file with one thing wrong, and what is said of it first.
type contradiction struct {
	what, old, new string
	cores          bool   // it is in the core table
	state          string // a state file instead
	at             string
	want           string
}

var contradictions = []contradiction{
	{what: "a site that is not in the plan", old: "thrusters down,PR-2", new: "thrusters down,PR-9", want: `log.csv:81: the scenario has no site PR-9: write the site as the scenario does, or add it there`},
	{what: "a hole that is not in the plan", old: "cored,PR-2,B,0.0", new: "cored,PR-2,Q,0.0", want: `log.csv:101: site PR-2 has no hole or task Q in the scenario: add it there, since it was done`},
	{what: "a hole without a site", old: "cored,PR-2,B,0.0", new: "cored,,B,0.0", want: `log.csv:101: hole B has no site`},
	{what: "a hole that gets shallower", old: "serviced rig,PR-1,A,181.4", new: "serviced rig,PR-1,A,81.4", want: `log.csv:14: hole A is 81.4 m deep, and on line 13 it was 181.4 m: a hole gets no shallower, unless it is begun again at 0`},
	{what: "a hole below what is approved", old: "POOH,PR-1,A,320.0", new: "POOH,PR-1,A,420.0", want: `log.csv:20: hole A is 420 m deep, and site PR-1 is approved to 350 m: put the approval right, in the scenario or the state file, if it was amended`},
	{what: "a gap of days", old: "2028-01-12T13:15,2028-01-12T13:45,serviced rig,PR-1,A,107.6\n2028-01-12T13:45,2028-01-13T07:00,cored,PR-1,A,107.6\n", new: "", want: `log.csv:11: 17.8 h are missing: line 10 ends at 2028-01-12T13:15 and it begins at 2028-01-13T07:00`},
	{what: "lines that overlap", old: "2028-01-13T07:00,2028-01-13T20:00,coring line parted", new: "2028-01-13T02:00,2028-01-13T20:00,coring line parted", want: `log.csv:13: it begins at 2028-01-13T02:00, 5.0 h before line 12 ends`},
	{what: "a log before sailing", old: "2028-01-10T06:00,", new: "2028-01-09T06:00,", want: `log.csv:3: it begins at 2028-01-09T06:00, and by the scenario the ship sails at 2028-01-10T06:00`},
	{what: "a moment before the log", at: "2028-01-09T00:00:00Z", want: `log.csv:3: the log begins at 2028-01-10T06:00, after the moment asked for, 2028-01-09T00:00`},
	{what: "a moment after the log", at: "2028-01-29T12:00:00Z", want: `log.csv:103: the log ends at 2028-01-29T06:00, more than 2 h before the moment asked for, 2028-01-29T12:00: bring it up to date, or give an earlier moment`},
	{what: "under way at a site", old: "2028-01-24T05:15,2028-01-24T23:45,under way,,,", new: "2028-01-24T05:15,2028-01-24T23:45,under way,PR-1,,", want: `log.csv:80: the ship is under way ("under way") and at site PR-1 at once`},
	{what: "another site without a passage", old: "2028-01-24T05:15,2028-01-24T23:45,under way,,,", new: "2028-01-24T05:15,2028-01-24T23:45,other work,PR-1,,", want: `log.csv:81: the ship is at site PR-2, and on the line before at site PR-1: how she came there is not in the log`},
	{what: "a number that is none", old: "cored,PR-1,A,107.6", new: "cored,PR-1,A,deep", want: `log.csv:12: depth_mbsf "deep" is no number: write a number, or leave the cell empty`},
	{what: "a time that is none", old: "2028-01-12T13:15,2028-01-12T13:45,serviced", new: "morning,2028-01-12T13:45,serviced", want: `log.csv:11: from "morning" is no date: write a time such as 2027-03-18T03:00`},
	{what: "a line that ends before it begins", old: "2028-01-12T13:15,2028-01-12T13:45,serviced", new: "2028-01-14T13:15,2028-01-12T13:45,serviced", want: `log.csv:11: from 2028-01-14T13:15 to 2028-01-12T13:45 is no time: put one of the two right`},
	{what: "a line that does not say what", old: "under way", new: "", want: `log.csv:4: it does not say what was done: write what was done`},
	{what: "a core from a site that is not in the plan", cores: true, old: "PR-2,B,8,", new: "PR-7,B,8,", want: `cores.csv:139: core 8H is from site PR-7, which the scenario does not have`},
	{what: "a core from a hole that is not in the plan", cores: true, old: "PR-2,B,8,", new: "PR-2,K,8,", want: `cores.csv:139: core 8H is from hole K of site PR-2, which the scenario does not have`},
	{what: "a core from a hole that is not begun", cores: true, old: "PR-2,B,8,", new: "PR-2,C,8,", want: `cores.csv:139: core 8H is from hole C of site PR-2, which by the log is not begun`},
	{what: "a core before its hole", cores: true, old: "2028-01-11T20:35", new: "2028-01-10T20:35", want: `cores.csv:3: core 1H of hole A came on deck at 2028-01-10T20:35, before the hole was begun at 2028-01-11T11:00 by the log`},
	{what: "a core after its hole", cores: true, old: "PR-1,A,4,H,23.8,9.5,9.1,2028-01-11T23:40", new: "PR-1,A,44,H,23.8,9.5,9.1,2028-01-27T23:40", want: `cores.csv:6: core 44H of hole A came on deck at 2028-01-27T23:40, after the hole was left at 2028-01-15T14:45 by the log`},
	{what: "a core twice", cores: true, old: "PR-2,B,8,", new: "PR-2,B,9,", want: `cores.csv:140: core 9 of hole B is on line 139 too`},
	{what: "a state of another moment", state: "at: 2028-01-28T06:00Z", want: `state.yaml: at: 2028-01-28T06:00 is more than 2 h from the moment of the log, 2028-01-29T06:00`},
	{what: "a state at another site", state: "site: PR-1", want: `state.yaml: site: PR-1, and by the log the ship is at PR-2`},
	{what: "a state in another hole", state: "hole: C", want: `state.yaml: hole: C, and by the log hole B is in hand`},
	{what: "a state deeper by more than a joint", state: "depth_m: 120", want: `state.yaml: depth_m: 120 m, and by the log hole B is 87.3 m deep: more than a joint apart`},
	{what: "a state with an unknown assembly", state: "assembly: TOP", want: `state.yaml: assembly: "TOP", wanted none, APC/XCB or RCB`},
	{what: "a state with an unknown key", state: "dept_m: 90", want: `state.yaml:1: there is no key dept_m in a state file: coredays lookahead --write-state writes one with all keys`},
	{what: "a state with a hole that is not in the plan", state: "holes: [{site: PR-2, hole: Q, status: done}]", want: `state.yaml: holes: the scenario has no hole Q of site PR-2`},
	{what: "a state that drops what is in hand", state: "holes: [{site: PR-2, hole: B, status: dropped}]", want: `state.yaml: holes: hole B of site PR-2 is dropped, and by the log it is in hand`},
	{what: "a state that ends what is in hand", state: "holes: [{site: PR-2, hole: B, status: done}]", want: `state.yaml: holes: hole B of site PR-2 is done, and by the log it is in hand`},
	{what: "a state with a depth beyond the log's", state: "holes: [{site: PR-2, hole: A, depth_m: 300}]", want: `state.yaml: holes: hole A of site PR-2 is 300 m deep, and by the log 390 m: more than a joint apart`},
	{what: "a state with an approval of a site that is not in the plan", state: "approvals: [{site: PR-8, to_mbsf: 100}]", want: `state.yaml: approvals: the scenario has no site PR-8`},
	{what: "an approval without a depth", state: "approvals: [{site: PR-2}]", want: `state.yaml: approvals: site PR-2 has no to_mbsf: write the depth below the sea floor to which it is approved`},
	{what: "a rank that is none", state: "holes: [{site: PR-2, hole: C, rank: 1.5}]", want: `state.yaml: holes: rank: 1.5, wanted a whole number`},
	{what: "a hole that stands open longer than it is there", state: "open_h: 40", want: `state.yaml: open_h: 40 h, and by the log hole B was begun 13.0 h ago`},
	{what: "a state with a bit in the air", state: "bit_m: -5", want: `state.yaml: bit_m: -5, wanted 0 to 12000`},
}

// A hole that the scenario does not have is told once, with its first line, though the log has it on each of many.
func TestAHoleThatIsNotInThePlanIsToldOnce(t *testing.T) {
	p, f := expedition(t)
	f.Log.Data = []byte(strings.ReplaceAll(string(f.Log.Data), ",PR-2,B,", ",PR-2,Q,"))
	f.Cores = nil
	_, _, err := Read(p, f)
	if err == nil || strings.Count(err.Error(), "has no hole or task Q") != 1 {
		t.Errorf("%v", err)
	}
}
