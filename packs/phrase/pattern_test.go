package phrase

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"math/rand/v2"
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"regexp/syntax"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// expressions are all texts in the source of this room's callers that may be expressions or
// parts of them.
func expressions(t *testing.T) []string {
	var out []string
	err := filepath.WalkDir("..", func(path string, _ fs.DirEntry, err error) error {
		if err != nil || !strings.HasSuffix(path, ".go") {
			return err
		}
		f, err := parser.ParseFile(token.NewFileSet(), path, nil, 0)
		if err != nil {
			return err
		}
		ast.Inspect(f, func(n ast.Node) bool {
			l, ok := n.(*ast.BasicLit)
			if !ok || l.Kind != token.STRING {
				return true
			}
			s, err := strconv.Unquote(l.Value)
			if err == nil && strings.ContainsAny(s, `\|(?`) && !slices.Contains(out, s) {
				if _, err := regexp.Compile(s); err == nil {
					out = append(out, s)
				}
			}
			return true
		})
		return nil
	})
	if err != nil || len(out) < 150 {
		t.Fatalf("%d expressions, %v", len(out), err)
	}
	return out
}

// TestWhatIsFound: a text in which an expression has a match has the words that it needs.
// The expressions are those of the laws; the texts are made from their own forms, so that
// they match, and set between words, signs and letters of other alphabets. What decides is
// package regexp.
func TestWhatIsFound(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	around := []string{"", " ", ", ", "x", "é", "-", "the ", "7", "_", "ſ", "K", "\n", "Ä.", "\xff"}
	matched, run := 0, 0
	for _, x := range expressions(t) {
		re, err := syntax.Parse(x, syntax.Perl)
		if err != nil {
			t.Fatal(err)
		}
		p, plain := Of(x), regexp.MustCompile(x)
		for range 200 {
			text := around[rng.IntN(len(around))] + madeOf(rng, re) + around[rng.IntN(len(around))]
			run++
			if !plain.MatchString(text) {
				continue
			}
			matched++
			if !p.may(text) {
				t.Fatalf("%s matches %q, which does not have what it needs: %v", x, text, p.needs)
			}
		}
	}
	if matched < run/3 {
		t.Errorf("%d of %d texts match", matched, run)
	}
}

// madeOf makes a text of an expression, one that it will often match.
func madeOf(rng *rand.Rand, re *syntax.Regexp) string {
	var b strings.Builder
	times := func(low, high int) {
		for range low + rng.IntN(high-low+1) {
			for _, sub := range re.Sub {
				b.WriteString(madeOf(rng, sub))
			}
		}
	}
	switch re.Op {
	case syntax.OpLiteral:
		for _, r := range re.Rune {
			b.WriteRune(folded(rng, re, r))
		}
	case syntax.OpCharClass:
		i := 2 * rng.IntN(len(re.Rune)/2)
		low, high := re.Rune[i], min(re.Rune[i+1], re.Rune[i]+200)
		b.WriteRune(low + rune(rng.IntN(int(high-low)+1)))
	case syntax.OpAnyChar, syntax.OpAnyCharNotNL:
		b.WriteString([]string{"a", " ", "é", "9"}[rng.IntN(4)])
	case syntax.OpStar:
		times(0, 3)
	case syntax.OpPlus:
		times(1, 3)
	case syntax.OpQuest:
		times(0, 1)
	case syntax.OpRepeat:
		times(re.Min, max(re.Min, re.Max))
	case syntax.OpConcat, syntax.OpCapture:
		times(1, 1)
	case syntax.OpAlternate:
		b.WriteString(madeOf(rng, re.Sub[rng.IntN(len(re.Sub))]))
	}
	return b.String()
}

// folded is a rune, or one that is the same where case does not count.
func folded(rng *rand.Rand, re *syntax.Regexp, r rune) rune {
	if re.Flags&syntax.FoldCase == 0 {
		return r
	}
	same := []rune(string(r) + strings.ToLower(string(r)) + map[rune]string{'K': "K", 'S': "ſ"}[r])
	return same[rng.IntN(len(same))]
}

// TestStarterTexts: on every line that ships, an expression finds what package regexp finds.
func TestStarterTexts(t *testing.T) {
	var lines []string
	files, _ := filepath.Glob("../starters/*.yaml")
	for _, name := range files {
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		lines = append(lines, strings.Split(string(data), "\n")...)
	}
	if len(lines) < 1000 {
		t.Fatalf("%d lines", len(lines))
	}
	passed, all := 0, 0
	for _, x := range expressions(t) {
		if !strings.HasPrefix(x, "(?i)") {
			continue
		}
		p, plain := Of(x), regexp.MustCompile(x)
		if p.may(""); p.needs.open() {
			continue
		}
		for _, l := range lines {
			all++
			if p.may(l) {
				passed++
			} else if plain.MatchString(l) {
				t.Fatalf("%s matches %q, which does not have what it needs", x, l)
			}
		}
	}
	if passed > all/8 {
		t.Errorf("%d of %d times a line has what an expression needs", passed, all)
	}
}

// TestNeeds: what of an expression must stand in a text.
func TestNeeds(t *testing.T) {
	for _, c := range []struct {
		expression, met, unmet string
	}{
		{`(?i)\bmeasure\b`, "Measure it", "what was measured"},
		{`(?i)\bleft[- ]?hand`, "a left-handed one", "left, by hand"},
		{`(?i)\b(?:bolts?|nuts?)\b[^,;.]*\btight\b`, "The nuts are tight.", "the nuts are tightened"},
		{`(?i)\b(\pL+?)s? (?:are |is )?(?:still )?(?:off|out)\b`, "Guard still out", "Take it outside"},
		{`weld(?:ed|ing)?|torch`, "he welds", "he melts"},
		{`^(?:abc)+$`, "abcabc", "bacab"},
		{`\d\s*(?:k?N|lbf?)\b`, "no number, and yet it may", ""},
	} {
		p := Of(c.expression)
		if !p.may(c.met) {
			t.Errorf("%s: %q has what it needs", c.expression, c.met)
		}
		if c.unmet != "" && p.may(c.unmet) {
			t.Errorf("%s: %q lacks what it needs", c.expression, c.unmet)
		}
	}
}

// TestAsRegexp: every way to look gives what package regexp gives, found or not.
func TestAsRegexp(t *testing.T) {
	const x = `(?i)\b(loose|slack) (\w+)\b`
	p, re := Of(x), regexp.MustCompile(x)
	for _, text := range []string{"", "Loose bolts, slack chains and all that is on them", "nothing of the kind is said here"} {
		for name, got := range map[string][2]any{
			"MatchString":                {p.MatchString(text), re.MatchString(text)},
			"FindString":                 {p.FindString(text), re.FindString(text)},
			"FindStringIndex":            {p.FindStringIndex(text), re.FindStringIndex(text)},
			"FindStringSubmatch":         {p.FindStringSubmatch(text), re.FindStringSubmatch(text)},
			"FindStringSubmatchIndex":    {p.FindStringSubmatchIndex(text), re.FindStringSubmatchIndex(text)},
			"FindAllString":              {p.FindAllString(text, -1), re.FindAllString(text, -1)},
			"FindAllStringIndex":         {p.FindAllStringIndex(text, -1), re.FindAllStringIndex(text, -1)},
			"FindAllStringSubmatch":      {p.FindAllStringSubmatch(text, -1), re.FindAllStringSubmatch(text, -1)},
			"FindAllStringSubmatchIndex": {p.FindAllStringSubmatchIndex(text, -1), re.FindAllStringSubmatchIndex(text, -1)},
			"ReplaceAllString":           {p.ReplaceAllString(text, "$2"), re.ReplaceAllString(text, "$2")},
			"ReplaceAllStringFunc":       {p.ReplaceAllStringFunc(text, strings.ToUpper), re.ReplaceAllStringFunc(text, strings.ToUpper)},
		} {
			if !reflect.DeepEqual(got[0], got[1]) {
				t.Errorf("%s(%q) = %v, regexp gives %v", name, text, got[0], got[1])
			}
		}
	}
}
