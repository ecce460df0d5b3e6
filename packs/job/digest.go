package job

import (
	"crypto/sha256"
	"encoding/hex"
	"strconv"
)

// A Printing is how a job is put on paper, as far as its pages and their numbers hang on
// it. The zero Printing is A4, one side of the paper, one language, without change bars.
type Printing struct {
	Letter    bool
	BothSides bool
	Second    int    // of the languages that a second text can be in, from 1; 0 for none
	Since     string // the digest of the revision that change bars stand against; "" for none
}

// Of the digest of a pack the first figures are of what it is made from alone, the last
// three also of how it is printed. So pages of one job on two papers have two digests, and
// a person, or the file of readings, still sees that they are of one job.
const (
	ofContent = 5
	sides     = 4  // ways of paper and sides
	languages = 40 // more than a second language has
	bars      = 25 // ways of change bars: none, and those against other revisions
)

// SetDigest makes the digest from the sum of all inputs and the format number, for the zero
// Printing.
func (j *Job) SetDigest(sum []byte) { j.made = hex.EncodeToString(sum)[:8]; j.Digest = j.made }

// PrintAs makes the digest that of a way to print the job. Two ways have two digests, but
// for change bars against two old revisions, of which one pair in 24 has the same: the
// front sheet names the revision.
func (j *Job) PrintAs(p Printing) {
	if j.made == "" {
		return // nothing was read
	}
	code := (p.Second%languages)*sides + bit(p.Letter) + 2*bit(p.BothSides)
	if p.Since != "" {
		sum := sha256.Sum256([]byte(p.Since))
		code += languages * sides * (1 + int(sum[0])%(bars-1)) // at most 3999 in all, of 4096
	}
	was, _ := strconv.ParseUint(j.made[ofContent:], 16, 32) // three figures of a sum
	now := strconv.FormatUint(was^uint64(code), 16)
	j.Digest = j.made[:ofContent] + "000"[len(now):] + now
}

// AlsoOf says that a pack of the same definition made without other inputs, as what was read
// last, is of this job as well.
func (j *Job) AlsoOf(o *Job) { j.alike = append(j.alike, o.made) }

// SameContent reports whether a digest is of this job, printed in whatever way.
func (j *Job) SameContent(digest string) bool { return j.madeAs(digest) != "" }

// PrintedIn makes the digest that of a pack of this job which was printed before: against what
// its change bars stand is known from it alone. One of something else changes nothing.
func (j *Job) PrintedIn(digest string) {
	if j.SameContent(digest) {
		j.Digest = digest
	}
}

// madeAs is the sum of the inputs that a digest is of; empty for one of something else.
func (j *Job) madeAs(digest string) string {
	for _, made := range append([]string{j.made}, j.alike...) {
		if made != "" && len(digest) == len(made) && digest[:ofContent] == made[:ofContent] {
			return made
		}
	}
	return ""
}

// PrintedAs reads from the digest of a pack how it was printed, and whether with change bars;
// against what these stand is not in it. known is false where the pack is of something else, or
// the figures are those of no way to print.
func (j *Job) PrintedAs(digest string) (as Printing, barred, known bool) {
	made := j.madeAs(digest)
	if made == "" {
		return Printing{}, false, false
	}
	was, _ := strconv.ParseUint(made[ofContent:], 16, 32)
	now, err := strconv.ParseUint(digest[ofContent:], 16, 32)
	code := int(was ^ now)
	if err != nil || code >= languages*sides*bars {
		return Printing{}, false, false
	}
	way := code % (languages * sides)
	return Printing{Letter: way&1 != 0, BothSides: way&2 != 0, Second: way / sides}, code != way, true
}

func bit(yes bool) int {
	if yes {
		return 1
	}
	return 0
}
