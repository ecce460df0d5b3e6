package def

import "matchmark/packs/source"

// A Joint is a group of fasteners tightened together.
type Joint struct {
	Mark                       source.Text
	What                       Varying
	Parts                      []source.Text
	Each                       []source.Text
	Torque                     Varying
	Preload                    Varying     // what is wanted in place of a torque
	NoValue                    source.Text // how tight where no torque is told, and why
	Stages                     []source.Text
	Plan                       source.Text // the name of a published plan in place of stages
	Lubricant, Pattern, Source source.Text
	Thread, Class              source.Text
	Proof                      Proof    // in place of the class
	Friction                   Friction // how torque turns into preload
	Scatter                    Scatter
	Tensioner                  Tensioner
	BreaksLoose, ForNow        source.Text
	Layout                     Layout
	Says                       []Says // what sources say that differ
	Applies
}

// A Proof is the proof stress of a bolt that no class tells.
type Proof struct {
	At             source.Pos
	Stress, Source source.Text
}

// A Friction is a nut factor, or two coefficients with the face that is turned.
type Friction struct {
	At                                             source.Pos
	NutFactor, Thread, Bearing, Face, Hole, Source source.Text
}

// A Scatter is how far a preload can lie from the one worked out: the word of a
// published table, or per cent.
type Scatter struct {
	At              source.Pos
	Word            source.Text
	Percent, Source source.Text
}

// A Tensioner is what pulls a bolt by a fluid.
type Tensioner struct {
	At                     source.Pos
	Area, Retained, Source source.Text
}

// A Layout is where the fasteners of a joint sit, and how they are gone round.
type Layout struct {
	At                                 source.Pos
	Circle, Rectangle, Oval, SplitLine source.Text
	Places                             [][]source.Text // of a list: x and y of each
	First, Against                     source.Text     // of a circle
	Length, Width                      source.Text
	Order                              []source.Text // one word, or the numbers of the places
	SeenFrom, Clock                    source.Text
}
