package templates

import (
	"reflect"
	"testing"
)

// Every word of the catalogue is there: a forgotten one would leave a hole on
// paper that nobody sees but the mechanic.
func TestNoWordOfTheCatalogueIsMissing(t *testing.T) {
	var look func(v reflect.Value, path string)
	look = func(v reflect.Value, path string) {
		switch v.Kind() {
		case reflect.String:
			if v.String() == "" {
				t.Errorf("%s is empty", path)
			}
		case reflect.Struct:
			for i := range v.NumField() {
				look(v.Field(i), path+"."+v.Type().Field(i).Name)
			}
		case reflect.Map, reflect.Slice:
			if v.Len() == 0 {
				t.Errorf("%s is empty", path)
			}
		}
	}
	look(reflect.ValueOf(english), "english")
}
