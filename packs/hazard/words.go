package hazard

import "matchmark/packs/phrase"

// oldFibre and oldLagging are the names of parts that may be of fibre with asbestos.
var (
	oldFibre   = phrase.Words(`gaskets?|packing|joint sheets?`)
	oldLagging = phrase.Words(`lagging|insulation|heat shields?`)
)
