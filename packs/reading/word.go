package reading

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
	WordForEach          // for each so much as another reading is
	WordIn               // in: the reading that it is counted in
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
	WordLastRound
	WordAgainRunning
	// NumWords is how many words there are, Literal counted.
	NumWords
)

// spoken is how the answers are typed that a limit does not bring along.
var spoken = map[Word]string{WordNone: "none", WordSome: "some", WordYes: "yes", WordNo: "no"}
