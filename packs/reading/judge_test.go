package reading

import (
	"strings"
	"testing"

	"matchmark/packs/units"
)

// read makes readings of texts; "-" is not taken.
func read(t *testing.T, texts string) []*units.Quantity {
	t.Helper()
	var out []*units.Quantity
	for _, s := range strings.Split(texts, ", ") {
		if s == "" {
			continue
		}
		if s == "-" {
			out = append(out, nil)
			continue
		}
		q := size(t, s)
		out = append(out, &q)
	}
	return out
}

// The verdicts follow from the meaning of the words; there is no outside source
// for that. The numbers of the worked-out targets are sums done by hand.
func TestJudge(t *testing.T) {
	others := map[Mark]string{
		"D1": "120.061 mm", "D2": "120.011 mm", "D4": "2000 mm", "D5": "1.00 mm, 1.10 mm, 1.20 mm", "D6": "0.40 mm",
		"D8": "", "D9": "1.00 mm, -", "D10": "20 °C", "D11": "5 N",
		"D12": "192.0 in", "D13": "54.0 in", "D14": "0.0 in",
	}
	for _, c := range []struct {
		limit, readings, found string
		want                   Verdict
		why                    string
	}{
		{"0.05 to 0.12 mm", "0.05 mm", "", In, ""},
		{"0.05 to 0.12 mm", "0.12 mm", "", In, ""},
		{"0.05 to 0.12 mm", "0.121 mm", "", Over, ""},
		{"0.05 to 0.12 mm", "0.049 mm", "", Under, ""},
		{"0.05 to 0.12 mm", "0.04 mm, 0.13 mm", "", Out, ""},
		{"0.05 to 0.12 mm", "0.06 mm, 0.13 mm, 0.07 mm", "", Over, ""},
		{"0.05 to 0.12 mm", "0.06 mm, -", "", NoVerdict, "reading 2 of 2 is not taken"},
		{"0.05 to 0.12 mm", "0.13 mm, -", "", Over, "reading 2 of 2 is not taken"},
		{"0.05 to 0.12 mm", "", "", NoVerdict, "nothing is read yet"},
		{"0.05 to 0.12 mm", "0.004 in", "", In, ""}, // 0.1016 mm
		{"0.05 to 0.12 mm", "5 N", "", NoVerdict, "is a length, not a force"},
		{"80.00 +0.02/-0.00 mm", "80.02 mm", "", In, ""},
		{"80.00 +0.02/-0.00 mm", "79.999 mm", "", Under, ""},
		{"3/16 +/- 1/32 in", "7/32 in", "", In, ""},
		{"3/16 +/- 1/32 in", "15/64 in", "", Over, ""},
		{"80 +/- 5 °C", "85 °C", "", In, ""},
		{"80 +/- 5 °C", "185.1 °F", "", Over, ""}, // 85.06 °C
		{"exactly 8 pcs", "8 pcs", "", In, ""},
		{"exactly 8 pcs", "7 pcs", "", Under, ""},
		{"as found +/- 0.10 mm", "2.45 mm", "2.35 mm", In, ""},
		{"as found +/- 0.10 mm", "2.46 mm", "2.35 mm", Over, ""},
		{"as found +/- 0.10 mm", "2.40 mm, 1.00 mm", "2.35 mm, 1.20 mm", Under, ""},
		{"as found +/- 0.10 mm", "2.40 mm", "", NoVerdict, "nothing was written as found"},
		{"as found +/- 0.10 mm", "2.40 mm, 2.40 mm", "2.35 mm", NoVerdict, "1 readings as found, 2 now"},
		{"mean as found +/- 0.10 mm", "1.00 mm, 2.00 mm", "1.20 mm, 1.60 mm", In, ""},
		{"mean 1.10 to 1.40 mm and spread at most 0.10 mm", "1.20 mm, 1.30 mm", "", In, ""},
		{"mean 1.10 to 1.40 mm and spread at most 0.10 mm", "1.20 mm, 1.31 mm", "", Over, ""},
		{"mean 1.10 to 1.40 mm and spread at most 0.10 mm", "1.20 mm, -", "", NoVerdict, "reading 2 of 2 is not taken"},
		{"sum 0.80 to 0.85 mm", "0.50 mm, 0.25 mm, 0.10 mm", "", In, ""},
		{"20 to 60 °C and spread at most 10 C rise", "30 °C, 41 °C", "", Over, ""},
		// 120.061 - 120.011 is 0.050 exactly, so this is on the limit.
		{"at most (D1 - D2)", "0.050 mm", "", In, ""},
		{"at most (D1 - D2)", "0.0501 mm", "", Over, ""},
		{"D1 - D2 + 0.20 mm +/- 0.03 mm", "0.28 mm", "", In, ""},
		{"at most 0.5 mm per m of D4", "1.0 mm", "", In, ""},
		{"at most 0.5 mm per m of D4", "1.001 mm", "", Over, ""},
		// Run-out of a vertical shaft: 0.002 in x length / diameter of the thrust runner
		// (Bureau of Reclamation, FIST 2-7, appendix C): 192 in and 54 in give 0.00711 in.
		{"at most 0.002 in per D13 of D12", "0.0071 in", "", In, ""},
		{"at most 0.002 in per D13 of D12", "0.0072 in", "", Over, ""},
		{"at most 0.002 in per D14 of D12", "0.0072 in", "", NoVerdict, "nothing is for each of that"},
		{"at most 25 % of D6", "0.10 mm", "", In, ""},
		{"at most 25 % of D6", "0.11 mm", "", Over, ""},
		{"0.5 x D6 +/- 0.02 mm", "0.22 mm", "", In, ""},
		{"half of (D1 - D2) +/- 0.005 mm", "0.030 mm", "", In, ""},
		{"mean of D5 and D6 +/- 0.005 mm", "0.930 mm", "", In, ""}, // (1.00 + 1.10 + 1.20 + 0.40) / 4 = 0.925
		{"at least largest of D5", "1.20 mm", "", In, ""},
		{"at least smallest of D5 and D6", "0.39 mm", "", Under, ""},
		{"at most spread of D5", "0.20 mm", "", In, ""},
		{"at most sum of D5", "3.31 mm", "", Over, ""},
		{"at least D5", "1.00 mm, 1.10 mm, 1.19 mm", "", Under, ""}, // box by box
		{"at least D5", "1.00 mm", "", NoVerdict, "write mean of D5"},
		{"at least D8", "1.00 mm", "", NoVerdict, "D8 is not yet read"},
		{"at least mean of D9", "1.00 mm", "", NoVerdict, "reading 2 of 2 is not taken"},
		{"D10 + 10 C rise +/- 2 °C", "32 °C", "", In, ""},
		{"10 C rise + D10 +/- 2 °C", "33 °C", "", Over, ""},
		{"at most half of D10", "10 °C", "", NoVerdict, "a share of a temperature"},
		{"at most D11", "1.00 mm", "", NoVerdict, "is a force, not a length"},
		{"D1 to D2", "120.05 mm", "", NoVerdict, "the lower limit works out as 120.061 mm, above the upper one"},
		{"about D2", "120.00 mm", "", NoVerdict, "the source gives no tolerance"},
		{"record", "1 mm", "", NoVerdict, "nothing to judge"},
	} {
		env := Env{Found: read(t, c.found), Readings: func(m Mark) []*units.Quantity { return read(t, others[m]) }}
		j := limit(t, c.limit).Judge(read(t, c.readings), env)
		why := ""
		for _, f := range j.Findings {
			why += f.Why + "; "
			if f.Verdict == NoVerdict && f.Why == "" {
				t.Errorf("%s: no verdict and no reason", c.limit)
			}
		}
		if j.Verdict != c.want || !strings.Contains(why, c.why) {
			t.Errorf("%q, read %q, found %q: verdict %d because %q, want %d because %q", c.limit, c.readings, c.found, j.Verdict, why, c.want, c.why)
		}
	}
}

func TestJudgeTellsTheEnds(t *testing.T) {
	j := limit(t, "as found +/- 0.10 mm").Judge(read(t, "2.40 mm"), Env{Found: read(t, "2.35 mm")})
	f := j.Findings[0]
	if f.Low.Text() != "2.25 mm" || f.High.Text() != "2.45 mm" || f.Value.Text() != "2.40 mm" {
		t.Errorf("from %s to %s, read %s", f.Low.Text(), f.High.Text(), f.Value.Text())
	}
}

func TestJudgeAnswer(t *testing.T) {
	for _, c := range []struct {
		limit, answer, found string
		want                 Verdict
	}{
		{"none", "none", "", In}, {"none", "some", "", Out}, {"none", "", "", NoVerdict},
		{"must be free", "yes", "", In}, {"must be free", "no", "", Out},
		{"choose A or B", "A", "", In}, {"choose A or B", "C", "", NoVerdict},
		{"yes or no", "no", "", NoVerdict},
		{"as found", "size M", "size M", In}, {"as found", "size M", "size L", Out}, {"as found", "size M", "", NoVerdict},
		{"0.05 to 0.12 mm", "yes", "", NoVerdict},
	} {
		if got := limit(t, c.limit).JudgeAnswer(c.answer, c.found); got != c.want {
			t.Errorf("%q answered %q, found %q: %d, want %d", c.limit, c.answer, c.found, got, c.want)
		}
	}
}

func TestFormula(t *testing.T) {
	env := Env{Readings: func(m Mark) []*units.Quantity {
		return read(t, map[Mark]string{"D1": "120.061 mm", "D2": "120.011 mm", "D3": "0.4724 in"}[m])
	}}
	for typed, want := range map[string]string{
		"D1 - D2":                  "0.050 mm",
		"D1 - D2 + 0.08 mm":        "0.130 mm",
		"mean of D1 and D2":        "120.036 mm",
		"D1 - D3":                  "108.06204 mm", // 0.4724 in is 11.99896 mm
		"0.5 x (D1 - D2)":          "0.0250 mm",
		"D1 - 10 x (D1 - D2)":      "119.561 mm",
		"largest of D1 and D2":     "120.061 mm",
		"smallest of D1 and D2":    "120.011 mm",
		"sum of D1 and D2 - D2":    "120.061 mm",
		"10 % of spread of D1":     "0 mm",
		"20 mm per m of (D1 - D2)": "0.001 mm",
	} {
		v, fault := ParseFormula(typed)
		if fault != nil {
			t.Errorf("%q: %s", typed, fault.Message)
			continue
		}
		got, err := v.Work(env)
		if err != nil || got.Number.Cmp(size(t, want).Number) != 0 || got.Unit != units.Millimetre {
			t.Errorf("%q is %s, %v; want %s", typed, got.Text(), err, want)
		}
		if again, fault := ParseFormula(v.Text()); fault != nil || again.Text() != v.Text() {
			t.Errorf("%q prints as %q, which does not read", typed, v.Text())
		}
	}
	for typed, code := range map[string]string{
		"12.5 mm": "formula", "D1 - D2 +/- 0.1 mm": "formula", "D1 - 0.20": "no-unit", "D1-D2": "blanks", "D1 - 0.20 mm - 0.1 in": "two-units", "": "empty",
	} {
		if _, fault := ParseFormula(typed); fault == nil || fault.Code != code {
			t.Errorf("%q: %+v, want %s", typed, fault, code)
		}
	}
}
