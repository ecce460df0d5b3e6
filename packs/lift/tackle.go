package lift

// What is computed: the pull on the hauling line of a tackle of blocks, and what its
// upper block hangs from.
// Symbols: W load on the moving block with its own mass, N parts of rope that hold
// the moving block, n sheaves that the rope turns over, f friction of a sheave as a
// share of the load, k dynamic factor.
//
//	pull    P = k W (1 + f n) / N
//	anchor  A = k W + P where the line is hauled down from the upper block,
//	        A = k W - P where it is hauled up from the moving one, and P is one of N
//
// Sources: US Navy Builder 3 & 2 training manual: 10 % of the load a sheave; the
// anchor by the balance of forces on the upper block. A line that is hauled up
// relieves the anchor; that is not counted on, and A is then k W.
// Validity: rope and sheaves in good order, parts nearly parallel, the line hauled
// along the parts.
// Refused: no parts, sheaves or parts that do not go together, an unrated piece.

// A Tackle is a load on a tackle of blocks.
type Tackle struct {
	// Mass of the load with its tolerance, and of the moving block with its hook.
	Mass, Block Kg
	// Parts of rope at the moving block; Sheaves that the rope turns over on the way
	// to the hand or winch, lead blocks counted in.
	Parts, Sheaves int
	// HauledUp tells that the line leaves the moving block.
	HauledUp bool
	// Dynamic is the factor on all loads, 1 or more.
	Dynamic Ratio
	// Rope, UpperBlock, MovingBlock and Anchor are rated loads; Rope is for one part.
	Rope, UpperBlock, MovingBlock, Anchor Kg
}

// A TackleResult is a computed tackle. Loads are by design.
type TackleResult struct {
	// Pull on the hauling line, and what the anchor of the upper block holds.
	Pull, Anchor Kg
	// Components are rope, blocks and anchor; Weakest is the one used most.
	Components []Component
	Weakest    int
	Cautions   []Caution
	Working    []Working
}

// sheaveFriction: US Navy Builder 3 & 2 training manual, 10 % of the load a sheave.
const (
	sheaveFriction Ratio = 0.10
	tackleSource         = "US Navy Builder 3 & 2 training manual, 10 % a sheave"
)

// Haul works a tackle out. The error is Refusals, their fields those of Tackle in
// lower case.
func Haul(t Tackle) (*TackleResult, error) {
	if rs := t.check(); len(rs) > 0 {
		return nil, rs
	}
	w := float64(t.Mass+t.Block) * float64(t.Dynamic)
	pull := w * (1 + float64(sheaveFriction)*float64(t.Sheaves)) / float64(t.Parts)
	anchor := w
	if !t.HauledUp {
		anchor += pull
	}
	r := &TackleResult{Pull: Kg(pull), Anchor: Kg(anchor)}
	for _, c := range []struct {
		field, name string
		load        float64
		rated       Kg
	}{
		{"rope", "rope of the tackle, hauling part", pull, t.Rope},
		{"movingblock", "moving block", w, t.MovingBlock},
		{"upperblock", "upper block", anchor, t.UpperBlock},
		{"anchor", "what the upper block hangs from", anchor, t.Anchor},
	} {
		used := Component{Field: c.field, Name: c.name, Load: Kg(c.load), Rated: c.rated, Allowed: c.rated, Used: Ratio(c.load / float64(c.rated))}
		r.Components = append(r.Components, used)
		if used.Used > r.Components[r.Weakest].Used {
			r.Weakest = len(r.Components) - 1
		}
		if used.Used > 1 {
			r.Cautions = append(r.Cautions, Caution{Code: Overloaded, Field: c.field, Stop: true, Message: used.Name + " carries " + used.Load.Up() + " and may carry " + used.Allowed.Down()})
		}
	}
	r.Working = []Working{{What: "tackle", Formula: "P = k W (1 + f n)/N; anchor k W + P, or k W where it is hauled up", Source: tackleSource, Figures: []Figure{
		figUp("k W", w, "kg"), fig("f", float64(sheaveFriction), ""), fig("n", float64(t.Sheaves), ""), fig("N", float64(t.Parts), ""),
		figUp("P", pull, "kg"), figUp("anchor", anchor, "kg")}}}
	return r, nil
}

// check gives what is wrong with the tackle as written.
func (t Tackle) check() Refusals {
	c := &checker{}
	c.positive("mass", "the mass of the load", "kg", float64(t.Mass))
	c.notBelow("block", "the mass of the moving block", "kg", float64(t.Block))
	c.positive("rope", "the rated load of one part of the rope", "kg", float64(t.Rope))
	c.positive("movingblock", "the rated load of the moving block", "kg", float64(t.MovingBlock))
	c.positive("upperblock", "the rated load of the upper block", "kg", float64(t.UpperBlock))
	c.positive("anchor", "what the upper block hangs from may carry", "kg", float64(t.Anchor))
	if !finite(float64(t.Dynamic)) || t.Dynamic < 1 {
		c.refuse("dynamic", "write the factor by the site's rules, not under 1", "the dynamic factor is %g", float64(t.Dynamic))
	}
	// A line hauled up turns over one sheave less than it has parts, one hauled down
	// over as many; lead blocks add to both.
	least := t.Parts
	if t.HauledUp {
		least--
	}
	switch {
	case t.Parts < 1:
		c.refuse("parts", "count the parts of rope that hold the moving block", "the moving block hangs on %d parts of rope", t.Parts)
	case t.Sheaves < least:
		c.refuse("sheaves", "count every sheave that the rope turns over, lead blocks too", "%d parts of rope turn over %d sheaves, and it takes %d at least", t.Parts, t.Sheaves, least)
	}
	return c.rs
}
