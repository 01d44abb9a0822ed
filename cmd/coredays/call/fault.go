package call

import "errors"

// ErrInterrupted says that Ctrl-C ended a command that has reported what it had.
var ErrInterrupted = errors.New("interrupted")

// Fault is an error of the plan or the data rather than of the call.
type Fault struct{ error }

func (f Fault) Unwrap() error { return f.error }

// AsFault marks an error, if there is one.
func AsFault(err error) error {
	if err == nil {
		return nil
	}
	return Fault{err}
}
