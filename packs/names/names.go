// Package names finds the things of a job by the names that their author wrote:
// with their place (lock-nut/DE), or as seen from a place. Only the rooms that
// turn a definition into a job know names.
package names

import (
	"matchmark/packs/choose"
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// An Index is a job in the making, with all its things by their names as written.
type Index struct {
	Def      *def.Definition
	Job      *job.Job
	Problems source.Problems
	Logo     []byte // of the site, nil if it has none
	LogoFile string
	Plain    job.FontFile
	Strong   job.FontFile
	Tongue   def.Tongue // in which the files are read
	Read     int        // how many of the problems are of the files as read
	Chosen   *choose.Chosen
	Crowded  bool // there are too many things, which has been told

	Instruments map[string]*job.Instrument
	Parts       map[string][]*job.Part
	Dims        map[string][]*job.Dim
	Containers  map[string][]*job.Container
	Spots       map[string]*job.Spot
	Sets        map[string][]*job.Set
	Joints      map[string][]*job.Joint
	Alignments  map[string]*job.Alignment
	Stacks      map[string][]*job.Stack
	Holds       map[string]*job.Hold
	Heats       map[string][]*job.Heat
	Cautions    map[string]*job.Caution
	Isolations  map[string]*job.Isolation
	Permits     map[string]*job.Permit
	Openings    map[string][]*job.Opening
	Lifts       map[string]*job.Lift
	Steps       map[string][]*job.Step
	Sections    map[string][]*job.Section

	StepDefs    map[*job.Step]*def.Step
	SectionDefs map[*job.Section]*def.Section

	Groups map[string]*Group

	things int    // how many there are, at all their places
	tally  *tally // while steps are resolved
}
