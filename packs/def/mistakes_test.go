package def

import (
	"fmt"
	"strings"
	"testing"
)

// foundation makes a definition of any piece of one: it stands below the piece,
// so that lines count from the piece's first.
const foundation = "\npack: 1\nequipment: {tag: T-1, name: Fan}\nsteps: [{step: s, do: Look.}]\n"

// Each row is a mistake as a planner makes it and, for each problem it gives,
// its place, its code and a piece of what is said. No row may give more problems
// than it lists. Rows marked "limits" are the likeliest mistakes of the project's
// language of limits; what YAML reserves at the start of a text (@ and ` in
// example 5.10, % and the rest in section 7.3.3) is from YAML 1.2.2, read from
// memory. The others are common practice, no source.
func TestMistakes(t *testing.T) {
	for _, m := range []struct {
		name, text string
		want       []string
	}{
		{"limits: a sign for at least", "dimensions:\n  D1:\n    what: Gap\n    left: >= 4.0 mm\n    kind: gapp",
			[]string{`4:11+9 bad-start a line cannot start with ">" here | write: at least 4.0 mm`, `5:11+4 not-allowed kind cannot be "gapp" | did you mean gap?`}},
		{"limits: a sign for at least in braces", "dimensions:\n  D1: {what: Gap, left: > 4.0 mm, kind: gap}",
			[]string{`2:25+8 bad-start a line cannot start with ">" here | write: at least 4.0 mm`}},
		{"limits: a sign that YAML takes for an indent", "dimensions:\n  D1:\n    what: Gap\n    left: >4\n    kind: gap",
			[]string{`4:11+1 bad-start a text cannot start with > | at least`}},
		{"limits: decimal comma in braces", "dimensions:\n  D1: {what: Gap, left: 0,05 to 0,12 mm}",
			[]string{`2:27+7 cut-by-comma left reads only "0" | decimals take a point: left: 0.05 to 0.12 mm`}},
		{"a text with a comma in braces", "instruments:\n  a: {name: Depth gauge, reads 0.02 mm}",
			[]string{`2:26+13 cut-by-comma name reads only "Depth gauge" | put it in quotes: name: "Depth gauge, reads 0.02 mm"`}},
		{"a list without its brackets in braces", "parts:\n  nut: {name: Lock nut, behind: hub LE, hub SE, count: 2}",
			[]string{`2:41+6 cut-by-comma behind reads only "hub LE" | write it in brackets: behind: [hub LE, hub SE]`}},
		{"a list that goes on behind its brackets", "parts:\n  nut: {name: Lock nut, behind: [hub, \"cap, upper\"], ring}",
			[]string{`2:54+4 cut-by-comma behind reads only what stands in [ ] | write it in brackets: behind: [hub, "cap, upper", ring]`}},
		{"a number of pieces without brackets", "steps:\n  - {step: nut, do: Take it off., remove: nut, {screw: 6}, into: bench}",
			[]string{`2:48+1 cut-by-comma remove reads only "nut" | write it in brackets: remove: [nut, {screw: 6}]`, `5:1+5 doubled-key |`}},
		{"positions without brackets", "dimensions:\n  D1: {what: Gap, at: {station: A, B, plane: [C]}}",
			[]string{`2:36+1 cut-by-comma station reads only "A" | write it in brackets: station: [A, B]`}},
		{"two places without braces", "steps:\n  - {step: nut, do: Take it off., remove: [nut, ring], into: C2, C3}",
			[]string{`2:66+2 cut-by-comma into reads only "C2" | or one for each part: into: {…: C2, …: C3}`, `5:1+5 doubled-key |`}},
		{"two numbers where one stands", "steps:\n  - {step: nut, do: Take it off., people: 2, 3}",
			[]string{`2:46+1 cut-by-comma people reads only "2" | one value stands here: people: 2`, `5:1+5 doubled-key |`}},
		{"two whole numbers with no blank", "steps:\n  - {step: nut, do: Take it off., people: 2,3}",
			[]string{`2:45+1 cut-by-comma people reads only "2" | one value stands here: people: 2`, `5:1+5 doubled-key |`}},
		{"two amounts where one stands", "parts:\n  nut: {name: Lock nut, mass: 2 kg, 3 kg}",
			[]string{`2:37+4 cut-by-comma mass reads only "2 kg" | one value stands here: mass: 2 kg`}},
		{"two marks where one stands", "steps:\n  - {step: nut, do: Take it off., hold: W1, W2}",
			[]string{`2:45+2 cut-by-comma hold reads only "W1" | one value stands here: hold: W1`, `5:1+5 doubled-key |`}},
		{"pieces of one part and another", "steps:\n  - {step: nut, do: Take it off., remove: {screw: 6, nut}, into: bench}",
			[]string{`2:54+3 cut-by-comma screw reads only "6" | write a number behind each: {screw: 6, nut: …}`, `5:1+5 doubled-key |`}},
		{"a part named again behind its pieces", "steps:\n  - {step: nut, do: Take it off., remove: {screw: 6, screw}, into: bench}",
			[]string{`2:54+5 cut-by-comma screw reads only "6" | name it once, with its number: {screw: 6}`, `5:1+5 doubled-key |`}},
		{"a list that cannot have numbers", "steps:\n  - {step: nut, do: Take it off., measure: {D1: 1}, D1, D2}",
			[]string{`2:53+2 cut-by-comma measure reads only what stands in { } | write it in brackets: measure: [D1, D2]`, `5:1+5 doubled-key |`}},
		{"an alias of nothing without its brackets", "steps:\n  - {step: nut, do: Take it off., measure: *D1, D2}",
			[]string{`2:44+3 unknown-alias nothing does above it | quotes`, `2:49+2 cut-by-comma measure reads only what is wrong above | write it in brackets: measure: […, D2]`, `5:1+5 doubled-key |`}},
		{"a step behind a reason", "steps:\n  - {step: nut, do: Take it off., after: {a: it is cold}, b}",
			[]string{`2:59+1 cut-by-comma after reads only what stands in { } | with the reason behind each: after: {…: …, …: …}`, `5:1+5 doubled-key |`}},
		{"percent first", "dimensions:\n  D1:\n    what: Gap\n    left: % of D2", []string{`4:11+7 bad-start cannot start with "%" | the number comes first: 25 % of D2`}},
		{"at sign", "parts:\n  a:\n    name: @text", []string{`3:11+5 bad-start cannot start with "@" | "@text"`}},
		{"grave accent", "parts:\n  a:\n    name: `text", []string{"3:11+5 bad-start cannot start with \"`\" | \"`text\""}},
		{"star and blank", "parts:\n  a:\n    name: * 4", []string{`3:11+3 bad-start cannot start with "*" | quotes`}},
		{"star and word", "parts:\n  a: {name: *b, count: 2}", []string{`2:13+2 unknown-alias nothing does above it | quotes`}},
		{"exclamation mark", "parts:\n  a: {name: !note this}", []string{`2:13+5 tag gets lost | quotes`}},
		{"an alias inside its anchor", "parts: &p\n  a: *p", []string{`2:6+2 alias-ring stands inside what it stands for | write out`}},
		{"merge key", "parts:\n  a: &a {name: x}\n  b: {<<: *a, name: y}", []string{`3:7+2 merge-key << is not read here | alias`}},
		{"two mistakes in one value each", "parts:\n  a: {name: @x}\n  b: {name: %y}\n  c: {nmae: z}",
			[]string{`2:13+2 bad-start "@" |`, `3:13+2 bad-start "%" |`, `4:7+4 unknown-key "nmae" is not a key of a part | did you mean name?`}},

		{"quotes end before the text", "parts:\n  a:\n    name: \"5/16\" bolt\n    count: two",
			[]string{`3:18+4 quotes goes on behind its closing quote | '"5/16" bolt'`, `4:12+3 number-form "two" is not a whole number from 1 up |`}},
		{"a quote inside single quotes", "parts:\n  a: {name: 'it's', count: 2}", []string{`2:17+2 quotes goes on behind its closing quote | written twice`}},
		{"quotes never closed", "parts:\n  a:\n    name: \"Bolt\n    count: 2", []string{`3:11+1 open-quote never closed | close them`}},
		{"quotes closed by the next quotes", "parts:\n  a:\n    name: \"Bolt\n    note: \"keep\"\n    count: 2", []string{`3:11+1 open-quote run on to line 4 | close them at the end of the text: "Bolt"`}},
		{"backslash", `parts:` + "\n  a: {name: \"C:\\parts\"}", []string{`2:16+2 escape a backslash in double quotes | single quotes`}},
		{"second colon", "cautions:\n  a:\n    signal: warning\n    hazard: Note: hot.\n    avoid: Gloves.", []string{`4:17+1 second-colon a second colon | "Note: hot."`}},
		{"no blank behind the colon", "parts:\n  a:\n    name:Bolt\n    count: 2", []string{`3:9+1 no-blank behind the colon of "name" | write: name: Bolt`}},
		{"no colon", "parts:\n  a:\n    count: 2\n    name: x\n    renew always\n", []string{`5:5+12 no-colon no colon stands in this line | write: renew: always`}},
		{"no colon behind the key of a map", "parts:\n  bolt\n    name: Bolt", []string{`2:3+4 no-colon no colon stands | key: value`}},
		{"no comma", "parts:\n  a: {name: Bolt count: 2}", []string{`2:18+5 no-comma no comma stands before "count" | parts the entries`}},
		{"brace not closed", "parts:\n  a: {name: Bolt\n  b: {name: Nut}", []string{`2:6+1 open-bracket the { that begins here is not closed | closing }`}},
		{"list not closed", "containers:\n  C1:\n    name: x\n    kind: bag\n    pockets: [a, b\n    keep: dry", []string{`5:14+1 open-bracket the [ that begins here is not closed before the next key | closing ]`}},
		{"one brace too many", "parts:\n  a: {name: Bolt}}", []string{`2:18+1 stray-bracket this } closes nothing | take it out`}},
		{"list behind its key", "containers:\n  C1:\n    name: x\n    kind: bag\n    pockets: - a", []string{`5:14+1 list-behind-key begins on a line of its own | [one, two]`}},
		{"empty entry of a list", "containers:\n  C1: {name: x, kind: bag, pockets: [, a]}", []string{`2:38+1 empty-entry nothing stands before this comma |`}},
		{"line between two indents", "parts:\n    a: {name: x}\n  b: {name: y}", []string{`3:3+12 indent begins 2 blanks in and belongs to nothing |`}},
		{"line too far in", "parts:\n  a:\n    name: x\n      count: 2", []string{`4:7+8 indent further in than the line above |`}},
		{"tabs", "parts:\n\ta:\n\t\tname: x\n\t\tnaem: y", []string{`2:1+1 tab tabs stand before the text of this line and 2 more | two blanks`, `4:3+4 unknown-key "naem" | did you mean name?`}},

		{"text cut by a number sign", "parts:\n  a:\n    name: Bolt #7", []string{`3:16+2 cut-by-hash reads only "Bolt" | "Bolt #7"`}},
		{"text cut by a number sign and a blank", "parts:\n  a:\n    name: Bolt # 7", []string{`3:16+3 cut-by-hash reads only "Bolt" | "Bolt # 7"`}},
		{"an ordinary comment", "parts:\n  a:\n    name: Bolt # of the cap", nil},
		{"no value", "parts:\n  a:\n    name: Bolt\n    note:", []string{`4:5+4 no-value no value stands behind "note" | take the key out`}},
		{"tilde and null", "parts:\n  a: {name: Bolt, note: ~, mass: null}", []string{`2:19+4 no-value "note" |`, `2:28+4 no-value "mass" |`}},
		{"empty quotes", "parts:\n  a: {name: ''}", []string{`2:14+1 no-value nothing stands in the quotes behind name |`}},
		{"doubled key", "parts:\n  a: {name: x, name: y}", []string{`2:16+4 doubled-key stands twice in this map |`}},
		{"map where a text belongs", "parts:\n  a: {name: x, note: {b: c}}", []string{`2:22+1 wrong-form note takes a text; here stands a map of keys |`}},
		{"list where a text belongs", "parts:\n  a: {name: x, note: [b]}", []string{`2:22+1 wrong-form here stands a list |`}},
		{"text where a map belongs", "parts:\n  a: Bolt", []string{`2:6+4 wrong-form part is a map of keys; here stands "Bolt" | {name: `}},
		{"a value that differs by two things", "dimensions:\n  D1: {what: x, left: {DE: {hot: a}}}", []string{`2:28+1 too-deep differs by one thing only | {DE: …, others: …}`}},
		{"empty list and map", "dimensions:\n  D1: {what: x, lost-by: [], left: {}}", []string{`2:26+1 empty-list lost-by |`, `2:36+1 empty-map left |`}},
		{"three lists of positions", "dimensions:\n  D1: {what: x, at: {a: [1, 2], b: [1, 2], c: [1, 2]}}", []string{`2:17+2 too-many-lists over 3 lists |`}},
		{"clock beside another list", "dimensions:\n  D1: {what: x, at: {plane: [A, B], place: clock}}", []string{`2:44+5 wrong-form clock stands alone | 90°`}},
		{"a log with half a row", "dimensions:\n  D1: {what: x, at: {every: 2 min, rows: 8.5, read: [hub]}}", []string{`2:42+3 number-form "8.5" | rows`}},
		{"range counted downward", "places: {gate: {names: 16 to 1}}", []string{`1:24+7 range-form counted upward | 1 to 16`}},
		{"two faces", "dimensions:\n  D1: {what: x, from: {a: b, c: d}}", []string{`2:23+1 wrong-form one part and one face |`}},

		{"numbers that are not written as by hand", "parts:\n  a: {name: x, count: 012}\n  b: {name: x, count: 1_000}\n  c: {name: x, count: 1e3}\n  d: {name: x, count: {DE: 0x1F, NDE: 2.0}}\n  e: {name: x, count: 0}",
			[]string{`2:23+3 number-form "012" | write: 12`, `3:23+5 number-form "1_000" | write: 1000`, `4:23+3 number-form "1e3" | all its digits`,
				`5:28+4 number-form "0x1F" |`, `5:39+3 number-form "2.0" |`, `6:23+1 number-form "0" |`}},
		{"yes and no", "options:\n  a: {what: x, fitted: on}\n  b: {what: x, fitted: y}\n  c: {what: x, fitted: True}\n  d: {what: x, fitted: \"no\"}",
			[]string{`2:24+2 yes-or-no fitted is yes or no; here stands "on" |`, `3:24+1 yes-or-no |`}},
		{"no day of the calendar", "job: {issued: 2026-02-30}", []string{`1:15+10 date-form no day of the calendar | 2026-03-02`}},
		{"a day written in another order", "job: {issued: 2.3.2026}", []string{`1:15+8 date-form |`}},
		{"the wrong language of keys", "parts: {a: {name: x}}\n", nil},

		{"marks", "dimensions:\n  d7: {what: x}\n  D08: {what: x}\n  D 9: {what: x}\n  C1: {what: x}\n  X1: {what: x}\n  D51: {what: x}\n  D7/DE: {what: x}\n  gap: {what: x}",
			[]string{`2:3+2 mark-form capital | write: D7`, `3:3+3 mark-form leading zero | write: D8`, `4:3+3 mark-form between letter and number | write: D9`,
				`5:3+2 mark-form mark of a container |`, `6:3+2 mark-form X marks are kept |`, `7:3+3 mark-kept D51 and above |`, `8:3+5 mark-form without its place | D7`, `9:3+3 mark-form is not a mark |`}},
		{"marks named by a step", "holds: {W1: {kind: hold, what: x}}\nbig: {B0: {part: x}}\nlay-down: {Y1234: {what: x}}\nsets: {Z1: {what: x}}",
			[]string{`2:7+2 mark-form "B0" is not a mark |`, `3:12+5 mark-form "Y1234" is not a mark |`, `4:8+2 mark-form no mark begins with Z |`}},
		{"a slash in a name", "parts:\n  cap/DE: {name: x}", []string{`2:3+6 name-form a slash parts a name from its place | cap-DE`}},
		{"others as a place", "places: {end: {others: {name: x}}}", []string{`1:16+6 name-form "others" stands for all |`}},
		{"second document", "parts: {a: {name: x}}\n# end\n---\nnmae: x", []string{`3:1+3 second-document not read |`, `1:1+5 missing-key |`, `1:1+5 missing-key |`, `1:1+5 missing-key |`}},
		{"invisible characters", "parts:\n  a: {name: \"x\u202ey\"}\n  b: {name: \"\\0\"}\n  c: {name: \"\\t\"}\n  d: {name: x\u2028y}",
			[]string{`2:15+1 invisible U+202E |`, `3:14+2 control-character U+0000 |`, `4:14+2 control-character a tab |`, `5:14+1 invisible U+2028 |`}},
	} {
		t.Run(m.name, func(t *testing.T) {
			t.Parallel()
			text := []byte(m.text + foundation)
			_, ps := Read("x.yaml", text)
			var missed []string
			if len(ps) != len(m.want) {
				missed = append(missed, fmt.Sprintf("%d problems, want %d", len(ps), len(m.want)))
			}
			for _, want := range m.want {
				found := false
				for _, p := range ps {
					head, rest, _ := strings.Cut(want, " ")
					code, rest, _ := strings.Cut(rest, " ")
					message, help, _ := strings.Cut(rest, "|")
					at := fmt.Sprintf("%d:%d+%d", p.Pos.Line, p.Pos.Col, p.Pos.Width)
					found = found || at == head && p.Code == code && strings.Contains(p.Message, strings.TrimSpace(message)) &&
						strings.Contains(strings.Join(p.Help, "\n"), strings.TrimSpace(help))
				}
				if !found {
					missed = append(missed, "missing: "+want)
				}
			}
			if missed != nil {
				t.Errorf("%s\ngot:\n%s", strings.Join(missed, "\n"), show(ps, "x.yaml", text))
			}
			for _, p := range ps {
				checkWording(t, p.Message)
			}
		})
	}
}

// checkWording sees that a message is one a planner can read.
func checkWording(t *testing.T, message string) {
	t.Helper()
	for _, word := range []string{"invalid", "failed to", "yaml:", "node", "scalar", "sequence", "mapping", "token", "string", "struct"} {
		if strings.Contains(strings.ToLower(message), word) {
			t.Errorf("message %q speaks of %q", message, word)
		}
	}
	if message == "" || strings.HasSuffix(message, ".") || strings.Contains(message, "\n") {
		t.Errorf("message %q is not one line without a full stop", message)
	}
}

func TestABracketOpenToTheEndOfTheFile(t *testing.T) {
	text := []byte("pack: 1\nparts: {a: {name: x}, b: {name: y\n\n")
	_, ps := Read("x.yaml", text)
	if len(ps) != 1 || ps[0].Code != "open-bracket" || ps[0].Pos.Line != 2 || ps[0].Pos.Col != 26 {
		t.Errorf("got:\n%s", show(ps, "x.yaml", text))
	}
}

func TestReferencesOfSteps(t *testing.T) {
	text := []byte(`pack: 1
equipment: {tag: T-1}
steps:
  - step: a
    do: Look.
    measure: [d7, D07/DE, C3, D9 D8]
    remove: [nut, {screw: 06}, [x]]
    into: {nut: C2, screw: B1}
    loosen: [J1, nut, j2]
    hold: W
    photo: maybe
`)
	d, ps := Read("x.yaml", text)
	want := map[string]string{
		"6:15": "write: D7", "6:19": "write: D7/DE", "6:27": "measure: [D7]", "6:31": "write: measure: [D9, D8]",
		"7:27": "write: 6", "7:32": "for example remove:", "8:28": "also takes: bench, scrap", "9:23": "write: J2", "10:11": "hold: W1", "11:12": "yes",
	}
	for _, p := range ps {
		at := fmt.Sprintf("%d:%d", p.Pos.Line, p.Pos.Col)
		if help, ok := want[at]; !ok || !strings.Contains(strings.Join(p.Help, "\n"), help) {
			t.Errorf("at %s the help is %q, want %q", at, p.Help, help)
		}
		delete(want, at)
		checkWording(t, p.Message)
	}
	if len(want) > 0 {
		t.Errorf("nothing is said at %v:\n%s", want, show(ps, "x.yaml", text))
	}
	// What was clearly meant is taken, so that nothing else is said of it later.
	s := d.Sections[0].Steps[0]
	if len(s.Measure) != 4 || s.Measure[0].Value != "D7" || s.Measure[1].Value != "D7/DE" || s.Measure[2].Value != "D9" {
		t.Errorf("measure is read as %v, want D7, D7/DE, D9 and D8", s.Measure)
	}
	if len(s.Loosen) != 3 || s.Loosen[2].Value != "J2" {
		t.Errorf("loosen is read as %v, want J1, nut and J2", s.Loosen)
	}
}
