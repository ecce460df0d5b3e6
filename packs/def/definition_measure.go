package def

import "matchmark/packs/source"

// An Instrument is what a reading is taken with.
type Instrument struct {
	Key          source.Text
	Name         source.Text
	Range, Reads source.Text // as "0 to 150 mm", "0.02 mm"
	Number       source.Text
	Count        source.Text
}

// A Dimension is one thing to measure, with what its reading must be.
type Dimension struct {
	Mark             source.Text
	What             Varying
	Each             []source.Text
	Kind             source.Text // chooses the picture: stand-off, gap, diameter, float, runout, ...
	From, To         Face
	Of               Face // the part read, when it is a reading of one part alone
	At               Positions
	With             Varying // state in which it is measured
	ViewedFrom       Varying
	Pushed           Varying     // which way the moving part is pushed
	Load             Varying     // force or torque that acts meanwhile
	Plane            Varying     // plane or line it is read in
	State            source.Text // cold or hot; the temperature is written beside it
	OnThe            source.Text // diameter or radius
	Warm             source.Text // material, when the part may be read warm
	By               source.Text // instrument
	Found            Varying     // how the as-found box is written
	Left             Varying     // what must stand at closing
	Reuse            Varying     // how far an old part may go back
	Repair           Varying
	Over, Under, Out Varying       // what to do when it is not in
	FoundOut         Varying       // the same as found, where it is another thing
	Source           Varying       // document, table, page of the limit
	Says             []Says        // what sources say that differ
	Adjust           source.Text   // part that sets it
	LostBy           []source.Text // steps or parts that destroy it beyond its faces
	WhyCoarse        source.Text   // why a coarse instrument will do
	Sign             source.Text   // "yes": the reading can be negative
	Nominal          Varying       // size expected, for the width of the box
	Spare            source.Text   // boxes left free for readings decided on the day
	Critical         source.Text   // "no": not on the sheet of critical dimensions
	Note             source.Text
	Applies
	Worked
}

// Positions are the several places at which one dimension is read: a name
// ("clock"), a list, or a map of one or two lists (rows, columns). A log is read
// over and over instead: Every tells how often and Rows how many times, and the
// one axis what is read each time.
type Positions struct {
	At          source.Pos
	Axes        []Axis
	Every, Rows source.Text
}

// An Axis is one list of positions with a name: {station: [A, B]}.
type Axis struct {
	Name   source.Text
	Values []source.Text
}

// A Says is what one of several sources says of a limit that they do not agree on.
type Says struct {
	At     source.Pos
	Source source.Text
	Text   source.Text // as the source prints it
	Used   source.Text // "yes", or the hold at which this one was chosen
	Note   source.Text
	Applies
}
