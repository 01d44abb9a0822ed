package words

import "regexp"

// blankKept is a blank at which no line is broken.
const blankKept = "\u00a0"

// What is read as one: a number with its unit, a share of a number, a rank, a day of a month.
var (
	withUnit = regexp.MustCompile(`(\d) (d|h|min|s|m|km|cm|mm|nmi|kn|t|kg|K|°C|%|bar|kPa|MPa|kW|lbf|klbf|lb|in|ft|mbsf|mbrf|m/h|stands/h|kPa/m|days?|sea days|hours?|points?|` +
		`Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec|UTC)($|[^\pL\pN])`)
	ofSome = regexp.MustCompile(`(\d) (of|to) ([−-]?\d)`)
	ranked = regexp.MustCompile(`\b(rank) (\d)`)
)

// Bound is text in which blanks that no line may be broken at are no-break spaces, U+00A0: a number and its unit
// stay together.
func Bound(text string) string {
	text = withUnit.ReplaceAllString(text, "$1"+blankKept+"$2$3")
	text = ofSome.ReplaceAllString(text, "$1"+blankKept+"$2"+blankKept+"$3")
	return ranked.ReplaceAllString(text, "$1"+blankKept+"$2")
}
