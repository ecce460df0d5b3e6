package filled

import (
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/source"
)

// Which machine a file is of
//
// Marks and boxes of sister machines are alike, for one definition serves them all: nothing
// but the machine's own tag and serial number tells their readings apart. Both stand in the
// rows above the boxes behind a word, so that a spreadsheet makes no number or day of them.

// The words before tag and serial number.
const machineWord, serialWord = "tag ", "no. "

// machineRows are the values of the rows that tell the machine.
func machineRows(e job.Equipment) map[string]string {
	rows := map[string]string{}
	if e.Tag != "" {
		rows[headMachine] = machineWord + e.Tag
	}
	if e.Serial != "" {
		rows[headSerial] = serialWord + e.Serial
	}
	return rows
}

// bare is a text without the word that stands before it.
func bare(value, word string) string {
	if len(value) > len(word) && strings.EqualFold(value[:len(word)], word) {
		return strings.TrimSpace(value[len(word):])
	}
	return value
}

// machine holds the machine of a file against that of the job. What one of the two does not
// say is not compared.
func (r *reader) machine(at func(string) source.Pos) {
	f, e := r.file, r.job.Equipment
	for _, x := range []struct{ row, what, is, want, help string }{
		{headMachine, "of the machine ", f.Machine, e.Tag, "if the machine has a new tag: write " + machineWord + e.Tag + " into the value of the row \"" + headMachine + "\""},
		{headSerial, "of the machine with the serial number ", f.Serial, e.Serial, "if the number was put right: write " + serialWord + e.Serial + " into the value of the row \"" + headSerial + "\""},
	} {
		if x.is == "" || x.want == "" || likeText(x.is, x.want) {
			continue
		}
		f.Other = true
		r.problems.Add(at(x.row), "other-machine", "the readings are "+x.what+x.is+", and the definition is of "+x.want+": none of them is taken for it",
			"give the readings of "+x.want+", or the definition or job file of that machine", x.help)
		return
	}
}

// likeText reports whether two texts are the same but for blanks and letter case.
func likeText(a, b string) bool {
	return strings.EqualFold(strings.Join(strings.Fields(a), ""), strings.Join(strings.Fields(b), ""))
}

// Unsaid tells that an earlier file does not say of which machine it is, as those that were
// printed before that was written; a file of this very job needs not.
func (f *File) Unsaid(j *job.Job) source.Problems {
	var told source.Problems
	if f.Machine == "" && j.Equipment.Tag != "" && (f.Job == "" || f.Job != j.Order.Number) {
		told.Warn(source.Pos{File: f.Name}, "machine-unsaid", "the file does not say of which machine it is, and is taken for one of "+j.Equipment.Tag,
			"if it is: a row "+headMachine+" above the boxes, with "+machineWord+j.Equipment.Tag+" in the column "+colValue, "if it is of a sister machine: leave it out")
	}
	return told
}
