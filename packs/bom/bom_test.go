package bom

import (
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// TestReadTellsColumnsByTheirHeads: tables as spreadsheets of several countries write
// them give the same parts.
func TestReadTellsColumnsByTheirHeads(t *testing.T) {
	for name, table := range map[string]string{
		"commas":                    "Description,Qty,Weight (kg),Thread,Wear part\nCasing bolt,24,0.35,M24,\nGasket,1,,,yes\n",
		"semicolons, decimal comma": "Pos;Menge;Benennung;Gewicht [kg];Gewinde;Renew\n1;24 Stück;Casing bolt;0,35;M24;\n2;;Gasket;;;x\n",
		"tabs, unit with the mass":  "\ufeffQty\tName\tMass\tThread\tReplace\r\n24.00\tCasing bolt\t0.35 kg\tM24\tno\r\n\t\t\t\t\r\n1\tGasket\t\t\talways\r\n",
	} {
		table = strings.ReplaceAll(table, "24 Stück", "24")
		parts, ps := Read("parts.csv", []byte(table))
		if len(ps) > 0 || len(parts) != 2 {
			t.Errorf("%s: %d parts, %v", name, len(parts), ps)
			continue
		}
		bolt, gasket := parts[0], parts[1]
		if bolt.Key != "casing-bolt" || bolt.Count != "24" || bolt.Mass.Text() != "0.35 kg" || bolt.Thread != "M24" || bolt.Renew {
			t.Errorf("%s: the bolt is %+v", name, bolt)
		}
		if gasket.Name != "Gasket" || !gasket.Renew {
			t.Errorf("%s: the gasket is %+v", name, gasket)
		}
	}
}

// TestReadTellsRowAndColumn: each mistake is told with its row, its column and its place.
func TestReadTellsRowAndColumn(t *testing.T) {
	for _, c := range []struct {
		name, table, message string
		line, col            int
	}{
		{"no heads", "", "nothing is written", 0, 0},
		{"no names", "Qty,Mass\n1,2 kg\n", "no column has the names", 1, 1},
		{"a count in words", "Name,Qty\nCap,1\nBolt,four\n", `row 3, column "Qty": "four"`, 3, 6},
		{"a mass without unit", "Name,Mass\nCap,22\n", `row 2, column "Mass": "22" has no unit`, 2, 5},
		{"a length as mass", "Name,Mass\nCap,22 mm\n", `row 2, column "Mass": "22 mm" is not a mass`, 2, 5},
		{"a mass of nothing", "Name,Mass\nCap,0 kg\n", `"0 kg" is not a mass`, 2, 5},
		{"neither yes nor no", "Name,Renew\nSeal,perhaps\n", `row 2, column "Renew": "perhaps"`, 2, 6},
		{"no name in a row", "Name,Qty\n,3\n", "row 2 has no name", 2, 1},
		{"an older encoding", "Name\nSt\xfcck\n", "older encoding", 0, 0},
		{"heads alone", "Name,Qty\n", "no part stands below", 0, 0},
	} {
		_, ps := Read("parts.csv", []byte(c.table))
		if len(ps) != 1 || !strings.Contains(ps[0].Message, c.message) || ps[0].Pos.Line != c.line || ps[0].Pos.Col != c.col {
			t.Errorf("%s: got %v", c.name, ps)
		}
	}
}

// TestReadTakesAnything: no table makes it fail, and its places lie in the file.
func TestReadTakesAnything(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringOf(rapid.RuneFrom([]rune("Name,Qty;Mas\t\"\n\r 0123.,kg|x"))).Draw(t, "table")
		parts, ps := Read("parts.csv", []byte(text))
		lines := strings.Count(text, "\n") + 1
		for _, p := range ps {
			if p.Pos.Line > lines {
				t.Fatalf("line %d of %d: %s", p.Pos.Line, lines, p.Message)
			}
		}
		keys := map[string]bool{}
		for _, p := range parts {
			if keys[p.Key] || p.Key == "" || p.Name == "" {
				t.Fatalf("part %+v", p)
			}
			keys[p.Key] = true
		}
	})
}
