package expand

import (
	"cmp"
	"strconv"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// mostAtOnce is how many instruments of one kind are used at once at the most: each has a line
// of its own on the gather list; common practice, no source.
const mostAtOnce = 20

// readInstruments takes over what readings are taken with.
func (b *builder) readInstruments() {
	b.Instruments = map[string]*job.Instrument{}
	for _, di := range b.Def.Instruments {
		in := &job.Instrument{At: di.Key.At, Key: di.Key.Value, Name: di.Name.Value, Number: di.Number.Value, Count: 1}
		in.ForDims = b.Chosen.ReadsWith[in.Key]
		if in.Name == "" {
			in.Name = in.Key
		}
		if n, ok := names.WholeNumber(di.Count); ok && n > mostAtOnce {
			b.Problems.Add(di.Count.At, "too-many", source.Quote(in.Name)+" is used "+di.Count.Value+" times at once; the gather list has lines for "+strconv.Itoa(mostAtOnce)+" at most",
				"count: as many as are read at the same time", "or instruments of their own for the others")
		} else if ok && n > 0 {
			in.Count = n
		}
		if di.Range.Written() {
			low, high, err := units.ParseRange(di.Range.Value)
			if err != nil {
				b.Fault(di.Range, err, "write it as … to … mm")
			} else {
				in.Low, in.High = &low, &high
			}
		}
		if di.Reads.Written() {
			if q, ok := b.Quantity(di.Reads, "… mm"); ok {
				in.Reads = &q
			}
		}
		b.Instruments[in.Key] = in
		b.Job.Instruments = append(b.Job.Instruments, in)
	}
}

// readDims repeats every dimension over its places and reads its limits.
func (b *builder) readDims() {
	b.Dims = map[string][]*job.Dim{}
	for _, dd := range b.Def.Dimensions {
		places := b.Over(dd.Each)
		at := b.positions(dd.At)
		for _, v := range []struct {
			v    def.Varying
			what string
		}{
			{dd.What, "what is measured"}, {dd.With, ""}, {dd.ViewedFrom, ""}, {dd.Pushed, ""}, {dd.Load, ""}, {dd.Plane, ""},
			{dd.Reuse, ""}, {dd.Repair, ""}, {dd.Source, ""}, {dd.Nominal, ""}, {dd.Over, ""}, {dd.Under, ""}, {dd.Out, ""}, {dd.FoundOut, ""}, {dd.Formula, ""},
			{dd.From.Face, "the face it is measured from"}, {dd.To.Face, "the face it is measured to"}, {dd.Of.Face, "where it is measured"}, {dd.StampedOn.Face, "where the number stands"},
		} {
			b.CheckVarying(v.v, v.what, places)
		}
		b.checkLimitNames(dd.Found, "", places, at)
		b.checkLimitNames(dd.Left, "the limit", places, at)
		for _, pl := range places {
			d := b.readDim(dd, pl, at)
			b.Dims[d.Base] = append(b.Dims[d.Base], d)
			b.Job.Dims = append(b.Job.Dims, d)
		}
	}
}

func (b *builder) readDim(dd *def.Dimension, pl job.Place, at job.Positions) *job.Dim {
	d := &job.Dim{
		At: dd.Mark.At, Mark: pl.Mark(dd.Mark.Value), Base: dd.Mark.Value, Place: pl,
		What: names.ValueAt(pl, dd.What), Kind: dd.Kind.Value, ViewedFrom: names.ValueAt(pl, dd.ViewedFrom), Positions: at,
		State: job.State{
			With: names.ValueAt(pl, dd.With), Pushed: names.ValueAt(pl, dd.Pushed), Load: names.ValueAt(pl, dd.Load), Plane: names.ValueAt(pl, dd.Plane),
			Hot: dd.State.Value == "hot", Cold: dd.State.Value == "cold", OnThe: dd.OnThe.Value,
		},
		Over: names.ValueAt(pl, dd.Over), Under: names.ValueAt(pl, dd.Under), Out: names.ValueAt(pl, dd.Out), FoundOut: names.ValueAt(pl, dd.FoundOut), Source: names.ValueAt(pl, dd.Source), Note: dd.Note.Value, WhyCoarse: dd.WhyCoarse.Value,
		Zones:         map[*reading.Limit]string{},
		Wrote:         job.Lines{Found: names.TextAt(pl, dd.Found), Left: names.TextAt(pl, dd.Left), Reuse: names.TextAt(pl, dd.Reuse), Repair: names.TextAt(pl, dd.Repair), Formula: names.TextAt(pl, dd.Formula), By: dd.By},
		LostByNothing: len(dd.LostBy) == 1 && dd.LostBy[0].Value == nothing,
	}
	if d.ViewedFrom == "" {
		d.ViewedFrom = pl.ViewedFrom
	}
	d.From, d.To, d.Of = b.FaceAt(dd.From, pl), b.FaceAt(dd.To, pl), b.FaceAt(dd.Of, pl)
	d.OneSided = names.ValueAt(pl, dd.Found) == notTaken
	if dd.By.Written() {
		by := withoutBlanks(dd.By)
		d.By, _ = names.Meant(b.Index, by, "instrument", b.Instruments, "instruments")
		d.ByPiece = b.pieceOf(by, d.By)
	}
	d.Found, d.FoundBy = b.limits(d, dd.Found)
	d.Left, d.LeftBy = b.limits(d, dd.Left)
	d.Worn, d.Mended = b.limit(d, names.TextAt(pl, dd.Reuse)), b.limit(d, names.TextAt(pl, dd.Repair))
	d.Reuse, _ = reading.Whole(d.Worn, d.LeftLimits())
	d.Repair, _ = reading.Whole(d.Mended, d.LeftLimits())
	if dd.Spare.Written() {
		d.Spare, _ = names.WholeNumber(dd.Spare)
	}
	d.Critical = dd.Critical.Value == "yes" || d.Judged() && dd.Critical.Value != "no"
	b.readStamped(d, dd)
	b.readShimPart(d, dd)
	d.Hint = b.hint(d, dd)
	if !names.TextAt(pl, dd.Formula).Written() && !dd.OneIs.Written() && (d.Shims != nil || !dd.Shims.Written()) {
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
	limits := d.Limits()
	if len(limits) == 0 {
		found := dd.Found.Written() && names.TextAt(d.Place, dd.Found).Value != notTaken
		if !found && !dd.Left.Written() && !dd.Reuse.Written() && !dd.Repair.Written() {
			b.Problems.Add(dd.Mark.At, "no-limit", d.Base+" says neither what it must be nor that it is only recorded",
				"for example left: … to … mm", "or found: record to … mm")
		}
		return
	}
	box, err := reading.BoxFor(limits, d.Hint)
	if err != nil {
		at := dd.Mark.At
		if dd.By.Written() {
			at = dd.By.At
		}
		help := "nominal: … " + cmp.Or(limits[0].Unit().Text(), "mm")
		if d.Kind == "count" {
			help = "nominal: … pcs"
		}
		if limits[0].Unit().Dimension() == units.Rise {
			help = "a rise is the difference of two readings: formula: D1 - D2, and take by: out"
		}
		b.Problems.Add(at, "box-size", d.Base+": "+err.Error(), help)
		return
	}
	d.Box = box
}

// hint is what is known of the size of a reading besides its limits.
func (b *builder) hint(d *job.Dim, dd *def.Dimension) reading.Hint {
	hint := reading.Hint{Signed: dd.Sign.Value == "yes"}
	if nominal := names.TextAt(d.Place, dd.Nominal); nominal.Written() {
		if q, ok := b.Quantity(nominal, "… mm"); ok {
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
