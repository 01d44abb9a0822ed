package scenario

// mirrored fills the mirror of a kind of file; false where there is nothing to go on with.
func mirrored[F any](name string, data []byte) (c *reader, f F, readable bool) {
	v, o := load(name, data)
	c = &reader{outline: o}
	if len(o.faults) > 0 && !o.onlyEmpty() {
		return c, f, false
	}
	c.said = decode(v, o, &f)
	return c, f, true
}
