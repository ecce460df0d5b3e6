package words

// AllSteps are the words of the sheet on which every step is told, and of the sections
// on the front sheet.
type AllSteps struct {
	Title, Rule, Sections, Holds, Lifts, Heats           string
	Missed, Read, Set, Hours, Total, SectionLine, BackAt Sentence
	NoHours                                              Counted // steps that the total leaves out
}
