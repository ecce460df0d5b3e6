package def

import "reflect"

// Varyings calls visit for every value of the definition that may differ by
// place or build, with the name of its field. It goes by the types, so that a
// key that is added later is never left out.
func (d *Definition) Varyings(visit func(field string, v *Varying)) {
	visitVaryings(reflect.ValueOf(d).Elem(), "", visit)
}

func visitVaryings(v reflect.Value, field string, visit func(string, *Varying)) {
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() {
			visitVaryings(v.Elem(), field, visit)
		}
	case reflect.Slice:
		for i := range v.Len() {
			visitVaryings(v.Index(i), field, visit)
		}
	case reflect.Struct:
		if x, ok := v.Addr().Interface().(*Varying); ok {
			visit(field, x)
			return
		}
		for i := range v.NumField() {
			visitVaryings(v.Field(i), v.Type().Field(i).Name, visit)
		}
	}
}
