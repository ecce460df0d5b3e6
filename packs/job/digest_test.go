package job

import (
	"crypto/sha256"
	"testing"
)

// The same job on other paper, on both sides, with a second language or with change bars has
// another digest, and every one of them is known as that of the job: pages of two printings
// have other numbers, and could not be told apart.
func TestDigestTellsPrintingsApart(t *testing.T) {
	sum := sha256.Sum256([]byte("a definition"))
	j := &Job{}
	j.SetDigest(sum[:])
	usual := j.Digest
	met := map[string]Printing{}
	for _, since := range []string{"", "3f9a1c2e"} {
		for second := range 7 {
			for paper := range 4 {
				p := Printing{Letter: paper&1 != 0, BothSides: paper&2 != 0, Second: second, Since: since}
				j.PrintAs(p)
				if was, twice := met[j.Digest]; twice {
					t.Errorf("%+v and %+v both have the digest %s", was, p, j.Digest)
				}
				told, barred, known := j.PrintedAs(j.Digest)
				if told.Since = since; !known || told != p || barred != (since != "") {
					t.Errorf("%+v: the digest %s tells %+v, %v", p, j.Digest, told, known)
				}
				if met[j.Digest] = p; len(j.Digest) != 8 || !j.SameContent(j.Digest) {
					t.Errorf("%+v: the digest %s is not known as that of the job", p, j.Digest)
				}
			}
		}
	}
	if j.PrintAs(Printing{}); j.Digest != usual {
		t.Errorf("the usual printing has the digest %s, and had %s", j.Digest, usual)
	}
	other := &Job{}
	sum = sha256.Sum256([]byte("another definition"))
	other.SetDigest(sum[:])
	if j.SameContent(other.Digest) {
		t.Error("the digest of another job is taken for that of this one")
	}
	for _, digest := range []string{other.Digest, "", usual[:7], usual[:5] + "xyz"} {
		if as, _, known := j.PrintedAs(digest); known {
			t.Errorf("the digest %q tells %+v", digest, as)
		}
	}
	j.PrintAs(Printing{Since: "3f9a1c2e"})
	printed := j.Digest
	j.PrintAs(Printing{})
	if j.PrintedIn(other.Digest); j.Digest != usual {
		t.Errorf("it takes the digest %s of another job", j.Digest)
	}
	if j.PrintedIn(printed); j.Digest != printed {
		t.Errorf("its digest is %s, and %s on paper", j.Digest, printed)
	}
	other = &Job{}
	if other.PrintAs(Printing{Letter: true}); other.Digest != "" {
		t.Errorf("a job of which nothing was read has the digest %s", other.Digest)
	}
}

// Every code of a way to print fits into three figures, with the longest bars.
func TestDigestCodesFit(t *testing.T) {
	if most := languages * sides * bars; most > 0x1000 {
		t.Errorf("%d ways to print do not fit into three hexadecimal figures", most)
	}
}
