package words

import (
	"strings"
	"testing"
)

// A word that sends a reader to another paper is the word that stands there: the list of what
// came back said to tick LITIGE on a tag whose boxes are bon, répar., rebut and bloq.
func TestWordsThatSendElsewhereStandThere(t *testing.T) {
	t.Parallel()
	for _, lang := range Languages() {
		w, err := In(lang)
		if err != nil {
			t.Fatal(err)
		}
		for _, c := range []struct{ what, says, there string }{
			{"what came back, of the tag", w.Filled.Tags, w.Tag.OnHold},
			{"the register's rule, of the stub", w.Register.Rule, w.Tag.Stub},
			{"the rule of the holds", w.Holds.Rule, w.Holds.Hold},
		} {
			if !strings.Contains(strings.ToLower(c.says), strings.ToLower(c.there)) {
				t.Errorf("%s, %s: %q has not %q, which is printed there", lang, c.what, c.says, c.there)
			}
		}
	}
}
