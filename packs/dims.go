package packs

import (
	"math/big"

	"matchmark/packs/def"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/thread"
	"matchmark/packs/units"
)

// readInstruments takes over what readings are taken with.
func (b *builder) readInstruments() {
	b.instruments = map[string]*Instrument{}
	for _, di := range b.def.Instruments {
		in := &Instrument{At: di.Key.At, Key: di.Key.Value, Name: di.Name.Value, Number: di.Number.Value}
		if in.Name == "" {
			in.Name = in.Key
		}
		if di.Range.Written() {
			low, high, err := units.ParseRange(di.Range.Value)
			if err != nil {
				b.fault(di.Range, err, "write it as 0 to 150 mm")
			} else {
				in.Low, in.High = &low, &high
			}
		}
		if di.Reads.Written() {
			if q, ok := b.quantity(di.Reads, "0.02 mm"); ok {
				in.Reads = &q
			}
		}
		b.instruments[in.Key] = in
	}
}

// readDims repeats every dimension over its places and reads its limits.
func (b *builder) readDims() {
	b.dims = map[string][]*Dim{}
	for _, dd := range b.def.Dimensions {
		places := b.over(dd.Each)
		for _, v := range []struct {
			v    def.Varying
			what string
		}{{dd.What, "what is measured"}, {dd.With, ""}, {dd.ViewedFrom, ""}, {dd.Left, ""}, {dd.Reuse, ""}, {dd.Source, ""}, {dd.Nominal, ""}} {
			b.checkVarying(v.v, v.what, places)
		}
		for _, pl := range places {
			d := b.readDim(dd, pl)
			b.dims[d.Base] = append(b.dims[d.Base], d)
			b.job.Dims = append(b.job.Dims, d)
		}
	}
}

func (b *builder) readDim(dd *def.Dimension, pl Place) *Dim {
	d := &Dim{
		At: dd.Mark.At, Mark: pl.mark(dd.Mark.Value), Base: dd.Mark.Value, Place: pl,
		What: pl.value(dd.What), Kind: dd.Kind.Value, With: pl.value(dd.With), ViewedFrom: pl.value(dd.ViewedFrom),
		Over: pl.value(dd.Over), Under: pl.value(dd.Under), Out: pl.value(dd.Out), Source: pl.value(dd.Source),
	}
	if d.ViewedFrom == "" {
		d.ViewedFrom = pl.ViewedFrom
	}
	d.From, d.To, d.Of = b.faceAt(dd.From, pl), b.faceAt(dd.To, pl), b.faceAt(dd.Of, pl)
	d.Positions = positions(dd.At)
	if dd.By.Written() {
		if in, ok := b.instruments[dd.By.Value]; ok {
			d.By = in
		} else {
			b.unknown(dd.By, "instrument", mapKeys(b.instruments), "instruments")
		}
	}
	d.Found, d.Left, d.Reuse = b.limit(pl.at(dd.Found)), b.limit(pl.at(dd.Left)), b.limit(pl.at(dd.Reuse))
	if dd.Adjust.Written() {
		b.readAdjuster(d, dd, pl)
	}
	b.readBox(d, dd)
	return d
}

// limit reads one line in the language of limits, nil when none is written or it
// can't be read.
func (b *builder) limit(t def.Text) *reading.Limit {
	if !t.Written() {
		return nil
	}
	l, fault := reading.Parse(t.Value)
	if fault != nil {
		b.fault(t, fault)
		return nil
	}
	return l
}

// readBox sizes the write-in box of one reading from its limits, its nominal size
// and the range of its instrument.
func (b *builder) readBox(d *Dim, dd *def.Dimension) {
	hint := reading.Hint{}
	if nominal := d.Place.at(dd.Nominal); nominal.Written() {
		if q, ok := b.quantity(nominal, "25 mm"); ok {
			hint.Nominal = &q
		}
	}
	if d.By != nil {
		hint.High, hint.Reads = d.By.High, d.By.Reads
	}
	hint.Signed = dd.Sign.Value == "yes"
	var limits []*reading.Limit
	for _, l := range []*reading.Limit{d.Found, d.Left, d.Reuse} {
		if l != nil {
			limits = append(limits, l)
		}
	}
	if len(limits) == 0 {
		if !dd.Found.Written() && !dd.Left.Written() && !dd.Reuse.Written() {
			b.problems.Add(dd.Mark.At, "no-limit", d.Base+" says neither what it must be nor that it is only recorded",
				"left: 0.05 to 0.12 mm", "or found: record to 0.01 mm")
		}
		return
	}
	box, err := reading.BoxFor(limits, hint)
	if err != nil {
		b.problems.Add(dd.Mark.At, "box-size", d.Base+": "+err.Error(), "nominal: 25.00 mm")
		return
	}
	d.Box = box
}

// faceAt resolves a face at a place. A part that stands at several places needs
// one named.
func (b *builder) faceAt(f def.Face, pl Place) Face {
	if !f.Part.Written() {
		return Face{}
	}
	found := b.partsAt(f.Part, pl)
	if len(found) > 1 {
		b.problems.Add(f.Part.At, "which-place", quote(f.Part.Value)+" stands at several places", "name the place: "+found[0].Place.mark(found[0].Key))
	}
	if len(found) != 1 {
		return Face{}
	}
	return Face{Part: found[0], Name: f.Face.Value}
}

// readAdjuster works out what one flat of the adjuster's nut moves it.
func (b *builder) readAdjuster(d *Dim, dd *def.Dimension, pl Place) {
	found := b.partsAt(dd.Adjust, pl)
	if len(found) != 1 {
		return
	}
	d.Adjuster = found[0]
	th := found[0].Thread
	if th == nil {
		return
	}
	length := func(mm thread.Mm) *units.Quantity {
		return &units.Quantity{Number: units.Exact(new(big.Rat).SetFloat64(float64(mm)), 3), Unit: units.Millimetre}
	}
	d.PerTurn = length(th.Lead())
	if n := found[0].Flats; n > 0 {
		if travel, err := th.PerFlat(n); err == nil {
			d.PerFlat = length(travel)
		}
	}
}

// positions reads the places at which a dimension is measured.
func positions(p def.Positions) Positions {
	switch {
	case len(p.Axes) == 0:
		return Positions{}
	case len(p.Axes) == 1 && len(p.Axes[0].Values) == 1 && p.Axes[0].Values[0].Value == "clock":
		return Positions{Kind: Clock, Cols: []string{"0°", "90°", "180°", "270°"}}
	case len(p.Axes) == 1:
		out := Positions{Kind: Row, ColName: p.Axes[0].Name.Value, Cols: texts(p.Axes[0].Values)}
		if len(out.Cols) > 4 {
			return Positions{Kind: Grid, RowName: out.ColName, Rows: out.Cols}
		}
		return out
	default: // the reader allows two lists at most
		return Positions{
			Kind:    Grid,
			RowName: p.Axes[0].Name.Value, Rows: texts(p.Axes[0].Values),
			ColName: p.Axes[1].Name.Value, Cols: texts(p.Axes[1].Values),
		}
	}
}

func texts(list []def.Text) []string {
	out := make([]string, len(list))
	for i, t := range list {
		out[i] = t.Value
	}
	return out
}

// dimsAt resolves the mark of a dimension in a step's list: D7, D7/DE.
func (b *builder) dimsAt(t def.Text, from Place) []*Dim {
	key, label, named := cut(t.Value)
	all, ok := b.dims[key]
	if !ok {
		b.unknown(t, "dimension", mapKeys(b.dims), "dimensions")
		return nil
	}
	return pick(b, t, "dimension", all, func(d *Dim) Place { return d.Place }, from, label, named)
}

// where the place of a dimension's limit stands, for problems about it.
func limitPos(dd *def.Dimension, pl Place) source.Pos {
	if t := pl.at(dd.Left); t.Written() {
		return t.At
	}
	return dd.Mark.At
}
