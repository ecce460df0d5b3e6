package job

import (
	"matchmark/packs/heat"
	"matchmark/packs/lift"
	"matchmark/packs/source"
	"matchmark/packs/stock"
	"matchmark/packs/units"
)

// A Job is one definition decided: repeated over its places, numbered, ordered,
// computed. Where a problem stands it has a hole (a nil, an empty text) and can
// still be walked.
type Job struct {
	At        source.Pos   // of the definition
	Files     source.Files // all inputs, for showing the lines of problems
	Equipment Equipment
	Order     Order
	Site      Site
	Choices   []*Choice         // what this machine has of each option
	NotHere   []string          // the marks of what it has not, by letter and number
	Hours     units.Number      // planned for all steps, one after another
	CrewHours units.Number      // the same, times the crew of each
	English   map[string]string // texts of another language in English, where the author wrote them
	Language  string            // of the paper, by ISO 639-1; empty is English
	Digest    string            // 8 hex digits: of the SHA-256 of all inputs and the format number, and of how the pack is printed (PrintAs)
	made      string            // the digest without how it is printed
	alike     []string          // the same of packs that are of this job too

	Places      []Place // that things repeat over, each of its group alone
	Parts       []*Part // those of one key one after another
	Instruments []*Instrument
	Dims        []*Dim
	Containers  []*Container
	Bigs        []*Big
	Spots       []*Spot
	Sets        []*Set
	Joints      []*Joint
	Alignments  []*Alignment
	Stacks      []*Stack
	Holds       []*Hold
	Heats       []*Heat
	Notes       []*Caution // all hazard notes: those of the definition, and those that the program brings along
	Cautions    []*Caution // those that are printed
	Spared      []*Spared  // hazard notes that the author leaves out
	Isolations  []*Isolation
	Permits     []*Permit
	Openings    []*Opening
	Supplies    Supplies
	Deferred    []*Deferred // work that waits until the machine has run
	Lifts       []*Lift
	Sections    []*Section // in the order of work, strip-down and put-back
	Tags        []*Tag     // in the order of their numbers, n of N
}

// InEnglish gives a text of the definition in English, for rules that know words: the
// text itself where it is English, or where the author wrote no English beside it.
func (j *Job) InEnglish(text string) string {
	if english, ok := j.English[text]; ok {
		return english
	}
	return text
}

// HasEnglish reports whether a text of the definition can be read by rules that know English
// words: it is English, or its English stands beside it. What an author wrote in another
// language alone is not judged by its words.
func (j *Job) HasEnglish(text string) bool {
	_, beside := j.English[text]
	return beside || j.Language == "" || j.Language == "en"
}

// Equipment is the machine that the pack is for.
type Equipment struct {
	At                                       source.Pos // of the tag
	Tag, Name, Serial, Maker, Type, Location string
}

// Order is the job that the pack is printed for. Issued is the date printed.
type Order struct {
	At                                              source.Pos // of the number
	Number, Title, Revision, Issued, Scope, Planner string
	Starts                                          string // the first day of work, as 2026-04-13; may be empty
	HoursADay                                       int    // worked on each day, 0 if it is not said
}

// Tagged counts the things that have a tag, spares left out: the N of n of N.
func (j *Job) Tagged() int {
	n := 0
	for _, t := range j.Tags {
		if !t.Spare {
			n++
		}
	}
	return n
}

// SpareTags counts the tags that are spare.
func (j *Job) SpareTags() int { return len(j.Tags) - j.Tagged() }

// Steps lists all steps in their order.
func (j *Job) Steps() []*Step {
	var out []*Step
	for _, s := range j.Sections {
		out = append(out, s.Steps...)
	}
	return out
}

// A Choice is what this machine has of one option: whether it is fitted, or which
// build it is.
type Choice struct {
	At     source.Pos
	Key    string
	What   string
	Fitted bool   // for an option that is fitted or not
	Build  string // the build, empty for an option that is fitted or not
	Means  string // the machines that have the build, as written
	Serial string // the serial number that told it; empty where it was said
}

// A FontFile is a font of a site: its path, the place where it is named, and its bytes,
// nil where there is none.
type FontFile struct {
	File string
	At   source.Pos
	Data []byte
}

// A Site is what is the same for all jobs of a site.
type Site struct {
	Company   string
	Paper     string // "a4" or "letter", empty if not said
	Heavy     units.Quantity
	FireWatch units.Quantity
	Critical  lift.Ratio // share of a crane's rating from which a lift is critical
	Gloves    bool
	Comma     bool // the site says decimal: comma, for paper and for readings that are typed
	Point     bool // the site says decimal: point, whatever the language of the paper
	Roles     []string
	Workable  heat.Workable // zero where the usual time counts
	Logo      []byte        // a PNG or JPEG picture or an SVG drawing, nil if there is none
	LogoFile  string        // its path
	LogoAt    source.Pos
	Plain     FontFile      // a font of the site's own for plain text
	Strong    FontFile      // and one for what is bold
	Stocks    []stock.Stock // what tags are printed on, beside the usual ones
}
