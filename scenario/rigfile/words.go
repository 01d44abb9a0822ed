package rigfile

import (
	_ "embed"
	"fmt"
	"regexp"
	"slices"
	"strings"

	"go.yaml.in/yaml/v3"

	"coredays/model/activity"
)

//go:embed words.yaml
var starter []byte

// Starter is a word list with comments, to begin one's own with.
func Starter() []byte { return slices.Clone(starter) }

// Words say what the words of a log mean.
type Words struct {
	phrases []phrase // the longest first
}

type phrase struct {
	words string
	means activity.Kind
}

// Own are the words that the program knows.
func Own() *Words {
	w, err := ReadWords("words.yaml", starter)
	if err != nil {
		panic(err) // a test reads it
	}
	return w
}

// ReadWords reads a word list. The names of the activities themselves always have their meaning.
func ReadWords(name string, data []byte) (*Words, error) {
	var file struct {
		Words map[string][]string `yaml:"words"`
	}
	if err := yaml.Unmarshal(data, &file); err != nil {
		return nil, fmt.Errorf("%s: a word list is wanted, as --words-starter prints it: %w", name, err)
	}
	w := &Words{}
	known := map[string]activity.Kind{}
	for k := range activity.Kinds {
		known[k.String()] = k
		w.phrases = append(w.phrases, phrase{folded(k.String()), k})
	}
	var wrong []string
	for means, phrases := range file.Words {
		k, is := known[means]
		if !is {
			wrong = append(wrong, fmt.Sprintf("%s: words: %q is no activity; --words-starter lists them", name, means))
			continue
		}
		for _, p := range phrases {
			if p = folded(p); p != "" {
				w.phrases = append(w.phrases, phrase{p, k})
			}
		}
	}
	if len(wrong) > 0 {
		slices.Sort(wrong)
		return nil, fmt.Errorf("%s", strings.Join(wrong, "\n"))
	}
	slices.SortFunc(w.phrases, func(a, b phrase) int {
		if len(a.words) != len(b.words) {
			return len(b.words) - len(a.words)
		}
		if c := strings.Compare(a.words, b.words); c != 0 {
			return c
		}
		return int(a.means - b.means)
	})
	return w, nil
}

// folded is a text in small letters, its spaces single.
func folded(text string) string { return strings.Join(strings.Fields(strings.ToLower(text)), " ") }

// between divides the parts of a line that lumps work together.
var between = regexp.MustCompile(`[,;+]| and | then `)

// meaning is what a line of a log says, part by part; false where a part has no meaning.
func (w *Words) meaning(what string) (doing []activity.Kind, all bool) {
	whole := folded(what)
	for _, p := range w.phrases { // such as "moving, pipe hanging", and "slip and cut"
		if p.words == whole {
			return []activity.Kind{p.means}, true
		}
	}
	all = whole != ""
	for _, part := range between.Split(strings.ReplaceAll(whole, "slip and cut", "slip & cut"), -1) {
		part = strings.TrimSpace(part)
		if part == "" {
			continue
		}
		k, found := w.part(part)
		if !found {
			all = false
			continue
		}
		if len(doing) == 0 || doing[len(doing)-1] != k {
			doing = append(doing, k)
		}
	}
	return doing, all && len(doing) > 0
}

// part is the meaning of one part: that of the longest words in it.
func (w *Words) part(part string) (activity.Kind, bool) {
	for _, p := range w.phrases {
		if i := strings.Index(part, p.words); i >= 0 && whole(part, i, len(p.words)) {
			return p.means, true
		}
	}
	return 0, false
}

// whole tells whether letters stand on neither side of a found text, so that "tih" is not found in "attih".
func whole(text string, at, length int) bool {
	letter := func(i int) bool { return i >= 0 && i < len(text) && text[i] >= 'a' && text[i] <= 'z' }
	return !(letter(at-1) && letter(at)) && !(letter(at+length) && letter(at+length-1))
}
