package keep

import (
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/source"
)

// The text of a tag's code, as a scanner types it:
//
//	P03 WO2408 C4 NDE S XKPR XDP
//	machine, job, mark with its place and pocket, check letters, content letters
//
// All but the content letters is the key: it holds the machine, the job and the mark, and
// neither the revision nor how many tags there are, so that a tag that hangs keeps its
// key. Everything is capitals, figures and single blanks. A blank lies on the same key of
// every keyboard; a scanner that is set to another country's keyboard exchanges some
// letters and figures (Y and Z, A and Q), which the check letters bring to light.
//
// Machine, job and the parts of the mark are folded (job.Folded): other signs than capitals
// and figures are left out, and of a long one its last signs stay. What that makes alike
// the check letters tell apart: they are four of sixteen consonants, 16 bits of the
// SHA-256 of machine, job and mark as written. Two things of one pack that fold to the
// same key are refused (Tags); of two packs whose machine and job fold alike one in 65536
// marks clashes. The content letters are three of the same consonants, 12 bits of the
// SHA-256 of what the tag says (Content).

// How many letters check a key, and how many stand for what is in it.
const keyLetters, contentLetters = 4, 3

// Key is the key of the tag of a mark (C8/NDE/S): the same as long as machine, job number
// and mark are the same.
func Key(machine, number, mark string) string {
	fields := []string{job.Folded(machine), job.Folded(number)}
	for _, part := range strings.Split(mark, "/") {
		fields = append(fields, job.Folded(part))
	}
	return strings.Join(append(fields, job.CheckLetters(machine+"\n"+number+"\n"+mark, keyLetters)), " ")
}

// keyed gives every tag its key, its content letters and the text of its code, and what is
// in it what is easily missed in putting it back, which the letters tell of.
func keyed(j *job.Job) {
	for _, t := range j.Tags {
		for _, m := range t.In {
			m.Missed = m.MissedBack(j.Parts)
		}
		t.Key = Key(j.Equipment.Tag, j.Order.Number, t.Mark)
		t.Content = job.CheckLetters(Content(t), contentLetters)
		t.Code = t.Key + " " + t.Content
	}
}

// alike tells of two tags of one pack whose marks differ in nothing but the case of
// letters or in signs that a key leaves out: whoever writes, calls or types the mark
// takes the one for the other.
func alike(j *job.Job) source.Problems {
	var problems source.Problems
	first := map[string]*job.Tag{}
	for _, t := range j.Tags {
		key := strings.TrimSuffix(t.Key, t.Key[len(t.Key)-keyLetters:])
		other, known := first[key]
		if !known {
			first[key] = t
			continue
		}
		problems.AddWith(t.At, "same-key", "the tags "+other.Mark+" and "+t.Mark+" differ in nothing that a scanner or a voice tells apart",
			other.At, "the other one", "give one of the two places or pockets another name: capitals and small letters are the same, and signs are left out")
	}
	return problems
}
