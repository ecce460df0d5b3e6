package words

import (
	"reflect"
	"regexp"
	"strings"
	"testing"
)

// The sign before the number of a page is held to it by a no-break space in every
// sentence: "p." stood at the end of a line and its number on the next, and was no link.
func TestPageNumbersHoldToTheirSign(t *testing.T) {
	for _, lang := range append([]string{"en"}, Languages()...) {
		c, err := In(lang)
		if err != nil {
			t.Fatal(err)
		}
		before, _, _ := strings.Cut(string(c.Common.StepPage), "\u00a0")
		sign := before[strings.LastIndex(before, " ")+1:]
		if sign == "" || !strings.HasSuffix(sign, ".") {
			t.Fatalf("%s: %q is no sign before the number of a page", lang, sign)
		}
		torn := regexp.MustCompile(`(^|[^%\p{L}])` + regexp.QuoteMeta(sign) + ` %`)
		seen := 0
		everyText(reflect.ValueOf(c).Elem(), func(text string) {
			seen += strings.Count(text, sign+"\u00a0%")
			if torn.MatchString(text) {
				t.Errorf("%s: the number may stand on the line after its sign: %q", lang, text)
			}
		})
		if seen < 30 {
			t.Errorf("%s: only %d numbers of pages are found", lang, seen)
		}
	}
}

// everyText gives every text of a part of a catalogue.
func everyText(v reflect.Value, give func(string)) {
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			everyText(v.Field(i), give)
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			everyText(v.Index(i), give)
		}
	case reflect.Map:
		for _, k := range v.MapKeys() {
			everyText(v.MapIndex(k), give)
		}
	case reflect.String:
		give(v.String())
	}
}
