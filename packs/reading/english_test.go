package reading

import (
	"fmt"
	"strings"

	"matchmark/packs/units"
)

// The words of paper stand in the catalogue of the sheets; here they are spelled once
// more, so that a printed line can be compared with the table it was written to.

// english words each Word.
var english = [NumWords]string{
	WordAtLeast: "at least %s", WordAtMost: "at most %s", WordAbout: "about %s", WordExactly: "exactly %s",
	WordAsFound: "as found", WordWorkedOut: "worked out", WordMean: "mean %s", WordSpread: "spread %s", WordSum: "sum %s",
	WordMeanOf: "mean of %s", WordLargestOf: "largest of %s", WordSmallestOf: "smallest of %s", WordSpreadOf: "spread of %s", WordSumOf: "sum of %s",
	WordOf: "%s of %s", WordHalfOf: "half of %s", WordInEach: "%s for each %s of %s", WordForEach: "%s for each %s in %s", WordAnd: "%s and %s", WordTo: "%s to %s", WordFrom: "from", WordTill: "to", WordTotal: "sum",
	WordFound: "found", WordRecord: "record", WordNoneAllowed: "none allowed", WordNone: "none", WordSome: "some",
	WordYes: "yes", WordNo: "no", WordRise: "%s above the part beside it", WordWarmer: "%s warmer, never %s",
	WordAsInSource: "%s as printed in the source", WordNoTolerance: "no tolerance in the source: judge and sign",
	WordIs: "%s is %s", WordIsOver: "%s is over %s", WordIsUnder: "%s is under %s", WordIsIn: "%s is in limits", WordIsOut: "%s is out of limits",
	WordRounded: "rounded",
	WordByHand:  "by hand", WordSlackenAll: "slacken all", WordBackOff: "back off %s", WordTurn: "turn %s", WordAgainAfter: "again after %s",
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
			args := make([]any, len(p.Args))
			for i, a := range p.Args {
				args[i] = English(a, blank)
			}
			out = append(out, fmt.Sprintf(p.Word.English(), args...))
		default:
			out = append(out, p.Text)
		}
	}
	return units.Pointed(strings.Join(out, " "))
}
