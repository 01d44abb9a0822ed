package sea

import "coredays/model/chance"

// twin is a sea made over the hours of a record, with the record's gaps.
func twin(r *Record, c Course, t *Table, luck chance.Source) []float32 {
	var s Series
	s.Begin(c, luck, r.Start)
	made := make([]float32, len(r.Heights))
	for i, h := range r.Heights {
		made[i] = float32(s.Height(i, t))
		if h != h {
			made[i] = h
		}
	}
	return made
}
