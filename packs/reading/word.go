package reading

// A Word is a fixed word of a printed limit, or a sentence with holes for what it is said
// of, to be looked up in the catalogue of the language of the paper: no limit is put
// together of words in their English order. The zero Word is a literal text.
type Word uint8

// The fixed words, with what each says.
const (
	Literal         Word = iota
	WordAtLeast          // %s and more
	WordAtMost           // %s and less
	WordAbout            // near %s, no tolerance known
	WordExactly          // %s pieces
	WordAsFound          // the value found
	WordWorkedOut        // the target comes from a ladder of boxes
	WordMean             // of the mean of the readings: %s
	WordSpread           // of largest less smallest: %s
	WordSum              // of all readings added: %s
	WordTotal            // the same, before boxes
	WordMeanOf           // mean of other readings
	WordLargestOf        // the largest of other readings
	WordSmallestOf       // the smallest of other readings
	WordSpreadOf         // largest less smallest of other readings
	WordSumOf            // other readings added
	WordOf               // a share of a value
	WordHalfOf           // half of
	WordInEach           // a size for each unit of a value
	WordForEach          // a size for each so much as another reading is, in a value
	WordAnd              // joins two
	WordTo               // from one limit to the other
	WordFrom             // before two boxes
	WordTill             // between them
	WordFound            // what was found, as a label
	WordRecord           // no limit
	WordNoneAllowed      // not one
	WordNone             // answer: not one
	WordSome             // answer: one or more
	WordYes              // answer
	WordNo               // answer
	WordRise             // a difference of temperatures
	WordWarmer           // the same, short, and numbers that a wrong conversion gives
	WordAsInSource       // numbers in the source's other unit
	WordNoTolerance      // the source gives none
	WordIs               // a reading and its state
	WordIsOver           // a reading and a size
	WordIsUnder          // a reading and a size
	WordIsIn             // of a reading and its own limits
	WordIsOut            // of a reading and its own limits
	WordRounded          // behind a box: its last decimal is rounded
	WordByHand           // stages of tightening
	WordSlackenAll
	WordBackOff    // by an angle
	WordTurn       // by an angle
	WordAgainAfter // so many hours
	WordLastRound
	WordAgainRunning
	// NumWords is how many words there are, Literal counted.
	NumWords
)

// spoken is how the answers are typed that a limit does not bring along.
var spoken = map[Word]string{WordNone: "none", WordSome: "some", WordYes: "yes", WordNo: "no"}
