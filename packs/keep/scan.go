package keep

import (
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
)

// A Scan is what a scanned or typed text stands for in a job.
type Scan struct {
	Tag *job.Tag
	// Other is set where the text is the key of another machine or job with the same mark,
	// or has check letters that are not those of the tag.
	Other bool
	// Changed is set where what the tag says is no longer so: the content letters differ.
	Changed bool
	// Letters tells whether content letters were scanned at all.
	Letters bool
	// Keyboard is set where the scanner is set to the keyboard of another country.
	Keyboard string
}

// Scanned finds the tag of a text as a scanner types it or a person writes it: the whole
// code, the key, or the mark alone, in capitals or small letters. It is nil where the job
// has no such tag.
func Scanned(j *job.Job, text string) *Scan {
	text = strings.Join(strings.Fields(strings.ToUpper(strings.ReplaceAll(unwrapped(text), "/", " "))), " ")
	for _, t := range j.Tags {
		key := strings.TrimSuffix(t.Code, " "+t.Content)
		switch {
		case text == t.Code:
			return &Scan{Tag: t, Letters: true}
		case text == key:
			return &Scan{Tag: t}
		case strings.HasPrefix(text, key+" ") && len(text) == len(t.Code):
			return &Scan{Tag: t, Letters: true, Changed: true}
		case text == strings.ToUpper(strings.ReplaceAll(t.Mark, "/", " ")), text == t.Stamp():
			return &Scan{Tag: t}
		}
	}
	if s := struck(j, text); s != nil {
		return s
	}
	for _, k := range keyboards {
		for _, t := range j.Tags {
			key := strings.TrimSuffix(t.Code, " "+t.Content)
			typed := strings.ToUpper(k.typed.Replace(key))
			if text == typed || strings.HasPrefix(text, typed+" ") {
				return &Scan{Tag: t, Letters: text != typed, Changed: text != typed && text != strings.ToUpper(k.typed.Replace(t.Code)), Keyboard: k.name}
			}
		}
	}
	return foreign(j, text)
}

// enveloped is a code in the envelope of ISO/IEC 15434 as scanners hand it on: with its
// separators, with others in their place, or without any. The letters of the key and of the
// content have no Q and no Z, so that the identifiers are found in any case.
var enveloped = phrase.Of(`^\s*\[\)>\W*06\W*S([A-Z0-9 ]+?)\W*Q[0-9]+\W*Z([A-Z]{3})\W*$`)

// unwrapped takes the text of a tag's code out of its envelope; any other text is left.
func unwrapped(text string) string {
	if m := enveloped.FindStringSubmatch(strings.ToUpper(text)); m != nil {
		return m[1] + " " + m[2]
	}
	return text
}

// struck finds the tag of what is struck into metal with the letters of another machine or
// job, nil where the text is none.
func struck(j *job.Job, text string) *Scan {
	for _, t := range j.Tags {
		own := t.Stamp()
		n := len(own) - keyLetters
		if n > 0 && len(text) == len(own) && text[:n] == own[:n] && job.IsCheck(text[n:]) {
			return &Scan{Tag: t, Other: true}
		}
	}
	return nil
}

// foreign finds the tag with the mark of a code that is not of this machine and job.
func foreign(j *job.Job, text string) *Scan {
	fields := strings.Fields(text)
	var best *Scan
	longest := 0
	for _, t := range j.Tags {
		mark := strings.Fields(strings.TrimSuffix(t.Code, " "+t.Content))
		mark = mark[2 : len(mark)-1]
		if n := len(mark); len(fields) >= n+3 && strings.Join(fields[2:2+n], " ") == strings.Join(mark, " ") && len(fields) <= n+4 {
			if n > longest {
				best, longest = &Scan{Tag: t, Other: true}, n
			}
		}
	}
	return best
}

// keyboards are what capitals and figures become when a scanner types as on an English
// keyboard and the computer has another one: the letters that change places, and the
// figures, which lie on the other level of a French keyboard. From memory.
var keyboards = []struct {
	name  string
	typed *strings.Replacer
}{
	{"German", strings.NewReplacer("Y", "Z", "Z", "Y")},
	{"French", strings.NewReplacer("A", "Q", "Q", "A", "W", "Z", "Z", "W", "M", "?",
		"1", "&", "2", "é", "3", "\"", "4", "'", "5", "(", "6", "-", "7", "è", "8", "_", "9", "ç", "0", "à")},
}
