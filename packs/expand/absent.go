package expand

// A step that repeats over the two ends may name a thing that stands at one end
// only, as the thrust bearing: it is done there, and left out at the other end.
// Only a name that finds nothing at any of the step's places is a mistake.
