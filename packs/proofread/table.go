package proofread

import (
	"matchmark/packs/def"
	"matchmark/packs/reading"
)

// checkTables looks at every map of limits in the order written, as at the rows of a
// table by size: none may have slipped by a factor of ten. Where the author has said
// what the sources say, the rows have been looked at. Rows for builds that this
// machine is not of are read here and nowhere else.
func (b *proofreader) checkTables() {
	for _, dd := range b.Def.Dimensions {
		if len(dd.Says) > 0 {
			continue
		}
		for _, v := range []def.Varying{dd.Found, dd.Left, dd.Reuse, dd.Repair} {
			b.checkTable(v)
		}
	}
}

func (b *proofreader) checkTable(v def.Varying) {
	var rows []*reading.Limit
	for _, by := range v.By {
		l, _ := b.Line(by.Value)
		if l == nil {
			return
		}
		rows = append(rows, l)
	}
	if row, f := reading.CheckTable(rows); f != nil {
		b.Fault(v.By[row].Value, f)
	}
}
