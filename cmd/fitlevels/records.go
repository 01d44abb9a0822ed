package main

import (
	"errors"
	"os"
)

// twoTables are the cores and holes as read.
type twoTables struct {
	cores  []Core
	holes  []Hole
	faults []string

	coreHead, holeHead []string // column names
}

func openRecords(coresFile, holesFile string) (r twoTables, err error) {
	f, err := os.Open(coresFile)
	if err != nil {
		return r, err
	}
	defer f.Close()
	if r.cores, r.coreHead, r.faults, err = readCores(f); err != nil {
		return r, err
	}
	if len(r.cores) == 0 {
		return r, errors.New(coresFile + ": no row could be read")
	}
	if holesFile == "" {
		return r, nil
	}
	h, err := os.Open(holesFile)
	if err != nil {
		return r, err
	}
	defer h.Close()
	var faults []string
	r.holes, r.holeHead, faults, err = readHoles(h)
	r.faults = append(r.faults, faults...)
	return r, err
}
