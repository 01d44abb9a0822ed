// Package listing sets down all that a plan states, figure by figure and to the last bit, so that two plans
// can be held against each other: on one machine and on another, today and when its file has changed.
package listing

import (
	"crypto/sha256"
	"encoding/binary"
	"encoding/hex"
	"fmt"
	"math"
	"reflect"
	"slices"
	"strconv"
	"time"

	"coredays/model/plan"
	"coredays/model/sea"
)

// Line is one figure of a plan: where it stands, such as Sites[0].Layers[1].Bottom, and its value in SI units.
type Line struct{ Path, Value string }

// Of lists a plan. What does not bear on the results is left out: names of files and numbers of
// lines, and what was remarked when they were read.
func Of(p *plan.Plan) []Line {
	l := &lister{}
	l.fields("", reflect.ValueOf(*p))
	return l.lines
}

// leftOut are fields that bear on no result: the source of a figure names file and line.
var leftOut = []string{"File", "Where", "Path", "Warnings", "Reads", "Source"}

// fields lists those of a struct.
func (l *lister) fields(path string, v reflect.Value) {
	for i := range v.NumField() {
		if name := v.Type().Field(i).Name; !slices.Contains(leftOut, name) {
			l.walk(path+name, v.Field(i))
		}
	}
}

// Digest is a number of 256 bits for a list: plans with the same have the same list.
func Digest(lines []Line) (sum [sha256.Size]byte) {
	h := sha256.New()
	for _, line := range lines {
		fmt.Fprintf(h, "%d %s\n%d %s\n", len(line.Path), line.Path, len(line.Value), line.Value)
	}
	h.Sum(sum[:0])
	return sum
}

type lister struct{ lines []Line }

func (l *lister) add(path, value string) { l.lines = append(l.lines, Line{path, value}) }

// manyFigures is from where on numbers in a row are listed by their digest, such as the heights of a record.
const manyFigures = 100

var (
	moment   = reflect.TypeFor[time.Time]()
	likeness = reflect.TypeFor[sea.Likeness]()
)

// walk lists a value. What a value is made of by the program alone, such as the table of a record, follows from
// the rest.
func (l *lister) walk(path string, v reflect.Value) {
	switch {
	case v.Type() == moment:
		l.add(path, v.Interface().(time.Time).UTC().Format(time.RFC3339Nano))
		return
	case v.Type() == likeness:
		l.walk(path+".Record", v.FieldByName("Record"))
		l.walk(path+".Blocks", v.FieldByName("Blocks"))
		l.walk(path+".Memory", v.FieldByName("Memory"))
		return
	}
	switch v.Kind() {
	case reflect.Struct:
		l.fields(path+".", v)
	case reflect.Slice, reflect.Array:
		l.row(path, v)
	case reflect.Pointer, reflect.Interface:
		l.behind(path, v)
	default:
		l.add(path, figure(v))
	}
}

// row lists what stands in a row, with how many there are.
func (l *lister) row(path string, v reflect.Value) {
	l.add(path+".count", strconv.Itoa(v.Len()))
	if v.Len() > manyFigures && isNumber(v.Type().Elem().Kind()) {
		h := sha256.New()
		for i := range v.Len() {
			binary.Write(h, binary.LittleEndian, math.Float64bits(number(v.Index(i)))) // a hash takes anything
		}
		l.add(path, hex.EncodeToString(h.Sum(nil)))
		return
	}
	for i := range v.Len() {
		l.walk(fmt.Sprintf("%s[%d]", path, i), v.Index(i))
	}
}

// behind lists what a pointer or an interface holds, with its type: of the same figures a uniform spread is not a
// lognormal one.
func (l *lister) behind(path string, v reflect.Value) {
	if v.IsNil() {
		l.add(path, "none")
		return
	}
	if v.Kind() == reflect.Interface {
		l.add(path+".type", v.Elem().Type().String())
	}
	l.walk(path, v.Elem())
}

func isNumber(k reflect.Kind) bool { return k == reflect.Float32 || k == reflect.Float64 }

func number(v reflect.Value) float64 { return v.Float() }

// figure is a single value; a number to its last bit.
func figure(v reflect.Value) string {
	switch {
	case v.CanInt():
		return strconv.FormatInt(v.Int(), 10)
	case v.CanUint():
		return strconv.FormatUint(v.Uint(), 10)
	case v.CanFloat():
		return strconv.FormatFloat(v.Float(), 'g', -1, 64)
	case v.Kind() == reflect.Bool:
		return strconv.FormatBool(v.Bool())
	case v.Kind() == reflect.String:
		return v.String()
	}
	panic("a plan holds a " + v.Kind().String()) // a fault of the program, which the test of all fields finds
}
