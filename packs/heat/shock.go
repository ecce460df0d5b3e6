package heat

// Thermal shock of a brittle hub, and the wall of any hub that is hot outside.
//
// Stress at a free face of a ring with a temperature along its radius alone, ends
// free, away from them:
//
//	sigma = E (mean of e - e at the face)/(1 - nu)
//
// e free elongation; tension is positive. At a face the hoop and the axial stress are
// alike and the radial one is none, so that this is the equivalent stress as well. The
// hoop tension of the fit comes on top at the bore, and falls in proportion as the
// joint opens; at the skin, where it works against the heat, it is left out.
//
// A brittle material may have a third of its tensile strength in tension, of heat and
// fit together. Where the strength is not given, that of the weakest grade of grey
// iron is counted with, 100 MPa.
//
// Source: Timoshenko and Goodier, Theory of Elasticity, long circular cylinder with a
// central hole, from memory; EN 1561, EN-GJL-100, from memory; a third: common
// practice for iron that may not crack, no source. Validity: yield stress as cold,
// which carbon steel keeps to 400 °C (EN 1993-1-2, table 3.1, from memory).
// Refused: a flame on a brittle hub, and a hot pull of one whose cold tension is not
// known.

const (
	weakestIron   MPa = 100
	brittleShares MPa = 3 // a third
)

// mayPull is the tension that a hub of a brittle material may have.
func (h *Hub) mayPull() MPa {
	if h.Strength > 0 {
		return h.Strength / brittleShares
	}
	return weakestIron / brittleShares
}

// checkShock refuses a flame on a brittle hub: it heats in spots, and no computation
// of an even heating covers that.
func (h *Hub) checkShock(by Means) error {
	if !h.Material.Brittle || by != Torch {
		return nil
	}
	return refuseAs("thermal-shock", "Source.Means",
		"warm it slowly and evenly, by induction or in an oven, or draw it with a hydraulic puller",
		"%v cracks from the heat of a flame (thermal shock)", h.Material.Name)
}

// checkShock refuses a pull of a brittle hub that is already pulled too much, or of
// which that is not known.
func (p *Pull) checkShock() error {
	if !p.Hub.Material.Brittle {
		return nil
	}
	if err := p.Hub.checkShock(p.Source.Means); err != nil {
		return err
	}
	if p.ColdHoop == 0 {
		return refuseAs("thermal-shock", "ColdHoop", "give the frictions of the fit, so that its stresses are worked out",
			"how far the cold fit already pulls the bore of a hub of %v is missing, and heat pulls on top (thermal shock)", p.Hub.Material.Name)
	}
	if p.ColdHoop > p.Hub.mayPull() {
		return p.tooBrittle(p.ColdHoop)
	}
	return nil
}

// tooBrittle refuses a tension that may crack the hub.
func (p *Pull) tooBrittle(tension MPa) error {
	ways := []any{say("draw it with a hydraulic or mechanical puller"), say("cut it off")}
	if p.Hub.Strength == 0 {
		ways = append(ways, say("give the tensile strength of its grade from the drawing"))
	}
	return refuseAs("thermal-shock", "Hub.Strength", orElse(ways...),
		"heat and fit pull the bore of a hub of %v with %v, and it may have %v, a third of its strength (thermal shock)",
		p.Hub.Material.Name, up(tension), down(p.Hub.mayPull()))
}

// A wallStress is the wall of the hub at one station and one moment.
type wallStress struct {
	difference       KelvinRise
	atBore, atSkin   MPa
	tension, pressed MPa // greatest tension and pressure, of heat and fit
}

// wallAt is the wall at a station under the hub; coldHoop is the tension of the cold
// fit at its bore.
func (b *bodies) wallAt(k int, interference Mm, coldHoop MPa) wallStress {
	st := b.under(k)
	m := b.of[st.cell+b.nShaft]
	mean := b.meanStrain(b.t, st.cell+b.nShaft, b.nHub)
	face := func(t float64) MPa {
		return m.Young * MPa((mean-m.strain(t))/(1-float64(m.Poisson)))
	}
	bore, skin := b.boreAt(k), b.skinAt(k)
	w := wallStress{difference: KelvinRise(skin - bore), atBore: face(bore), atSkin: face(skin)}
	grips := max(0, 1-MPa(b.openingAt(b.t, st)/interference.metres()))
	w.tension, w.pressed = w.atBore+coldHoop*grips, -w.atSkin
	return w
}

// tension is the greatest tension at the bore along the hub.
func (b *bodies) tension(interference Mm, coldHoop MPa) MPa {
	var most MPa
	for k := range b.skinLink {
		most = max(most, b.wallAt(k, interference, coldHoop).tension)
	}
	return most
}

// cracks is the tension at the coldest place of a hub that stands alone.
func (b *bodies) cracks() MPa {
	m := b.of[0]
	return m.Young * MPa((b.meanStrain(b.t, 0, b.nHub)-m.strain(b.coldest()))/(1-float64(m.Poisson)))
}

// wall keeps the greatest difference through the wall, and the greatest share of the
// yield stress.
func (p *Pull) wall(plan *Plan, b *bodies, at Second) {
	w := &plan.Wall
	for k := range b.skinLink {
		s := b.wallAt(k, p.Fit.Interference, p.ColdHoop)
		if s.difference > w.Difference {
			w.At, w.Difference, w.AtBore, w.AtSkin = at, s.difference, s.atBore, s.atSkin
		}
		if use := Number(max(s.tension, s.pressed) / max(p.Yield, 1e-9)); p.Yield > 0 && use > w.Use {
			w.Use, w.UsedAt = use, at
		}
	}
}
