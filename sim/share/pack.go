package share

import (
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	"encoding/binary"
	"encoding/gob"
	"errors"
	"io"
)

// The file of a share is a line that says what it is; the head and then the results, one value after the other
// (gob, compressed by gzip); the length of all before in eight bytes; and the SHA-256 of all before that. It is
// read to its end and held against both before anything in it is believed.
const magic = "coredays part 3\n"

// tail is the length of what stands behind.
const tail = 8 + sha256.Size

// Packed is a share on its way into a file. What is put into it is compressed at once, so that a share of
// much work takes little room until all is done; only then is it written, so that there is never half a file.
type Packed struct {
	bytes bytes.Buffer
	zip   *gzip.Writer
	gob   *gob.Encoder
}

// Pack begins a share.
func Pack(head *Head) (*Packed, error) {
	p := &Packed{}
	p.bytes.WriteString(magic)
	p.zip, _ = gzip.NewWriterLevel(&p.bytes, gzip.BestSpeed) // a level that there is
	p.gob = gob.NewEncoder(p.zip)
	return p, p.gob.Encode(head)
}

// Put adds a value: a result.
func (p *Packed) Put(value any) error { return p.gob.Encode(value) }

// Write ends the share and writes it.
func (p *Packed) Write(w io.Writer) error {
	if err := p.zip.Close(); err != nil {
		return err
	}
	sum := sha256.New()
	length := binary.BigEndian.AppendUint64(nil, uint64(p.bytes.Len()))
	_, err := p.bytes.WriteTo(io.MultiWriter(w, sum))
	sum.Write(length) // a hash takes anything
	_, errTail := w.Write(sum.Sum(length))
	return errors.Join(err, errTail)
}
