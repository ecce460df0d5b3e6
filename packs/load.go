package packs

import (
	"crypto/sha256"
	"encoding/hex"
	"io/fs"
	"matchmark/packs/blocks"
	"matchmark/packs/choose"
	"matchmark/packs/hazard"
	"matchmark/packs/job"
	"matchmark/packs/keep"
	"matchmark/packs/proof"
	"matchmark/packs/putback"
	"matchmark/packs/walk"
	"strconv"

	"matchmark/packs/def"
	"matchmark/packs/source"
)

// Format is the number of the paper format. It is part of the digest: when what
// is printed for the same definition changes, it goes up.
const Format = 1

// Inputs names the files that a job is made from.
type Inputs struct {
	Definition string // the equipment definition
	Job        string // a job file that overrides number, tag and the like; may be empty
	Site       string // a site file; may be empty
}

// Load reads the definition, and the job file if one is named, and decides the
// job. The Job is never nil: where a problem stands it has a hole. Problems are
// sorted by place. Only Problems without an error make a Job that may be
// printed.
func Load(files fs.FS, in Inputs) (*job.Job, source.Problems) {
	b := &builder{job: &job.Job{Files: source.Files{}}}
	sum := sha256.New()
	sum.Write([]byte("matchmark " + strconv.Itoa(Format) + "\n"))

	read := func(name string) ([]byte, bool) {
		data, problems := source.Read(files, name)
		b.problems = append(b.problems, problems...)
		if len(problems) > 0 {
			return nil, false
		}
		b.job.Files[name] = data
		sum.Write([]byte(strconv.Itoa(len(data)) + "\n"))
		sum.Write(data)
		return data, true
	}
	d := &def.Definition{}
	if data, ok := read(in.Definition); ok {
		var problems source.Problems
		d, problems = def.Read(in.Definition, data)
		b.problems = append(b.problems, problems...)
	} else {
		b.problems.Sort()
		return b.job, b.problems
	}
	if in.Job != "" {
		if data, ok := read(in.Job); ok {
			j, problems := def.ReadJob(in.Job, data)
			b.problems = append(b.problems, problems...)
			b.problems = append(b.problems, d.Override(j)...)
		}
	}
	site := &def.SiteFile{}
	if in.Site != "" {
		if data, ok := read(in.Site); ok {
			var problems source.Problems
			site, problems = def.ReadSite(in.Site, data)
			b.problems = append(b.problems, problems...)
		}
	}
	b.readSite(site)
	b.job.Digest = hex.EncodeToString(sum.Sum(nil))[:8]
	b.def = d
	if !d.At.IsZero() { // else nothing could be read, which has been told
		b.build()
	}
	b.problems.Sort()
	b.cutShort(in.Definition)
	return b.job, b.problems
}

// cutShort leaves out what nobody would read, and says how much that is.
func (b *builder) cutShort(file string) {
	if left := len(b.problems) - source.Most; left > 0 {
		b.problems = b.problems[:source.Most]
		b.problems.Add(source.Pos{File: file}, "more-problems", strconv.Itoa(left)+" more problems are not listed: put these right first")
	}
}

// A builder holds what is known while a job is made.
type builder struct {
	def      *def.Definition
	job      *job.Job
	problems source.Problems
	things   int  // how many there are, at all their places
	crowded  bool // there are too many, which has been told

	groups      map[string]*group
	instruments map[string]*job.Instrument
	parts       map[string][]*job.Part
	dims        map[string][]*job.Dim
	containers  map[string][]*job.Container
	spots       map[string]*job.Spot
	sets        map[string][]*job.Set
	joints      map[string][]*job.Joint
	stacks      map[string][]*job.Stack
	holds       map[string]*job.Hold
	heats       map[string][]*job.Heat
	cautions    map[string]*job.Caution
	bigs        map[string]*def.BigPart // by the part they are
	isolations  map[string]*job.Isolation
	permits     map[string]*job.Permit
	openings    map[string][]*job.Opening
	gear        map[string]*def.Gear
	cranes      map[string]*def.Crane
	gearUsed    map[string]bool // keys of gear, and of cranes with "crane " before them
	lifts       map[string]*job.Lift
	steps       map[string][]*job.Step
	stepDefs    map[*job.Step]*def.Step
	sectionDefs map[*job.Section]*def.Section
	tally       *tally                    // while steps are resolved
	named       map[string][]*job.Section // sections by the name written
	chosen      *choose.Chosen
}

// build runs the stages in order. Each leaves holes where it found problems and
// the next walks round them, so that one run tells everything.
func (b *builder) build() {
	b.checkTables()
	b.chosen = choose.Machine(b.def, &b.problems)
	b.job.Choices = b.chosen.Choices
	b.readOrder()
	b.readPlaces()
	b.readInstruments()
	b.readSets()
	b.readStacks()
	b.readParts()
	b.readJoints()
	b.readDims()
	b.readFormulas()
	b.readContainers()
	b.readLifts()
	b.readHolds()
	b.readSays()
	b.readHeats()
	b.readCautions()
	b.readGuards()
	b.readSections()
	if b.crowded {
		return
	}
	b.resolveSteps()
	b.resolveLost()
	b.readBranches()
	b.resolveNoted()
	b.resolveJudged()
	b.readSupplies()
	b.problems = append(b.problems, putback.Rows(b.job)...)
	keep.Close(b.job)
	b.problems = append(b.problems, keep.Supplies(b.job)...)
	b.workOut()
	b.roundShims()
	w := walk.Of(b.job)
	w.Note()
	b.problems = append(b.problems, hazard.Attach(b.job)...)
	b.problems = append(b.problems, proof.All(w)...)
	b.checkHeadings()
	b.checkRoles()
	b.checkReadings()
	b.checkInputs()
	b.checkFaces()
	b.advise()
	keep.Tags(b.job)
	blocks.Merge(b.job)
}

// advise warns of what may have been forgotten. That makes sense only of a
// definition that holds together: one with errors has holes where they stand.
func (b *builder) advise() {
	if b.problems.Errors() > 0 {
		return
	}
	b.checkNamed()
	b.checkWeighed()
	b.checkOdd()
	b.checkGuardNames()
}
