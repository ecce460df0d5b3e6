package units

import (
	"slices"
	"strings"

	"matchmark/packs/nearest"
)

// noUnit is the fault of a number without its unit.
func noUnit(text, number string) *Fault {
	runes := []rune(text)
	end := skipBlanks(runes, len([]rune(number)))
	rest := string(runes[min(end, len(runes)):])
	if rest == "" {
		return &Fault{Width: len(runes), Code: "no-unit", Message: "no unit: " + text + " what?", Help: []string{"for example " + number + " mm"}}
	}
	return unknownUnit(rest, end, number)
}

// unknownUnit names the nearest unit for what stands behind a number.
func unknownUnit(word string, offset int, number string) *Fault {
	f := &Fault{Offset: offset, Width: len([]rune(word)), Code: "unknown-unit", Message: "\"" + word + "\" is not a unit known here"}
	if write, say := UnitHint(word); write != "" {
		f.Message += ": " + say
		f.Help = []string{number + " " + write}
		return f
	}
	if known := Multiples(word); known != nil {
		f.Help = []string{"one of: " + strings.Join(known, ", ")}
		return f
	}
	if near := nearest.Word(word, UnitWords()); near != "" {
		f.Help = []string{number + " " + near}
		return f
	}
	f.Help = []string{"one of: " + strings.Join(UnitWords(), ", ")}
	return f
}

// Multiples lists the units of one dimension for a word that is one of them with another prefix of
// the SI before it: the unit alone looks much like it, and is a thousand times off. A nearest word
// that differs in the prefix alone is as far off.
func Multiples(word string) []string {
	for _, p := range []string{"m", "k", "M", "G", "T", "µ", "μ", "u", "p"} {
		rest, ok := strings.CutPrefix(word, p)
		if !ok || rest == "" || strings.HasPrefix(rest, p) { // a letter typed twice is a slip
			continue
		}
		for i, s := range spellings {
			if s.text == rest || s.print == rest {
				return WordsOf(Unit(i).Dimension())
			}
		}
	}
	return nil
}

// UnitHint tells what to write for a unit that is not read, because it can mean
// two things or has a shorter spelling here, and says so in words; both are "" for
// any other word.
func UnitHint(word string) (write, say string) {
	w := strings.ToLower(word)
	for _, h := range unitHints {
		if slices.Contains(strings.Fields(h.typed), w) {
			if h.say != "" {
				return h.write, h.say
			}
			return h.write, "write " + h.write
		}
	}
	return "", ""
}

var unitHints = []struct{ typed, write, say string }{
	{"kgs kilo kilos kilogram kilograms kilogramme kilogrammes", "kg", ""},
	{"lbs pound pounds", "lb", ""},
	{"mkg kpm m-kg kp-m", "N·m", "1 mkg is 9.81 N·m; work it out and write N·m"},
	{"n-m newton-metre newton-meter newtonmetre", "N·m", ""},
	{"ton tons to tonne tonnes", "t", "2000 lb, 2240 lb or 1000 kg? Write t for 1000 kg, or lb"},
	{"\" ” ″ inches", "in", ""},
	{"' ’ ′ feet foot", "ft", ""},
	{"thou thous", "mil", "write mil, or in with three decimals"},
	{"millimeter millimeters millimetre millimetres mms", "mm", ""},
	{"micron microns micrometre micrometer", "µm", ""},
	{"ksi", "MPa", "write MPa or psi"},
	{"kgf kp", "N", ""},
	{"kgm kgfm", "N·m", ""},
	{"ft-lb ft·lb ft-lbs ftlb lbf-ft lbf·ft foot-pounds", "lb-ft", ""},
	{"in-lb in·lb in-lbs inlb lbf-in lbf·in inch-pounds", "lb-in", ""},
	{"degc degf", "°C", "write °C or °F"},
	{"degree degrees", "°", "write ° for an angle, °C or °F for a temperature"},
	{"percent", "%", ""},
	{"pieces pc pce each", "pcs", ""},
	{"hrs hours hour hr", "h", ""},
	{"minutes minute mins", "min", ""},
	{"seconds second sec", "s", ""},
	{"kilowatt kilowatts kw", "kW", ""},
	{"litre litres liter liters", "l", ""},
	{"mohm mohms m-ohm", "megohm", "milliohm or megohm? The two are a thousand million apart; write megohm or milliohm in full"},
	{"kohm kohms", "kilohm", ""},
	{"gohm gohms", "gigohm", ""},
	{"tohm tohms", "teraohm", ""},
	{"uohm µohm μohm microohm micro-ohm", "microhm", ""},
	{"amp amps ampere amperes", "A", ""},
	{"volt volts", "V", ""},
	{"vdc vac", "V", "write V alone; DC or AC goes into the words of the reading"},
	{"db(a) dba", "dB", "write dB alone; how it is weighted goes into the words of the reading"},
	{"bar(g) barg", "bar", "write bar alone; that it is above the air goes into the words of the reading"},
	{"hertz cps", "Hz", ""},
	{"rpm rev/min u/min 1/min min-1 r/min revs/min", "rpm", ""},
	{"lpm", "l/min", ""},
	{"l/s lps", "l/min", "1 l/s is 60 l/min; work it out and write l/min"},
	{"kg/cm2 kg/cm² kgf/cm2 kgf/cm²", "bar", "1 kg/cm2 is 0.981 bar; work it out and write bar"},
	{"hpa", "mbar", "1 hPa is 1 mbar; write mbar"},
	{"m3/min m³/min", "m3/h", "1 m3/min is 60 m3/h; work it out and write m3/h"},
	{"gpm", "US gal/min", "US gallons are meant? Write US gal/min, or l/min"},
	{"gal gallon gallons", "US gal", "US gallons are meant? Write US gal, or l"},
	{"drop drops dpm", "drops/min", "write drops/min, counted over a full minute"},
	{"brinell", "HB", ""},
	{"hr rockwell", "HRC", ""},
	{"shore", "Shore A", ""},
}

// WordsOf lists the units of one dimension as they are typed.
func WordsOf(d Dimension) []string {
	var out []string
	for i, s := range spellings {
		if s.text != "" && Unit(i).Dimension() == d {
			out = append(out, s.text)
		}
	}
	return out
}

// UnitWords lists the units as they are typed, in the order of their table.
func UnitWords() []string {
	var out []string
	for _, s := range spellings {
		if s.text != "" {
			out = append(out, s.text)
		}
	}
	return out
}
