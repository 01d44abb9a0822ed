package cluster

import (
	"fmt"
	"net"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strconv"
	"strings"
	"syscall"
	"testing"
	"time"
)

// slurm is a controller and a node of this test alone, with their own credentials, folders and ports.
type slurm struct {
	t   *testing.T
	dir string
	env []string
}

// patience is how long anything is waited for: a machine may be busy with other tests.
const patience = 3 * time.Minute

// until waits for something to become true; what says in the end what was waited for.
func (s *slurm) until(what string, holds func() bool) {
	s.t.Helper()
	for end := time.Now().Add(patience); !holds(); time.Sleep(50 * time.Millisecond) {
		if time.Now().After(end) {
			logs := ""
			for _, name := range []string{"munged.log", "controller.log", "node.log"} {
				data, _ := os.ReadFile(filepath.Join(s.dir, name))
				logs += name + ":\n" + string(data[max(0, len(data)-2000):]) + "\n"
			}
			s.t.Fatalf("waited in vain for %s\n%s", what, logs)
		}
	}
}

// begin starts a daemon, which is ended by its own process number when the test is over.
func (s *slurm) begin(name string, args ...string) {
	s.t.Helper()
	path, err := exec.LookPath(name)
	if err != nil {
		s.t.Fatal(err)
	}
	cmd := exec.Command(path, args...)
	cmd.Env = append(os.Environ(), s.env...)
	if err := cmd.Start(); err != nil {
		s.t.Fatal(err)
	}
	s.t.Cleanup(func() {
		ended := make(chan struct{})
		go func() { _ = cmd.Wait(); close(ended) }()
		_ = cmd.Process.Signal(syscall.SIGTERM)
		select {
		case <-ended:
		case <-time.After(20 * time.Second):
			_ = cmd.Process.Kill()
			<-ended
		}
	})
}

// freePort is one that nobody listens at.
func freePort(t *testing.T) int {
	t.Helper()
	l, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	defer l.Close()
	return l.Addr().(*net.TCPAddr).Port
}

// newSlurm starts the daemons, or leaves the test out where they can't be had. Bin goes before the path of the jobs.
func newSlurm(t *testing.T, bin string) *slurm {
	t.Helper()
	for _, name := range []string{"munged", "slurmctld", "slurmd", "sbatch", "squeue", "sinfo", "scancel"} {
		if _, err := exec.LookPath(name); err != nil {
			t.Skipf("left out: there is no %s here (Debian has it in slurm-wlm and munge)", name)
		}
	}
	if os.Getuid() != 0 {
		t.Skip("left out: the daemons of Slurm want to be started by root")
	}
	host, err := os.Hostname()
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	if err := os.Chmod(dir, 0o755); err != nil { // munged wants its folder to be nobody else's to write
		t.Fatal(err)
	}
	for _, folder := range []string{"state", "spool", "munge"} {
		if err := os.Mkdir(filepath.Join(dir, folder), 0o755); err != nil {
			t.Fatal(err)
		}
	}
	s := &slurm{t: t, dir: dir, env: []string{"SLURM_CONF=" + dir + "/slurm.conf", "PATH=" + bin + ":" + os.Getenv("PATH")}}
	conf := fmt.Sprintf(`ClusterName=test
SlurmctldHost=%[1]s(127.0.0.1)
SlurmUser=root
SlurmdUser=root
SlurmctldPort=%[3]d
SlurmdPort=%[4]d
AuthType=auth/munge
AuthInfo=socket=%[2]s/munge/socket
CredType=cred/munge
ProctrackType=proctrack/linuxproc
TaskPlugin=task/none
SelectType=select/cons_tres
SelectTypeParameters=CR_CPU
MpiDefault=none
SwitchType=switch/none
JobAcctGatherType=jobacct_gather/none
AccountingStorageType=accounting_storage/none
JobCompType=jobcomp/none
StateSaveLocation=%[2]s/state
SlurmdSpoolDir=%[2]s/spool
SlurmctldPidFile=%[2]s/controller.pid
SlurmdPidFile=%[2]s/node.pid
SlurmctldLogFile=%[2]s/controller.log
SlurmdLogFile=%[2]s/node.log
ReturnToService=2
KillWait=2
SchedulerParameters=batch_sched_delay=0,sched_interval=1,bf_interval=1
NodeName=%[1]s NodeAddr=127.0.0.1 CPUs=%[5]d RealMemory=1000
PartitionName=all Nodes=ALL Default=YES State=UP
`, host, dir, freePort(t), freePort(t), min(2, runtime.NumCPU()))
	for name, data := range map[string]string{"slurm.conf": conf, "munge.key": strings.Repeat("a key of this test alone ", 8)} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(data), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	s.begin("munged", "--foreground", "--force", "--key-file="+dir+"/munge.key", "--socket="+dir+"/munge/socket", "--pid-file="+dir+"/munge/pid",
		"--log-file="+dir+"/munged.log", "--seed-file="+dir+"/munge/seed")
	s.until("munged", func() bool { _, err := os.Stat(dir + "/munge/socket"); return err == nil })
	s.begin("slurmctld", "-D")
	s.begin("slurmd", "-D")
	s.until("an idle node", func() bool {
		cmd := exec.Command("sinfo", "--noheader", "--format=%T")
		cmd.Env = append(os.Environ(), s.env...)
		state, _ := cmd.Output()
		return strings.TrimSpace(string(state)) == "idle"
	})
	return s
}

// jobs are the jobs and tasks that have not ended: name, index and state of each.
func (s *slurm) jobs() (list []string) {
	for line := range strings.Lines(run(s.t, s.dir, s.env, "squeue", "--noheader", "--array", "--format=%j %K %T %r")) {
		list = append(list, strings.TrimSpace(line))
	}
	return list
}

// wrapper stands for the program on the path of the jobs: the fifth share is stopped in the midst of its work the first
// time, when it has used some processor time (the 14th figure of its stat, in ticks), and its process number noted.
const wrapper = `#!/bin/sh
case " $* " in
*" --shard 5/8 "*)
	if [ ! -e '%[2]s' ]; then
		'%[1]s' "$@" &
		pid=$!
		while [ "$(cut -d ' ' -f 14 /proc/$pid/stat)" -lt 10 ]; do :; done
		kill -STOP $pid
		echo $pid >'%[2]s.new'
		mv '%[2]s.new' '%[2]s'
		wait $pid
		exit $?
	fi
	;;
esac
exec '%[1]s' "$@"
`

// The example for Slurm, as it stands: eight shares as an array job, of which one is killed in its midst, submitted again
// by itself, and merged. The answer is that of one machine, byte for byte.
func TestTheSlurmExampleOnARealController(t *testing.T) {
	if testing.Short() {
		t.Skip("takes some ten seconds")
	}
	const replications = "400"
	bin := t.TempDir()
	s := newSlurm(t, bin)
	program, folder, stopped := built(t), furnished(t), filepath.Join(bin, "stopped")
	if err := os.WriteFile(filepath.Join(bin, "coredays"), fmt.Appendf(nil, wrapper, program, stopped), 0o777); err != nil {
		t.Fatal(err)
	}
	submitted := run(t, folder, append(s.env, "SHARES=8", "REPLICATIONS="+replications), "./submit.sh")
	s.until("share 5 to be stopped in its midst", func() bool { _, err := os.Stat(stopped); return err == nil })
	s.until("the other seven shares", func() bool { return len(s.jobs()) == 2 })

	pid, err := os.ReadFile(stopped)
	if err != nil {
		t.Fatal(err)
	}
	victim, err := strconv.Atoi(strings.TrimSpace(string(pid)))
	if err != nil {
		t.Fatal(err)
	}
	if err := syscall.Kill(victim, syscall.SIGKILL); err != nil {
		t.Fatal(err)
	}
	s.until("the merging job to wait for what never comes", func() bool {
		jobs := s.jobs()
		return len(jobs) == 1 && strings.Contains(jobs[0], "DependencyNeverSatisfied")
	})
	if left, _ := filepath.Glob(filepath.Join(folder, "share-5.part*")); len(left) > 0 {
		t.Errorf("the share that was killed has left %q", left)
	}
	parts := []string{"merge"}
	for n := 1; n <= 8; n++ {
		if n != 5 {
			parts = append(parts, fmt.Sprintf("share-%d.part", n))
		}
	}
	refused(t, program, folder, "missing: share 5/8", parts...)

	// As the comments of submit.sh say it.
	again := strings.TrimSpace(run(t, folder, append(s.env, "REPLICATIONS="+replications), "sbatch", "--parsable", "--array=5", "share.sh"))
	run(t, folder, s.env, "scancel", "--name=coredays-merge")
	run(t, folder, s.env, "sbatch", "--dependency=afterok:"+again, "merge.sh")
	s.until("share 5 and the merge", func() bool { return len(s.jobs()) == 0 })
	sameAsOneMachine(t, program, folder, replications)

	refused(t, program, folder, "share 3/8 is there twice: share-3.part and share-3.part", append(parts, "share-5.part", "share-3.part")...)
	if t.Failed() {
		logs, _ := filepath.Glob(filepath.Join(folder, "*.log"))
		for _, name := range logs {
			data, _ := os.ReadFile(name)
			t.Logf("%s: %s", filepath.Base(name), data)
		}
		t.Log(submitted)
	}
}

// refused wants the program to refuse a call with some words.
func refused(t *testing.T, program, folder, want string, args ...string) {
	t.Helper()
	cmd := exec.Command(program, args...)
	cmd.Dir = folder
	out, err := cmd.CombinedOutput()
	if err == nil || !strings.Contains(string(out), want) {
		t.Errorf("%q: %v: %s\nwant %q", args, err, out, want)
	}
}
