package words

// Outage are the words of the index of an outage.
type Outage struct {
	Title, Rule, Job, Machine, Date, Pages, Tags, Hours, CrewHours, Total, SeeTable string
	PageOf, NotPrinted                                                              Sentence
	Lists                                                                           [3]OutageList // holds, lifts, heats
}

// An OutageList are the words of one list of the index.
type OutageList struct {
	Title, By, What string
}

// englishOutage are the words of Outage in English.
var englishOutage = Outage{
	Title: "Outage index", Rule: "One line a job. Hours are as planned, one step after another; crew hours are hours times people. Each job has a folder of its own.",
	Job: "job", Machine: "machine and work", Date: "issued", Pages: "pages", Tags: "tags", Hours: "hours", CrewHours: "crew h", Total: "all jobs", SeeTable: "see the table of this index",
	PageOf: "page %s of %s", NotPrinted: "NOT PRINTED: %s",
	Lists: [3]OutageList{
		{"Hold and witness points by date", "date, or hours from the start", "what has to be seen, and who releases"},
		{"Lifts by crane", "crane", "load"},
		{"Heats by permit", "permit", "what is heated"},
	},
}
