package desk

import (
	"context"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"net/http"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"

	"coredays/output"
	"coredays/scenario"
	"coredays/scenario/document"
)

// demonstration is the name of the plan that is in no file.
const demonstration = "demonstration.yaml"

// shelf is the file that the plan on the desk belongs to.
type shelf struct {
	mu     sync.RWMutex
	file   string // empty for the demonstration
	saving sync.Mutex
}

// name of the scenario in faults and answers.
func (s *shelf) name() string {
	s.mu.RLock()
	defer s.mu.RUnlock()
	if s.file == "" {
		return demonstration
	}
	return s.file
}

func (s *shelf) invented() bool {
	s.mu.RLock()
	defer s.mu.RUnlock()
	return s.file == ""
}

// text is what the file holds now.
func (s *shelf) text() ([]byte, error) {
	if s.invented() {
		return scenario.DemonstrationText(), nil
	}
	file, err := document.OpenFile(s.name())
	if err != nil {
		return nil, err
	}
	defer file.Close()
	data, err := io.ReadAll(io.LimitReader(file, mostBody+1))
	if len(data) > mostBody {
		return nil, fmt.Errorf("%s is no scenario: it is too large", s.name())
	}
	return data, err
}

func digestOf(data []byte) string {
	sum := sha256.Sum256(data)
	return hex.EncodeToString(sum[:])
}

// opened is a plan as it lies in its file.
type opened struct {
	Text   string `json:"text"`
	Digest string `json:"digest"`
	File   string `json:"file"` // empty for the demonstration
	// Offers are only told where a page opens.
	Offers *offered `json:"offers,omitempty"`
}

func (s *shelf) open(w http.ResponseWriter, _ *http.Request) {
	data, err := s.text()
	if err != nil {
		http.Error(w, err.Error(), http.StatusConflict)
		return
	}
	all := offers()
	o := opened{string(data), digestOf(data), "", &all}
	if !s.invented() {
		o.File = s.name()
	}
	say(w, http.StatusOK, o)
}

// save writes the plan whole or not at all, and never over what somebody else wrote meanwhile.
func (s *shelf) save(w http.ResponseWriter, r *http.Request) {
	q, ok := asked(w, r)
	if !ok {
		return
	}
	s.saving.Lock()
	defer s.saving.Unlock()
	target, err := s.target(q.Name)
	if err != nil {
		http.Error(w, err.Error(), http.StatusUnprocessableEntity)
		return
	}
	if q.Name == "" {
		if now, err := s.text(); err != nil || digestOf(now) != q.Digest {
			say(w, http.StatusConflict, opened{Text: string(now), Digest: digestOf(now), File: target})
			return
		}
	}
	// Not the context of the request: a page that is closed meanwhile still wants its plan saved.
	err = output.WriteFile(context.WithoutCancel(r.Context()), target, func(to io.Writer) error {
		_, err := io.WriteString(to, q.Text)
		return err
	})
	if err != nil {
		http.Error(w, err.Error(), http.StatusInsufficientStorage)
		return
	}
	s.mu.Lock()
	s.file = target
	s.mu.Unlock()
	say(w, http.StatusOK, opened{Digest: digestOf([]byte(q.Text)), File: target})
}

// target is the file to save to: the plan's own, or a new one beside it.
func (s *shelf) target(name string) (string, error) {
	if name == "" {
		if s.invented() {
			return "", errors.New("the demonstration is in no file: save it under a name")
		}
		return s.name(), nil
	}
	if name != filepath.Base(name) || strings.ContainsAny(name, `/\:`+"\x00") || strings.HasPrefix(name, ".") || len(name) > 200 || !slices.Contains([]string{".yaml", ".yml"}, filepath.Ext(name)) {
		return "", fmt.Errorf("%q: a name alone that ends in .yaml is wanted; the file is put beside the scenario", name)
	}
	target := filepath.Join(filepath.Dir(s.name()), name)
	if _, err := os.Lstat(target); !errors.Is(err, fs.ErrNotExist) {
		return "", fmt.Errorf("%s is there already: another name is wanted", target)
	}
	return target, nil
}
