package output

import (
	"bufio"
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"syscall"
)

// WriteFile has a file written whole or not at all: what write writes goes to a file beside it,
// which takes its place when all went well. An older file stays as it was otherwise. What is no
// ordinary file, a pipe or a device, is written to directly. Where the context ends first it is not written.
func WriteFile(ctx context.Context, path string, write func(io.Writer) error) error {
	if ctx.Err() != nil {
		return ctx.Err()
	}
	target, mode, err := resolve(path)
	if err != nil {
		return err
	}
	if !mode.IsRegular() {
		return writeThrough(ctx, target, write)
	}
	beside, err := createBeside(target)
	if err != nil {
		return err
	}
	defer os.Remove(beside.Name()) // after the renaming there is nothing left to remove
	if err := fill(ctx, beside, write); err != nil {
		return fmt.Errorf("%s was not written: %w", path, err)
	}
	if mode != 0 {
		if err := os.Chmod(beside.Name(), mode.Perm()); err != nil {
			return err
		}
	}
	return os.Rename(beside.Name(), target)
}

// CanWrite says why a file can't be written, before hours are spent on what goes into it.
func CanWrite(path string) error {
	target, mode, err := resolve(path)
	switch {
	case err != nil:
		return err
	case mode.IsDir():
		return &fs.PathError{Op: "write", Path: path, Err: syscall.EISDIR}
	case !mode.IsRegular():
		return nil
	}
	beside, err := createBeside(target)
	if err != nil {
		return err
	}
	return errors.Join(beside.Close(), os.Remove(beside.Name()))
}

// resolve follows symbolic links, so that the link stays and the file it names is replaced. The
// mode of a file that is not there yet is zero, that of an ordinary one.
func resolve(path string) (target string, mode fs.FileMode, err error) {
	target, err = filepath.EvalSymlinks(path)
	if errors.Is(err, fs.ErrNotExist) {
		return path, 0, nil
	}
	if err != nil {
		return "", 0, err
	}
	info, err := os.Stat(target)
	if err != nil {
		return "", 0, err
	}
	return target, info.Mode(), nil
}

// attempts is how many left-over files of killed runs are stepped over.
const attempts = 1000

// createBeside makes a new file in the same folder, since a rename does not cross disks. It does
// so by hand because os.CreateTemp gives modes that other people cannot read.
func createBeside(target string) (*os.File, error) {
	var file *os.File
	err := fs.ErrExist
	for i := 0; i < attempts && errors.Is(err, fs.ErrExist); i++ {
		file, err = os.OpenFile(fmt.Sprintf("%s.part%d", target, i), os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
	}
	if wrong, ok := errors.AsType[*fs.PathError](err); ok {
		wrong.Path = target // that is what people asked for
	}
	return file, err
}

// fill writes, brings the content to the disk and closes.
func fill(ctx context.Context, file *os.File, write func(io.Writer) error) error {
	buffered := bufio.NewWriter(file)
	err := write(until{ctx, buffered})
	if err == nil {
		err = buffered.Flush()
	}
	if err == nil {
		err = file.Sync()
	}
	return errors.Join(err, file.Close())
}

// until is a writer that writes no more when its context has ended, so that whoever writes much to it ends soon.
type until struct {
	ctx context.Context
	to  io.Writer
}

func (u until) Write(p []byte) (int, error) {
	if err := u.ctx.Err(); err != nil {
		return 0, err
	}
	return u.to.Write(p)
}

func writeThrough(ctx context.Context, path string, write func(io.Writer) error) error {
	file, err := os.OpenFile(path, os.O_WRONLY, 0)
	if err != nil {
		return err
	}
	return errors.Join(write(until{ctx, file}), file.Close())
}
