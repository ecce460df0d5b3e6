package def

import "matchmark/packs/source"

// What guards the work: locks, permits, openings, and what is fetched for it.

// An Isolation is one point where the machine is cut off from its energy.
type Isolation struct {
	Key    source.Text
	Point  source.Text // where it is cut off
	Energy source.Text // what stands behind it: electric, water, steam, spring
	State  source.Text // how it stands when it is safe: open and racked out
	Proved source.Text // how it is shown that nothing is left
	Applies
}

// A Permit is a paper of the site without which a step is not begun.
type Permit struct {
	Key  source.Text
	What source.Text
	Note source.Text
	For  []source.Text // what may be done on it
	Applies
}

// A Supply is something fetched before the work: a tool, a spare or a
// consumable.
type Supply struct {
	Key   source.Text
	What  source.Text // what it is; may be left out where Part names it
	Part  source.Text // the part that it is a spare for, or the aid that a tool is
	Count source.Text // with or without a unit: 2, 5 l
	Size  source.Text // size, range or number in the catalogue
	For   []source.Text
	Only  source.Text // off or back: in taking apart or in putting back alone
	Note  source.Text
	Applies
}

// Applies says for which machines a thing is meant: those with an option fitted,
// those with a build of an option.
type Applies struct {
	Fitted source.Text // an option
	If     source.Text // a build of an option
}
