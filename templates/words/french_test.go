package words

import (
	"reflect"
	"regexp"
	"testing"
)

// tornOff is a sign of two parts, or a quote mark, without the no-break space that French
// sets before it, and behind an opening one (Lexique des règles typographiques en usage à
// l'Imprimerie nationale, from memory). A colon with nothing behind it is none, as in 1:2.
var tornOff = regexp.MustCompile(`[^\x{00A0}\x{202F}][:;!?](\s|$)|[^\x{00A0}\x{202F}]»|«[^\x{00A0}\x{202F}]`)

// torn are the places of a French text where a line could end before its sign.
func torn(text string) []string { return tornOff.FindAllString(text, -1) }

// A line of French paper never begins with a colon, a question mark or a closing quote.
func TestFrenchSignsHoldToTheirWord(t *testing.T) {
	fr, err := In("fr")
	if err != nil {
		t.Fatal(err)
	}
	for text, want := range map[string]int{"vu\u00a0: non": 0, "vu : non": 1, "vu: non": 1, "«\u00a0vu\u00a0»": 0, "« vu »": 2, "D1\u202f?": 0, "min:s": 0} {
		if got := len(torn(text)); got != want {
			t.Errorf("%q: %d torn, want %d", text, got, want)
		}
	}
	var walk func(name string, v reflect.Value)
	walk = func(name string, v reflect.Value) {
		switch v.Kind() {
		case reflect.Struct:
			for i := range v.NumField() {
				walk(name+"."+v.Type().Field(i).Name, v.Field(i))
			}
		case reflect.Slice, reflect.Array:
			for i := range v.Len() {
				walk(name, v.Index(i))
			}
		case reflect.Map:
			for _, k := range v.MapKeys() {
				walk(name+"["+k.String()+"]", v.MapIndex(k))
			}
		case reflect.String:
			for _, x := range torn(v.String()) {
				t.Errorf("%s: %q in %q", name, x, v.String())
			}
		}
	}
	walk("fr", reflect.ValueOf(*fr))
}
