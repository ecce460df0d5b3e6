package refused_test

import (
	"errors"
	"testing"

	"matchmark/packs/refused"
)

// TestList: no reason is no error; several are one, a line each with its field, and can be
// had back from what wraps them.
func TestList(t *testing.T) {
	var none refused.List[refused.Reason]
	if err := none.Err(); err != nil {
		t.Errorf("an empty list is the error %v", err)
	}
	list := refused.List[refused.Reason]{
		refused.Of("legs[1].at", "measure it", "the leg stands at %d mm", -3),
		refused.Of("load.mass", "", "the mass is not told"),
	}
	err := errors.Join(errors.New("before it"), list.Err())
	want := "before it\nlegs[1].at: the leg stands at -3 mm; measure it\nload.mass: the mass is not told"
	if err.Error() != want {
		t.Errorf("it reads\n%s\nand not\n%s", err, want)
	}
	var got refused.List[refused.Reason]
	if !errors.As(err, &got) || len(got) != 2 || got[1].Field != "load.mass" {
		t.Errorf("what is had back is %v", got)
	}
}
