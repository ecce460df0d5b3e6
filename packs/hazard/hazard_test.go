package hazard

import (
	"regexp"
	"strings"
	"testing"

	"matchmark/packs/job"
)

// Every built-in note says all that a note has to say, and asks for no act: that
// is for steps, which have a number and a box. The verbs are those by which the
// steps of the starters act.
func TestBuiltInNotesAreWholeAndHoldNoStep(t *testing.T) {
	act := regexp.MustCompile(`(?:^|[.;:] )(Measure|Write|Tie|Purge|Record|Lock|Drain|Vent|Clean|Remove|Take|Put|Fit|Tighten|Loosen|Slacken|Open|Close|Check|Turn|Pull|Push|Draw|Mark|Cover|Cap|Count|Sign|Weigh|Test|Hang|Block)\b`)
	seen := map[string]bool{}
	if len(builtins) != 23 {
		t.Errorf("%d built-in notes: name the new ones in the test of their signs too", len(builtins))
	}
	for _, n := range builtins {
		if seen[n.Key] {
			t.Errorf("%s stands twice", n.Key)
		}
		seen[n.Key] = true
		if n.Hazard == "" || n.Result == "" || n.Avoid == "" || n.Rule == "" || rank(&n.Caution) < 0 {
			t.Errorf("%s is not whole: %+v", n.Key, n.Caution)
		}
		if (n.Signal == "notice") != (len(n.Signs) == 0) {
			t.Errorf("%s: a note of injury has signs, and one of the machine has none", n.Key)
		}
		for _, s := range []string{n.Hazard, n.Result, n.Avoid, n.Short} {
			if m := act.FindString(s); m != "" {
				t.Errorf("%s holds an act: %q in %q", n.Key, m, s)
			}
		}
	}
}

// Asbestos is never a suggestion: wherever the word or its like stands, it is the
// hazard, and what goes in its place is named as free of it.
func TestAsbestosIsOnlyEverTheHazard(t *testing.T) {
	for _, n := range builtins {
		text := strings.ToLower(n.Hazard + n.Result + n.Avoid + n.Short)
		if strings.Contains(text, "asbestos") != (n.Key == "asbestos" || n.Key == "lagging") {
			t.Errorf("%s speaks of asbestos: %s", n.Key, text)
		}
	}
	for _, n := range builtins {
		must := map[string][]string{
			"asbestos": {"stop", "wet and whole", "tested"},
			"lagging":  {"stop", "wet and whole", "tested", "free of asbestos", "mineral wool", "aluminium sheet"},
		}[n.Key]
		for _, m := range must {
			for _, s := range []string{n.Avoid, n.Short} {
				if !strings.Contains(s, m) {
					t.Errorf("the note %s does not say %q: %s", n.Key, m, s)
				}
			}
		}
		// A gasket was printed with what goes in the place of a heat shield, where nothing is heated.
		if text := n.Avoid + n.Short; strings.Contains(text, "heat shield") != (n.Key == "lagging") {
			t.Errorf("%s speaks of heat shields: %s", n.Key, text)
		}
	}
}

// Nobody went near after a lock was off, so that nobody could lock it again; lagging was taken
// off with a grinder; a burn was told as one of the skin alone.
func TestNotesSayHowToKeepClear(t *testing.T) {
	for key, must := range map[string]string{
		"unlocking": "before it is locked and proved",
		"heating":   "burns deep at a touch",
		"lagging":   "no grinder",
		"asbestos":  "no grinder",
		"hand-lift": "Agreed who counts down",
	} {
		for _, n := range builtins {
			if n.Key == key && !strings.Contains(n.Result+n.Avoid, must) {
				t.Errorf("the note %s does not say %q: %s %s", key, must, n.Result, n.Avoid)
			}
		}
	}
}

// Of two cradles nothing was said that is said of one.
func TestSeveralCradlesAreToldAsOne(t *testing.T) {
	for _, text := range []string{"cradle down and out", "both cradles down and out", "cradles up until the shaft moves"} {
		told := false
		for _, n := range builtins {
			told = told || n.Key == "propped" && n.words.MatchString(text)
		}
		if !told {
			t.Errorf("%q: not told of as a load on a cradle", text)
		}
	}
}

// The note that speaks of what is written at the step stood at one where nothing is.
func TestAnAuthorsNoteOfNothingUnderTheLoad(t *testing.T) {
	bare, under := &job.Caution{Key: hanging, Builtin: true}, &job.Caution{Key: propUnder, Builtin: true}
	st := &job.Step{Cautions: []*job.Caution{under}}
	under.Steps = []*job.Step{st}
	sayUnder(map[string]*job.Caution{hanging: bare, propUnder: under}, st)
	if len(st.Cautions) != 1 || st.Cautions[0] != bare || len(under.Steps) > 0 || len(bare.Steps) != 1 {
		t.Errorf("%d notes at the step, the first %s", len(st.Cautions), st.Cautions[0].Key)
	}
}
