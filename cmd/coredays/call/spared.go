package call

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"coredays/output"
	"coredays/output/sheet"
)

// namedFile is a file or folder that a call names.
type namedFile struct {
	flag string // or what it is
	path string
	use  use
}

func (n namedFile) String() string { return n.flag + " " + n.path }

// namedBy lists the files and folders that the flags of a call name.
func namedBy(cmd *cobra.Command) (list []namedFile) {
	cmd.Flags().VisitAll(func(f *pflag.Flag) {
		if file, ok := f.Value.(*FileName); ok && f.Changed && !(file.print && *file.name == "-") {
			list = append(list, namedFile{"--" + f.Name, *file.name, file.use})
		}
	})
	return list
}

// SparesItsFiles refuses a call that would write over what it reads, or two things into one file.
func SparesItsFiles(cmd *cobra.Command, args []string) error {
	list := namedBy(cmd)
	for _, arg := range args {
		list = append(list, namedFile{"the file", arg, reads})
	}
	return spared(list)
}

// CanWriteItsFiles says which of the files that a call names can't be written, before hours are spent on what goes into
// them.
func CanWriteItsFiles(cmd *cobra.Command) error {
	for _, n := range namedBy(cmd) {
		if err := n.canBeWritten(); err != nil {
			return fmt.Errorf("%s: %w", n, err)
		}
	}
	return nil
}

// SparesInputs refuses a call whose outputs are files that its scenario reads.
func SparesInputs(cmd *cobra.Command, inputs []string) error {
	list := namedBy(cmd)
	for _, path := range inputs {
		list = append(list, namedFile{"the scenario's file", path, reads})
	}
	return spared(list)
}

// spared gives the first pair that can't be both.
func spared(list []namedFile) error {
	for i, a := range list {
		for _, b := range list[:i] {
			switch {
			case a.use == reads && b.use == reads:
			case a.path == b.path && a.use != fillsAFold && b.use != fillsAFold, sameFile(a.path, b.path) && a.use != b.use, sameFile(a.path, b.path) && a.use == writes:
				return fmt.Errorf("%s and %s are the same file: give each a name of its own", b, a)
			case a.use == fillsAFold && b.use == reads && holdsOne(a.path, b.path):
				return inside(a, b)
			case b.use == fillsAFold && a.use == reads && holdsOne(b.path, a.path):
				return inside(b, a)
			}
		}
	}
	return nil
}

func inside(folder, file namedFile) error {
	return fmt.Errorf("%s lies in the folder of %s, where a table or chart of its name would replace it: take another folder", file, folder)
}

// holdsOne reports whether a folder holds a file with the name of a table that is written there.
func holdsOne(folder, file string) bool {
	table, isTable := strings.CutSuffix(strings.ToLower(filepath.Base(file)), ".csv")
	return isTable && slices.Contains(sheet.Tables, table) && sameFile(folder, filepath.Dir(file))
}

// sameFile reports whether two names are of one ordinary file or folder, by whatever way; a device takes
// from several.
func sameFile(a, b string) bool {
	one, errOne := os.Stat(a)
	other, errOther := os.Stat(b)
	if errOne == nil && errOther == nil {
		return os.SameFile(one, other) && (one.Mode().IsRegular() || one.IsDir())
	}
	return errOne != nil && errOther != nil && whole(a) == whole(b)
}

// whole is the path of a file that is not there yet, through whatever links lead to its folder.
func whole(path string) string {
	if absolute, err := filepath.Abs(path); err == nil {
		path = absolute
	}
	if folder, err := filepath.EvalSymlinks(filepath.Dir(path)); err == nil {
		path = filepath.Join(folder, filepath.Base(path))
	}
	return path
}

// canBeWritten says why a file or a folder can't be written. It leaves nothing behind.
func (n namedFile) canBeWritten() error {
	switch n.use {
	case writes:
		return output.CanWrite(n.path)
	case fillsAFold:
		return canFill(n.path)
	}
	return nil
}

// canFill says why files can't be written into a folder, which may be still to be made.
func canFill(folder string) error {
	for {
		info, err := os.Stat(folder)
		_, noLink := os.Lstat(folder) // one that leads nowhere is in the way
		switch {
		case errors.Is(err, os.ErrNotExist) && errors.Is(noLink, os.ErrNotExist):
			folder = filepath.Dir(folder)
			continue
		case err != nil:
			return err
		case !info.IsDir():
			return fmt.Errorf("%s is no folder", folder)
		}
		return output.CanWrite(filepath.Join(folder, "coredays"))
	}
}
