package scores

import (
	"fmt"

	"coredays/model/score"
	"coredays/output/text"
	"coredays/output/words"
)

// hindcastTold prints how sites were forecast that were told of those of their leg before them.
func (p *printer) hindcastTold(h *score.Hindcast) error {
	if a := h.Ground; a != nil {
		p.Heading("Told the ground: days of %s of which lithology is described; not told how long legs are on their sites; what lithologies tell is fitted to all legs on record", text.Counted(len(a.Sites), "site"))
		p.told(a)
	}
	if a := h.AsItGoes; a != nil {
		p.Heading("As it goes: %s from the third of their leg on, told the days of those before", text.Counted(len(a.Sites), "site"))
		p.told(a)
	}
	return nil
}

// told prints a score beside that of the same sites untold.
func (p *printer) told(a *score.AsItGoes) {
	p.Item(fmt.Sprintf("CRPS %s d, untold %s d: %s (%s to %s)", words.Fixed(a.CRPS, 2), words.Fixed(a.Untold, 2), changed(a.Change, 1), changed(a.ChangeCI[0], 0), changed(a.ChangeCI[1], 0)))
	p.Item("inside the 80 % band " + shareIn(a.Inside80, a.Inside80CI) + " %")
}

// changed is by how much a score is lower or higher, as a share of that untold.
func changed(by float64, places int) string {
	if by > 0 {
		return words.Fixed(100*by, places) + " % higher"
	}
	return words.Fixed(-100*by, places) + " % lower"
}
