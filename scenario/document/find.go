package document

import (
	"fmt"
	"strconv"
)

// find is the place of an element of a list with a name, or with that place, from 0; below 0
// where there is none. known are the names that there are.
func find(list []any, which string) (place int, known []string) {
	for i, element := range list {
		keys, _ := element.(map[string]any)
		for _, key := range []string{"name", "task"} {
			if keys[key] == nil {
				continue
			}
			if name := fmt.Sprint(keys[key]); name == which {
				return i, nil
			} else {
				known = append(known, name)
			}
		}
	}
	if i, err := strconv.Atoi(which); err == nil && i >= 0 && i < len(list) {
		return i, nil
	}
	return -1, known
}
