package share

import (
	"bufio"
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	"encoding/binary"
	"encoding/gob"
	"errors"
	"fmt"
	"io"
	"os"
)

// Opened is a share that was found to be whole, to be taken value by value.
type Opened struct {
	Head Head
	Path string
	file io.Closer
	gob  *gob.Decoder
}

// Open opens the file of a share.
func Open(path string) (*Opened, error) {
	info, err := os.Stat(path)
	if err != nil {
		return nil, fmt.Errorf("the part can't be read: %w", err)
	}
	if !info.Mode().IsRegular() {
		return nil, fmt.Errorf("%s: no ordinary file, so no part", path)
	}
	file, err := os.Open(path)
	if err != nil {
		return nil, fmt.Errorf("the part can't be read: %w", err)
	}
	o, err := unpack(file, info.Size())
	if err != nil {
		return nil, errors.Join(fmt.Errorf("%s: %w", path, err), file.Close())
	}
	o.Path, o.file = path, file
	return o, nil
}

// unpack holds the bytes of a share against what stands behind them, and reads its head.
func unpack(r io.ReaderAt, size int64) (*Opened, error) {
	begins := make([]byte, len(magic))
	if n, _ := r.ReadAt(begins, 0); n < len(magic) || string(begins) != magic || size < int64(len(magic)+tail) {
		return nil, errors.New(`not a part that "coredays … --shard" of this version wrote`)
	}
	length := size - tail
	behind, sum := make([]byte, tail), sha256.New()
	if _, err := r.ReadAt(behind, length); err != nil && err != io.EOF {
		return nil, err
	}
	if _, err := io.Copy(sum, io.NewSectionReader(r, 0, length+8)); err != nil {
		return nil, err
	}
	if binary.BigEndian.Uint64(behind) != uint64(length) || !bytes.Equal(sum.Sum(nil), behind[8:]) {
		return nil, errors.New("the part is damaged: copy it again, or sail this share again")
	}
	zipped, err := gzip.NewReader(bufio.NewReader(io.NewSectionReader(r, int64(len(magic)), length-int64(len(magic)))))
	if err != nil {
		return nil, err
	}
	o := &Opened{gob: gob.NewDecoder(zipped)}
	return o, o.gob.Decode(&o.Head)
}

// Take reads the next value into what a pointer points to, which must be its zero value.
func (o *Opened) Take(value any) error {
	if err := o.gob.Decode(value); err != nil {
		return fmt.Errorf("%s holds less than it should: %w", o.Path, err)
	}
	return nil
}

// Close ends the reading.
func (o *Opened) Close() error { return o.file.Close() }
