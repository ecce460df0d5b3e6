package reading

import (
	"strings"

	"matchmark/packs/units"
)

// The words of paper stand in the catalogue of the sheets; here they are spelled once
// more, so that a printed line can be compared with the table it was written to.

// english words each Word.
var english = [NumWords]string{
	WordAtLeast: "at least", WordAtMost: "at most", WordAbout: "about", WordExactly: "exactly",
	WordAsFound: "as found", WordWorkedOut: "worked out", WordMean: "mean", WordSpread: "spread", WordSum: "sum",
	WordMeanOf: "mean of", WordLargestOf: "largest of", WordSmallestOf: "smallest of", WordSpreadOf: "spread of", WordSumOf: "sum of",
	WordOf: "of", WordHalfOf: "half of", WordInEach: "for each", WordForEach: "for each", WordIn: "in", WordAnd: "and", WordTo: "to", WordFrom: "from",
	WordFound: "found", WordRecord: "record", WordNoneAllowed: "none allowed", WordNone: "none", WordSome: "some",
	WordYes: "yes", WordNo: "no", WordRise: "above the part beside it", WordWarmer: "warmer,", WordNever: "never",
	WordAsInSource: "as printed in the source", WordNoTolerance: "no tolerance in the source: judge and sign",
	WordIs: "is", WordIsOver: "is over", WordIsUnder: "is under", WordIsIn: "is in limits", WordIsOut: "is out of limits",
	WordRounded: "rounded",
	WordByHand:  "by hand", WordSlackenAll: "slacken all", WordBackOff: "back off", WordTurn: "turn", WordAgainAfter: "again after",
	WordLastRound: "last round, until no nut moves", WordAgainRunning: "again after running",
}

// English gives the word in English, "" for Literal.
func (w Word) English() string { return english[w] }

// English writes a printed line in English, with points; a blank shows as blank.
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
	return units.Pointed(strings.Join(out, " "))
}
