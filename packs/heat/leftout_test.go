package heat

import (
	"errors"
	"math"
	"reflect"
	"testing"

	"pgregory.net/rapid"
)

// leaves lists every field of a struct that holds no further ones, at any depth.
func leaves(v reflect.Value) []reflect.Value {
	switch v.Kind() {
	case reflect.Struct:
		var all []reflect.Value
		for i := range v.NumField() {
			all = append(all, v.Field(i))
			all = append(all, leaves(v.Field(i))...)
		}
		return all
	case reflect.Slice, reflect.Array:
		var all []reflect.Value
		for i := range v.Len() {
			all = append(all, v.Index(i))
			all = append(all, leaves(v.Index(i))...)
		}
		return all
	}
	return nil
}

// spoil leaves one or two fields out, or puts into a figure what is none.
func spoil(t *rapid.T, job any) {
	all := leaves(reflect.ValueOf(job).Elem())
	for range rapid.IntRange(1, 2).Draw(t, "fields") {
		f := all[rapid.IntRange(0, len(all)-1).Draw(t, "field")]
		f.SetZero()
		if f.Kind() == reflect.Float64 {
			f.SetFloat(rapid.SampledFrom([]float64{0, 0, 0, -1, math.NaN(), math.Inf(1), 1e9}).Draw(t, "figure"))
		}
	}
}

// soundOrRefused fails unless there is a result or a refusal with field, reason and way
// out, in the units of any job.
func soundOrRefused(t *rapid.T, err error) {
	if err == nil {
		return
	}
	var joined interface{ Unwrap() []error }
	if errors.As(err, &joined) {
		err = joined.Unwrap()[0]
	}
	var r *Refusal
	if !errors.As(err, &r) || r.Field == "" || r.Why == "" || r.Instead == "" {
		t.Fatalf("refused without field, reason or way out: %v", err)
	}
	if inch := r.In(Units{Inch: true, Fahrenheit: true}); inch.Field != r.Field || inch.Why == "" || inch.Instead == "" {
		t.Fatalf("in inches the refusal of %s is empty", r.Field)
	}
}

func sound(t *rapid.T, figures ...float64) {
	for _, f := range figures {
		if math.IsNaN(f) || math.IsInf(f, 0) || f < 0 {
			t.Fatalf("a result is %v", figures)
		}
	}
}

// A heat with anything left out, or with a figure that is none, is computed or refused
// with its reason, and never brings the program down.
func TestWhatIsLeftOutIsRefused(t *testing.T) {
	t.Parallel()
	base := stormPump(t)
	checkSome(t, 60, func(t *rapid.T) {
		p := base
		p.Neighbours = append([]Neighbour(nil), base.Neighbours...)
		p.Source.Net = 24e3
		spoil(t, &p)
		plan, err := p.Plan()
		soundOrRefused(t, err)
		if err == nil {
			sound(t, float64(plan.Band.Least), float64(plan.Free), float64(plan.Stays), float64(plan.Loose))
		}
	})
	checkSome(t, 100, func(t *rapid.T) {
		r := Refit{Fit: base.Fit, Hub: base.Hub, Shaft: base.Shaft, Air: base.Air, Limit: base.Skin}
		spoil(t, &r)
		out, err := r.Plan()
		soundOrRefused(t, err)
		if err == nil {
			sound(t, float64(out.Carry), float64(out.Grips), float64(out.GripsSoonest), float64(out.Room))
		}
	})
	checkSome(t, 100, func(t *rapid.T) {
		c := ColdFit{Fit: base.Fit, Hub: base.Hub, Shaft: base.Shaft, Air: base.Air, By: LiquidNitrogen, Limit: base.Skin}
		spoil(t, &c)
		out, err := c.Plan()
		soundOrRefused(t, err)
		if err == nil {
			sound(t, float64(out.Carry), float64(out.Grips), float64(out.GripsSoonest), float64(out.Room))
		}
	})
	checkSome(t, 60, func(t *rapid.T) {
		s := Soak{Bore: 120, Hub: base.Hub, Source: Source{Means: Oven, Inside: 170, Film: 20}, To: 150, Limit: base.Skin, Air: base.Air}
		spoil(t, &s)
		out, err := s.Plan()
		soundOrRefused(t, err)
		if err == nil {
			sound(t, float64(out.After))
		}
	})
}

// The single computations refuse what is left out as well.
func TestWhatIsLeftOutOfASingleComputationIsRefused(t *testing.T) {
	t.Parallel()
	base := stormPump(t)
	rapid.Check(t, func(t *rapid.T) {
		in := struct {
			Fit        Fit
			Hub, Shaft Material
			Over       KelvinRise
			At         Celsius
			Room       M3
			Litre      Litre
			Ice        Kg
		}{base.Fit, base.Hub.Material, base.Shaft.Material, 90, 20, 50, 5, 2}
		spoil(t, &in)
		free, err := Rise(in.Fit, in.Hub, in.Shaft, in.At)
		soundOrRefused(t, err)
		if err == nil {
			sound(t, float64(free.Hub)+300)
		}
		_, err = ClearanceAt(in.Fit, in.Hub, in.Shaft, in.Over, in.At)
		soundOrRefused(t, err)
		_, err = chill(in.Fit, in.Hub, in.Shaft, DryIce, in.At)
		soundOrRefused(t, err)
		_, err = RoomAfter(in.Room, in.Litre, in.Ice)
		soundOrRefused(t, err)
		_, err = Energy(in.Hub, in.Ice, 20, in.At)
		soundOrRefused(t, err)
	})
}
