package words

// Bind are the words for why a step does not pass another, in brackets behind the
// end of the range in which it may be done.
type Bind struct {
	Hanging, Tools, Later                                                                                          string
	AfterHold, BeforeHold, Witness, Behind, Part, Back, Lost, Reading, Lock, Permit, Opening, Judged, Empty, Joint Sentence
}

var englishBind = Bind{
	Hanging: "a load hangs", Tools: "tools are counted", Later: "it waits until the machine has run",
	AfterHold: "after hold %s", BeforeHold: "before hold %s", Witness: "witness %s is called there", Behind: "%s is in front of %s", Part: "same part: %s", Joint: "same joint: %s",
	Back: "%s goes on after it", Lost: "it ends %s", Reading: "%s is read there", Lock: "%s is locked or unlocked there", Permit: "the permit %s ends there",
	Opening: "%s is open", Judged: "it is decided about %s", Empty: "%s must be empty",
}
