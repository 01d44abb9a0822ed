package entry

import "coredays/scenario/document"

// Mirrored fills the mirror of a kind of file; false where there is nothing to go on with.
func Mirrored[F any](name string, data []byte) (c *Reader, f F, readable bool) {
	v, o := document.Load(name, data)
	c = &Reader{Outline: o}
	if len(o.Faults) > 0 && !o.OnlyEmpty() {
		return c, f, false
	}
	c.Said = document.Decode(v, o, &f)
	return c, f, true
}
