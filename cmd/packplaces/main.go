// Packplaces makes the embedded files of coredays/model/places from the tables of known places. Its folder of
// tables is places within that named by COREDAYS_DATA.
//
//	COREDAYS_DATA=… go generate ./model/places
package main

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
)

func main() {
	to := flag.String("to", ".", "write the packed files into `DIR`")
	flag.Parse()
	if err := run(filepath.Join(os.Getenv("COREDAYS_DATA"), "places"), *to); err != nil {
		fmt.Fprintln(os.Stderr, "packplaces:", err)
		os.Exit(1)
	}
}

// run packs each table.
func run(from, to string) error {
	for _, t := range tables {
		data, err := t.pack(from)
		if err != nil {
			return fmt.Errorf("%s: %w", t.file, err)
		}
		packed, err := squeezed(data)
		if err != nil {
			return err
		}
		if err := os.WriteFile(filepath.Join(to, t.file), packed, 0o644); err != nil {
			return err
		}
	}
	return nil
}
