package def

import (
	"encoding/json"
	"io"
	"strings"

	"gopkg.in/yaml.v3"
)

// An object is a part of a JSON schema. Its keys are written sorted, so the same
// table gives the same bytes.
type object map[string]any

// Schema writes a JSON Schema (draft 2020-12) of definitions, with which editors
// can complete and explain keys. It is made of the table of keys alone; what
// needs more than the form of a value (whether a name exists, what a limit says)
// is not in it. The error is that of w.
func Schema(w io.Writer) error {
	return writeSchema(w, "matchmark definition", definitionKind)
}

// JobSchema writes the schema of job files, as Schema that of definitions.
func JobSchema(w io.Writer) error { return writeSchema(w, "matchmark job file", jobFileKind) }

// SiteSchema writes the schema of site files, as Schema that of definitions.
func SiteSchema(w io.Writer) error { return writeSchema(w, "matchmark site file", siteFileKind) }

// writeSchema writes the schema of one kind of file, with the kinds of maps that it
// leads to.
func writeSchema(w io.Writer, title string, root shape) error {
	kinds := object{}
	for _, s := range reached(root) {
		kinds[ident(s)] = mapSchema(s)
	}
	enc := json.NewEncoder(w)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", "  ")
	return enc.Encode(object{
		"$schema": "https://json-schema.org/draft/2020-12/schema",
		"title":   title,
		"$ref":    "#/$defs/" + ident(root),
		"$defs":   kinds,
	})
}

// ident is the name of a kind in the schema.
func ident(s shape) string { return strings.ReplaceAll(s.title(), " ", "-") }

func ref(s shape) object { return object{"$ref": "#/$defs/" + ident(s)} }

// mapSchema describes a map of keys.
func mapSchema(s shape) object {
	properties, need := object{}, []string{}
	for _, e := range s.entries() {
		p := valueSchema(e)
		p["description"] = e.doc
		p["examples"] = []any{exampleValue(e.example)}
		properties[e.name] = p
		if e.need {
			need = append(need, e.name)
		}
	}
	o := object{"type": "object", "description": s.about(), "properties": properties, "additionalProperties": false}
	if len(need) > 0 {
		o["required"] = need
	}
	if s.others() != nil {
		o["additionalProperties"] = ref(s.others())
	}
	return o
}

// valueSchema describes what may stand behind a key.
func valueSchema(e *entry) object {
	one := textSchema(e)
	list := object{"type": "array", "items": one, "minItems": 1}
	byName := object{"type": "object", "additionalProperties": one, "minProperties": 1}
	plain := object{"type": []string{"string", "number", "boolean"}}
	switch e.form {
	case varyingForm, varyingCountForm, intoForm:
		return anyOf(one, byName)
	case listForm, namesForm:
		return anyOf(one, list)
	case faceForm:
		return anyOf(one, object{"type": "object", "additionalProperties": anyOf(one, byName), "minProperties": 1, "maxProperties": 1})
	case countsForm:
		numbers := object{"type": "object", "additionalProperties": numberSchema(), "minProperties": 1}
		return anyOf(plain, numbers, object{"type": "array", "items": anyOf(plain, numbers), "minItems": 1})
	case marksForm:
		across := object{"type": "object", "additionalProperties": plain, "minProperties": 1}
		return anyOf(one, across, object{"type": "array", "items": anyOf(one, across), "minItems": 1})
	case afterForm:
		return anyOf(one, object{"type": "array", "items": one}, object{"type": "object", "additionalProperties": one})
	case positionsForm:
		// A log has every and rows beside its list.
		return anyOf(one, list, object{"type": "object", "additionalProperties": anyOf(one, list), "minProperties": 1, "maxProperties": maxAxes + 1})
	case choicesForm, namedTextsForm:
		return byName
	case mapForm:
		return object{"allOf": []object{ref(e.inner[0])}}
	case mapsForm:
		return keyedSchema(e.inner[0])
	case itemsForm:
		return anyOf(ref(e.inner[0]), object{"type": "array", "items": ref(e.inner[0]), "minItems": 1})
	case textOrMapForm:
		return anyOf(one, ref(e.inner[0]))
	case listsForm:
		return object{"type": "array", "items": list, "minItems": 1}
	case sectionsForm:
		var items []object
		for _, in := range e.inner {
			items = append(items, ref(in))
		}
		return object{"type": "array", "items": anyOf(items...), "minItems": 1}
	}
	return one
}

// exampleValue is the example of a key as a value of JSON.
func exampleValue(example string) any {
	var n yaml.Node
	if err := yaml.Unmarshal([]byte(example), &n); err != nil || n.Kind == 0 {
		return example
	}
	return jsonValue(&n)
}

// jsonValue is a node as JSON has it. What is no number by YAML 1.2 is a text, a day as
// well.
func jsonValue(n *yaml.Node) any {
	switch n.Kind {
	case yaml.DocumentNode:
		return jsonValue(n.Content[0])
	case yaml.MappingNode:
		m := object{}
		for i := 0; i+1 < len(n.Content); i += 2 {
			m[n.Content[i].Value] = jsonValue(n.Content[i+1])
		}
		return m
	case yaml.SequenceNode:
		list := []any{}
		for _, item := range n.Content {
			list = append(list, jsonValue(item))
		}
		return list
	}
	if n.ShortTag() == "!!int" || n.ShortTag() == "!!float" {
		var number json.Number
		if err := n.Decode(&number); err == nil && json.Valid([]byte(n.Value)) {
			return json.Number(n.Value)
		}
	}
	return n.Value
}

func anyOf(list ...object) object { return object{"anyOf": list} }

// keyedSchema describes a map from marks or names to maps of one kind.
func keyedSchema(s shape) object {
	o := object{"type": "object", "minProperties": 1}
	switch s.mark() {
	case "":
		o["patternProperties"] = object{"^[^/]{1,40}$": ref(s)}
	case "D":
		o["patternProperties"] = object{"^D([1-9]|[1-4][0-9]|50)$": ref(s)}
	default:
		o["patternProperties"] = object{"^" + s.mark() + "[1-9][0-9]{0,2}$": ref(s)}
	}
	o["additionalProperties"] = false
	return o
}

func numberSchema() object { return object{"type": "integer", "minimum": 1, "maximum": 999999} }

// tonguesSchema describes a text in several languages.
func tonguesSchema() object {
	return object{"type": "object", "propertyNames": object{"enum": Tongues}, "minProperties": 1, "additionalProperties": object{"type": []string{"string", "number", "boolean"}},
		"description": "The text in several languages, by ISO 639-1: {en: Take the nut off., es: Quite la tuerca.}"}
}

// textSchema describes one scalar. YAML makes numbers of some texts; they are
// taken as typed.
func textSchema(e *entry) object {
	switch e.form {
	case numberForm, varyingCountForm:
		return numberSchema()
	case decimalForm:
		return object{"type": "number", "minimum": 0}
	case flagForm:
		return object{"enum": []any{true, false, "yes", "no"}}
	case dateForm:
		return object{"type": "string", "format": "date"}
	}
	var choices []object
	if e.letters != "" && !e.named {
		choices = append(choices, object{"type": "string", "pattern": "^[" + e.letters + "][1-9][0-9]{0,2}(/.+)?$"})
	}
	var exact []any
	for _, a := range e.allowed {
		switch begin, open := strings.CutSuffix(a, "…"); {
		case open:
			choices = append(choices, object{"type": "string", "pattern": "^" + begin})
		case a == "1":
			exact = append(exact, 1)
		default:
			exact = append(exact, a)
		}
	}
	if exact != nil {
		choices = append(choices, object{"enum": exact})
	}
	switch len(choices) {
	case 0:
		return anyOf(object{"type": []string{"string", "number", "boolean"}}, tonguesSchema())
	case 1:
		return choices[0]
	}
	return anyOf(choices...)
}
