package filled_test

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"matchmark/packs/filled"
)

// head begins the small files of the tests.
const head = "mark,position,side,value,looked again\ntyped by,,,A. Penn,\ntyped on,,,2026-03-14,\n"

// TestFaultsOfAFile: what is wrong with a file as a whole, and the codes that the file
// of mistakes in testdata does not show.
func TestFaultsOfAFile(t *testing.T) {
	jb := stormPump(t)
	for _, x := range []struct{ code, text, says string }{
		{"no-header", "", "the file is empty"},
		{"letters", head + "D34,no. 1: DE,found,\xb0\xff,\n", "UTF-8"},
		{"quote-mark", head + "D34,no. 1: DE,found,3\" pipe,\n", "a quote mark stands alone"},
		{"no-column", "mark,position,value\nD4,,2.35 mm\n", `no column "side"`},
		{"column-twice", "mark,position,side,value,value\n", `two columns are called "value"`},
		{"typed-by", "mark,position,side,value\ntyped on,,,2026-03-14\nD4,,found,2.35 mm\n", "nobody is named"},
		{"typed-on", "mark,position,side,value\ntyped by,,,A. Penn\nD4,,found,2.35 mm\n", "the day is missing"},
		{"other-job", head + "job,,,WO-9999,\nD4,,found,2.35 mm,\n", "WO-9999"},
		{"other-revision", head + "revision,,,C,\nD4,,found,2.35 mm,\n", "revision C"},
		{"other-pack", head + "pack,,,00000000,\nD4,,found,2.35 mm,\n", "pack 00000000"},
	} {
		f := filled.Read("x.csv", []byte(x.text), jb)
		found := false
		for _, p := range f.Told {
			found = found || p.Code == x.code && strings.Contains(p.Message, x.says)
		}
		if !found {
			t.Errorf("%s is not told of %q: %v", x.code, x.text, f.Told)
		}
	}
	jb.Site.Comma = true
	f := filled.Read("x.csv", []byte(head+"D4,,found,2.35 mm,\n"), jb)
	if len(f.Told) != 1 || f.Told[0].Code != "point" || f.Told[0].Help[0] != "2,35 mm" {
		t.Errorf("a point where the site writes a comma: %v", f.Told)
	}
}

// TestEveryCodeIsTested: each code of a problem of this package stands in a test or in
// the file of what is refused.
func TestEveryCodeIsTested(t *testing.T) {
	var shown strings.Builder
	tests, _ := filepath.Glob("*_test.go")
	for _, name := range append(tests, filepath.Join(testdata, "bad.out")) {
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		shown.Write(data)
	}
	code := regexp.MustCompile(`(?:\bno\(|(?:Add|Warn|AddWith)\([^"]*?, )"([a-z-]+)"`)
	files, _ := filepath.Glob("*.go")
	all := 0
	for _, name := range files {
		if strings.HasSuffix(name, "_test.go") {
			continue
		}
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		for _, m := range code.FindAllStringSubmatch(string(data), -1) {
			all++
			if !strings.Contains(shown.String(), `"`+m[1]+`"`) && !strings.Contains(shown.String(), "["+m[1]+"]") {
				t.Errorf("no test shows the problem %s", m[1])
			}
		}
	}
	if all < 25 {
		t.Errorf("found %d codes in the source, there are more", all)
	}
}
