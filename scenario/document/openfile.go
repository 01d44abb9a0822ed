package document

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
)

var errNoFile = errors.New("is no ordinary file but a folder, pipe or device; name a file")

// OpenFile opens a table to read. It must be an ordinary file of a size that somebody can mean: only to open a pipe
// may take for ever.
func OpenFile(path string) (*os.File, error) { return openWithin(path, MostTable) }

// openWithin opens an ordinary file of at most so many bytes.
func openWithin(path string, most int64) (*os.File, error) {
	info, err := os.Stat(path)
	switch {
	case err != nil:
		return nil, &unread{path, err}
	case !info.Mode().IsRegular():
		return nil, &os.PathError{Op: "read", Path: path, Err: errNoFile}
	case info.Size() > most:
		return nil, &os.PathError{Op: "read", Path: path, Err: fmt.Errorf("is larger than %d MiB", most>>20)}
	}
	file, err := os.Open(path)
	if err != nil {
		return nil, &unread{path, err}
	}
	return file, nil
}

// unread says in plain words why a file can't be read.
type unread struct {
	path string
	err  error
}

func (u *unread) Error() string {
	var path *os.PathError
	switch {
	case errors.Is(u.err, fs.ErrNotExist):
		return u.path + ": there is no such file"
	case errors.Is(u.err, fs.ErrPermission):
		return u.path + ": you may not read it"
	case errors.As(u.err, &path):
		return u.path + ": " + path.Err.Error()
	}
	return u.path + ": " + u.err.Error()
}

func (u *unread) Unwrap() error { return u.err }

// ReadFile reads a file of ordinary size.
func ReadFile(path string) ([]byte, error) {
	file, err := openWithin(path, mostBytes)
	if err != nil {
		return nil, err
	}
	defer file.Close()
	return io.ReadAll(io.LimitReader(file, mostBytes+1)) // should it grow, whoever reads it says that it is too large
}

// MostTable is far more than the cores of all expeditions so far, which are 30 MB.
const MostTable = 256 << 20
