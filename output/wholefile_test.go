package output

import (
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func saying(text string) func(io.Writer) error {
	return func(w io.Writer) error {
		_, err := io.WriteString(w, text)
		return err
	}
}

// holds checks the content of a file and that nothing else lies in its folder.
func holds(t *testing.T, path, want string) {
	t.Helper()
	got, err := os.ReadFile(path)
	if err != nil || string(got) != want {
		t.Errorf("%q, %v; want %q", got, err, want)
	}
	entries, err := os.ReadDir(filepath.Dir(path))
	if err != nil || len(entries) != 1 {
		t.Errorf("left in the folder: %v, %v", entries, err)
	}
}

var errFull = errors.New("no space left")

func TestFileIsWritten(t *testing.T) {
	path := filepath.Join(t.TempDir(), "answer.json")
	if err := WriteFile(t.Context(), path, saying("first")); err != nil {
		t.Fatal(err)
	}
	holds(t, path, "first")
	if err := WriteFile(t.Context(), path, saying("second")); err != nil {
		t.Fatal(err)
	}
	holds(t, path, "second")
}

func TestOldFileStaysWhenTheWriterFails(t *testing.T) {
	path := filepath.Join(t.TempDir(), "answer.json")
	if err := os.WriteFile(path, []byte("old"), 0o600); err != nil {
		t.Fatal(err)
	}
	err := WriteFile(t.Context(), path, func(w io.Writer) error {
		io.WriteString(w, strings.Repeat("half", 10_000)) // more than any buffer
		return errFull
	})
	if !errors.Is(err, errFull) || !strings.Contains(err.Error(), path) {
		t.Errorf("error is %v", err)
	}
	holds(t, path, "old")
}

func TestOldFileStaysWhenTheWriterPanics(t *testing.T) {
	path := filepath.Join(t.TempDir(), "answer.json")
	if err := WriteFile(t.Context(), path, saying("old")); err != nil {
		t.Fatal(err)
	}
	func() {
		defer func() { recover() }()
		WriteFile(t.Context(), path, func(w io.Writer) error { panic("bug") })
	}()
	holds(t, path, "old")
}

func TestFileKeepsItsMode(t *testing.T) {
	path := filepath.Join(t.TempDir(), "answer.json")
	if err := os.WriteFile(path, nil, 0o600); err != nil {
		t.Fatal(err)
	}
	if err := WriteFile(t.Context(), path, saying("new")); err != nil {
		t.Fatal(err)
	}
	if info, err := os.Stat(path); err != nil || info.Mode().Perm() != 0o600 {
		t.Errorf("%v, %v", info.Mode(), err)
	}
}

func TestLinkStaysAndItsFileIsReplaced(t *testing.T) {
	path, link := filepath.Join(t.TempDir(), "answer.json"), filepath.Join(t.TempDir(), "link.json")
	if err := WriteFile(t.Context(), path, saying("old")); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(path, link); err != nil {
		t.Skip("no symbolic links here:", err)
	}
	if err := WriteFile(t.Context(), link, saying("new")); err != nil {
		t.Fatal(err)
	}
	holds(t, path, "new")
	if info, err := os.Lstat(link); err != nil || info.Mode()&os.ModeSymlink == 0 {
		t.Errorf("the link became %v, %v", info.Mode(), err)
	}
}

func TestPartOfAKilledRunIsSteppedOver(t *testing.T) {
	path := filepath.Join(t.TempDir(), "answer.json")
	if err := os.WriteFile(path+".part0", []byte("killed"), 0o600); err != nil {
		t.Fatal(err)
	}
	if err := WriteFile(t.Context(), path, saying("new")); err != nil {
		t.Fatal(err)
	}
	if got, err := os.ReadFile(path); err != nil || string(got) != "new" {
		t.Errorf("%q, %v", got, err)
	}
}

func TestDeviceIsWrittenToAndStays(t *testing.T) {
	before, err := os.Stat(os.DevNull)
	if err != nil {
		t.Skip(err)
	}
	if err := WriteFile(t.Context(), os.DevNull, saying("gone")); err != nil {
		t.Fatal(err)
	}
	if after, err := os.Stat(os.DevNull); err != nil || after.Mode() != before.Mode() {
		t.Errorf("%s became %v, %v", os.DevNull, after.Mode(), err)
	}
}

func TestFolderIsNoFile(t *testing.T) {
	folder := t.TempDir()
	if err := WriteFile(t.Context(), folder, saying("x")); err == nil {
		t.Error("a folder was written to")
	}
	if err := WriteFile(t.Context(), filepath.Join(folder, "missing", "answer.json"), saying("x")); err == nil {
		t.Error("a file in a folder that is not there was written to")
	}
}
