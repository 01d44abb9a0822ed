package cluster

import (
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	batch "k8s.io/api/batch/v1"
	core "k8s.io/api/core/v1"
	"sigs.k8s.io/yaml"
)

// jobIn is the job of an example, by the types of the interface that Kubernetes publishes (k8s.io/api): a key that they do
// not have, or one that stands twice, is an error.
func jobIn(t *testing.T, name string) *batch.Job {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(examples, "kubernetes", name))
	if err != nil {
		t.Fatal(err)
	}
	var job batch.Job
	if err := yaml.UnmarshalStrict(data, &job); err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	if job.APIVersion != "batch/v1" || job.Kind != "Job" || job.Name == "" {
		t.Errorf("%s is %s %s %q", name, job.APIVersion, job.Kind, job.Name)
	}
	// What the comments of the types ask for beyond their form.
	pod := &job.Spec.Template.Spec
	if pod.RestartPolicy != core.RestartPolicyNever && pod.RestartPolicy != core.RestartPolicyOnFailure {
		t.Errorf("%s: restartPolicy %q; a job takes Never or OnFailure", name, pod.RestartPolicy)
	}
	volumes := map[string]bool{}
	for _, v := range pod.Volumes {
		volumes[v.Name] = v.PersistentVolumeClaim != nil
	}
	for _, c := range pod.Containers {
		if c.Name == "" || c.Image == "" {
			t.Errorf("%s: a container without name or image", name)
		}
		for _, m := range c.VolumeMounts {
			if !volumes[m.Name] {
				t.Errorf("%s: %s mounts %q, which is no volume of the pod", name, c.Name, m.Name)
			}
		}
	}
	return &job
}

// The example for Kubernetes keeps to the published types, and what its pods run, one after the other here, gives the
// answer of one machine.
func TestTheKubernetesExampleKeepsToItsSchemaAndRuns(t *testing.T) {
	shares, merge := jobIn(t, "shares.yaml"), jobIn(t, "merge.yaml")
	spec := &shares.Spec
	if spec.CompletionMode == nil || *spec.CompletionMode != batch.IndexedCompletion || spec.Completions == nil || *spec.Completions != 8 {
		t.Fatal("it is no indexed job of eight")
	}
	// "backoffLimitPerIndex: … can only be set when the Job's completionMode=Indexed, and the Pod's restart policy is
	// Never"; maxFailedIndexes: "can only be specified when backoffLimitPerIndex is set" (comments of k8s.io/api).
	if spec.BackoffLimitPerIndex == nil || spec.MaxFailedIndexes == nil || spec.Template.Spec.RestartPolicy != core.RestartPolicyNever {
		t.Error("failed shares are not tried again by themselves")
	}
	if testing.Short() {
		t.Skip("running it takes some seconds")
	}
	bin, folder := built(t), furnished(t)
	for index := range int(*spec.Completions) {
		asPod(t, bin, folder, shares, "JOB_COMPLETION_INDEX="+strconv.Itoa(index))
	}
	asPod(t, bin, folder, merge)
	sameAsOneMachine(t, bin, folder, few)
}

// few are the replications with which the test runs the example, rather than its own.
const few = "40"

// asPod runs the command of the container of a job, with fewer replications than the example has.
func asPod(t *testing.T, program, folder string, job *batch.Job, env ...string) {
	t.Helper()
	c := &job.Spec.Template.Spec.Containers[0]
	if len(c.Command) != 2 || len(c.Args) != 1 || strings.Contains(c.Args[0], "$(") {
		t.Fatalf("%s runs %q %q, where $( would be a variable of Kubernetes", job.Name, c.Command, c.Args)
	}
	line := strings.Replace(c.Args[0], "--replications 2000", "--replications "+few, 1)
	cmd := exec.Command(c.Command[0], c.Command[1], line)
	cmd.Dir, cmd.Env = folder, append(append(os.Environ(), "PATH="+filepath.Dir(program)+":"+os.Getenv("PATH")), env...)
	if out, err := cmd.CombinedOutput(); err != nil {
		t.Fatalf("%s %v: %v\n%s", job.Name, env, err, out)
	}
}
