package records

import (
	"errors"
	"fmt"

	"coredays/model/plan"
	"coredays/model/record"
	"coredays/model/voyage"
	"coredays/scenario/document"
)

// HolesIn reads the file of a table of holes; see ReadHoles.
func HolesIn(file string) ([]record.Site, []record.LeftOut, error) {
	r, err := document.OpenFile(file)
	if err != nil {
		return nil, nil, fmt.Errorf("the table of holes can't be read: %w", err)
	}
	defer r.Close()
	return ReadHoles(file, r)
}

// Voyages are the compiled plans of sites on record, one a site.
func (u *Unrecorded) Voyages(sites []record.Site, known Knowledge) ([]*voyage.Voyage, error) {
	plans := make([]*plan.Plan, len(sites))
	for i := range sites {
		p, err := u.Plan(sites[i], known)
		if err != nil {
			return nil, ofSite(&sites[i], err)
		}
		plans[i] = p
	}
	voyages, errs := voyage.CompileAll(plans)
	for i, err := range errs {
		if err != nil {
			errs[i] = ofSite(&sites[i], err)
		}
	}
	return voyages, errors.Join(errs...)
}

// ofSite says at which site on record something failed.
func ofSite(s *record.Site, err error) error {
	return fmt.Errorf("%s site %s: %w", s.LegName(), s.Name, err)
}
