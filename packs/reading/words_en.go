package reading

import "strings"

// A Word is a fixed word of a printed limit, to be looked up in the catalogue of
// the language of the paper. The zero Word is a literal text.
type Word uint8

// The fixed words, with what each says.
const (
	Literal         Word = iota
	WordAtLeast          // this and more
	WordAtMost           // this and less
	WordAbout            // near this, no tolerance known
	WordExactly          // so many pieces
	WordAsFound          // the value found
	WordWorkedOut        // the target comes from a ladder of boxes
	WordMean             // mean of the readings
	WordSpread           // largest less smallest
	WordSum              // all readings added
	WordMeanOf           // mean of other readings
	WordLargestOf        // the largest of other readings
	WordSmallestOf       // the smallest of other readings
	WordSpreadOf         // largest less smallest of other readings
	WordSumOf            // other readings added
	WordOf               // a share of
	WordHalfOf           // half of
	WordInEach           // for each unit of length
	WordToldIn           // the reading converted to this unit
	WordAnd              // joins
	WordTo               // between two limits
	WordFrom             // before two limits
	WordFound            // what was found, as a label
	WordRecord           // no limit
	WordNoneAllowed      // not one
	WordNone             // answer: not one
	WordSome             // answer: one or more
	WordYes              // answer
	WordNo               // answer
	WordRise             // behind a difference of temperatures
	WordWarmer           // the same, short
	WordNever            // before numbers that a wrong conversion gives
	WordAsInSource       // behind numbers in the source's other unit
	WordNoTolerance      // the source gives none
	WordIs               // of a state
	WordIsOver           // of a reading, before a size
	WordIsUnder          // of a reading, before a size
	WordIsIn             // of a reading and its own limits
	WordIsOut            // of a reading and its own limits
	WordRounded          // behind a box: its last decimal is rounded
	WordByHand           // stages of tightening
	WordSlackenAll
	WordBackOff    // before an angle
	WordTurn       // before an angle
	WordAgainAfter // before hours
)

// english words each Word.
var english = [...]string{
	WordAtLeast: "at least", WordAtMost: "at most", WordAbout: "about", WordExactly: "exactly",
	WordAsFound: "as found", WordWorkedOut: "worked out", WordMean: "mean", WordSpread: "spread", WordSum: "sum",
	WordMeanOf: "mean of", WordLargestOf: "largest of", WordSmallestOf: "smallest of", WordSpreadOf: "spread of", WordSumOf: "sum of",
	WordOf: "of", WordHalfOf: "half of", WordInEach: "in each", WordToldIn: "in", WordAnd: "and", WordTo: "to", WordFrom: "from",
	WordFound: "found", WordRecord: "record", WordNoneAllowed: "none allowed", WordNone: "none", WordSome: "some",
	WordYes: "yes", WordNo: "no", WordRise: "above the part beside it", WordWarmer: "warmer,", WordNever: "never",
	WordAsInSource: "as printed in the source", WordNoTolerance: "no tolerance in the source: judge and sign",
	WordIs: "is", WordIsOver: "is over", WordIsUnder: "is under", WordIsIn: "is in limits", WordIsOut: "is out of limits",
	WordRounded: "rounded",
	WordByHand:  "by hand", WordSlackenAll: "slacken all", WordBackOff: "back off", WordTurn: "turn", WordAgainAfter: "again after",
}

// English gives the word in English, "" for Literal.
func (w Word) English() string { return english[w] }

// English writes a printed line in English; a blank shows as blank.
func English(line []Part, blank string) string {
	var out []string
	for _, p := range line {
		switch {
		case p.Blank != NoBlank:
			out = append(out, blank)
		case p.Word != Literal:
			out = append(out, p.Word.English())
		default:
			out = append(out, p.Text)
		}
	}
	return strings.Join(out, " ")
}
