package packs

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// readInstruments takes over what readings are taken with.
func (b *builder) readInstruments() {
	b.instruments = map[string]*job.Instrument{}
	for _, di := range b.def.Instruments {
		in := &job.Instrument{At: di.Key.At, Key: di.Key.Value, Name: di.Name.Value, Number: di.Number.Value}
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
		b.job.Instruments = append(b.job.Instruments, in)
	}
}

// readDims repeats every dimension over its places and reads its limits.
func (b *builder) readDims() {
	b.dims = map[string][]*job.Dim{}
	for _, dd := range b.def.Dimensions {
		places := b.over(dd.Each)
		at := b.positions(dd.At)
		for _, v := range []struct {
			v    def.Varying
			what string
		}{
			{dd.What, "what is measured"}, {dd.With, ""}, {dd.ViewedFrom, ""}, {dd.Pushed, ""}, {dd.Load, ""}, {dd.Plane, ""},
			{dd.Reuse, ""}, {dd.Repair, ""}, {dd.Source, ""}, {dd.Nominal, ""}, {dd.Over, ""}, {dd.Under, ""}, {dd.Out, ""}, {dd.Formula, ""},
		} {
			b.checkVarying(v.v, v.what, places)
		}
		b.checkLimitNames(dd.Found, "", places, at)
		b.checkLimitNames(dd.Left, "the limit", places, at)
		for _, pl := range places {
			d := b.readDim(dd, pl, at)
			b.dims[d.Base] = append(b.dims[d.Base], d)
			b.job.Dims = append(b.job.Dims, d)
		}
	}
}

func (b *builder) readDim(dd *def.Dimension, pl job.Place, at job.Positions) *job.Dim {
	d := &job.Dim{
		At: dd.Mark.At, Mark: pl.Mark(dd.Mark.Value), Base: dd.Mark.Value, Place: pl,
		What: valueAt(pl, dd.What), Kind: dd.Kind.Value, ViewedFrom: valueAt(pl, dd.ViewedFrom), Positions: at,
		State: job.State{
			With: valueAt(pl, dd.With), Pushed: valueAt(pl, dd.Pushed), Load: valueAt(pl, dd.Load), Plane: valueAt(pl, dd.Plane),
			Hot: dd.State.Value == "hot", Cold: dd.State.Value == "cold", OnThe: dd.OnThe.Value,
		},
		Over: valueAt(pl, dd.Over), Under: valueAt(pl, dd.Under), Out: valueAt(pl, dd.Out), Source: valueAt(pl, dd.Source), Note: dd.Note.Value,
		Zones:         map[*reading.Limit]string{},
		Wrote:         job.Lines{Found: textAt(pl, dd.Found), Left: textAt(pl, dd.Left), Reuse: textAt(pl, dd.Reuse), Repair: textAt(pl, dd.Repair), Formula: textAt(pl, dd.Formula)},
		LostByNothing: len(dd.LostBy) == 1 && dd.LostBy[0].Value == nothing,
	}
	if d.ViewedFrom == "" {
		d.ViewedFrom = pl.ViewedFrom
	}
	d.From, d.To, d.Of = b.faceAt(dd.From, pl), b.faceAt(dd.To, pl), b.faceAt(dd.Of, pl)
	d.OneSided = valueAt(pl, dd.Found) == notTaken
	if dd.By.Written() {
		if in, ok := b.instruments[dd.By.Value]; ok {
			d.By = in
		} else {
			b.unknown(dd.By, "instrument", knownTo(b, b.instruments), "instruments")
		}
	}
	d.Found, d.FoundBy = b.limits(d, dd.Found)
	d.Left, d.LeftBy = b.limits(d, dd.Left)
	d.Reuse, d.Repair = b.limit(d, textAt(pl, dd.Reuse)), b.limit(d, textAt(pl, dd.Repair))
	if dd.Spare.Written() {
		d.Spare, _ = wholeNumber(dd.Spare)
	}
	d.Critical = dd.Critical.Value == "yes" || d.Judged() && dd.Critical.Value != "no"
	b.readStamped(d, dd)
	b.readShimPart(d, dd)
	if !textAt(pl, dd.Formula).Written() && !dd.OneIs.Written() && (d.Shims != nil || !dd.Shims.Written()) {
		b.readBox(d, dd)
	}
	b.readWarm(d, dd)
	b.readAdjuster(d, dd, pl)
	return d
}

// notTaken is what found: says of a dimension that is set, and not measured as
// found.
const notTaken = "not taken"

// readBox sizes the write-in box of one reading from its limits, its nominal size
// and the range of its instrument.
func (b *builder) readBox(d *job.Dim, dd *def.Dimension) {
	hint := b.hint(d, dd)
	limits := d.Limits()
	if len(limits) == 0 {
		if !dd.Found.Written() && !dd.Left.Written() && !dd.Reuse.Written() && !dd.Repair.Written() {
			b.problems.Add(dd.Mark.At, "no-limit", d.Base+" says neither what it must be nor that it is only recorded",
				"left: 0.05 to 0.12 mm", "or found: record to 0.01 mm")
		}
		return
	}
	box, err := reading.BoxFor(limits, hint)
	if err != nil {
		at := dd.Mark.At
		if dd.By.Written() {
			at = dd.By.At
		}
		help := "nominal: 25.00 mm"
		if limits[0].Unit().Dimension() == units.Rise {
			help = "a rise is the difference of two readings: formula: D1 - D2, and take by: out"
		}
		b.problems.Add(at, "box-size", d.Base+": "+err.Error(), help)
		return
	}
	d.Box = box
}

// hint is what is known of the size of a reading besides its limits.
func (b *builder) hint(d *job.Dim, dd *def.Dimension) reading.Hint {
	hint := reading.Hint{Signed: dd.Sign.Value == "yes"}
	if nominal := textAt(d.Place, dd.Nominal); nominal.Written() {
		if q, ok := b.quantity(nominal, "25 mm"); ok {
			hint.Nominal = &q
		}
	}
	if d.By != nil {
		hint.High, hint.Reads = d.By.High, d.By.Reads
	}
	if s := d.Shims; s != nil {
		hint.High, hint.Reads = &s.Thickest, &s.Step
	}
	return hint
}

// faceAt resolves a face at a place. A part that stands at several places needs
// one named.
func (b *builder) faceAt(f def.Face, pl job.Place) job.Face {
	if !f.Part.Written() {
		return job.Face{}
	}
	found := b.partsAt(f.Part, pl)
	if len(found) > 1 {
		b.problems.Add(f.Part.At, "which-place", source.Quote(f.Part.Value)+" stands at several places", "name the place: "+found[0].Place.Mark(found[0].Key))
	}
	if len(found) != 1 {
		return job.Face{}
	}
	return job.Face{Part: found[0], Name: f.Face.Value}
}

// dimsAt resolves the mark of a dimension in a step's list: D7, D7/DE.
func (b *builder) dimsAt(t source.Text, from job.Place) []*job.Dim {
	key, label, named := cut(t.Value)
	all, ok := b.dims[key]
	if !ok {
		b.unknown(t, "dimension", knownTo(b, b.dims), "dimensions")
		return nil
	}
	return pick(b, t, "dimension", all, func(d *job.Dim) job.Place { return d.Place }, from, label, named)
}

// where the place of a dimension's limit stands, for problems about it.
func limitPos(dd *def.Dimension, pl job.Place) source.Pos {
	if t := textAt(pl, dd.Left); t.Written() {
		return t.At
	}
	return dd.Mark.At
}
