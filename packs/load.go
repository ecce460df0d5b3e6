package packs

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io/fs"
	"matchmark/packs/blocks"
	"matchmark/packs/choose"
	"matchmark/packs/expand"
	"matchmark/packs/hazard"
	"matchmark/packs/job"
	"matchmark/packs/keep"
	"matchmark/packs/names"
	"matchmark/packs/plan"
	"matchmark/packs/proof"
	"matchmark/packs/proofread"
	"matchmark/packs/putback"
	"matchmark/packs/walk"
	"strconv"

	"matchmark/packs/def"
	"matchmark/packs/source"
)

// Format is the number of the paper format. It is part of the digest: when what
// is printed for the same definition changes, it goes up.
const Format = 5

// Inputs names the files that a job is made from.
type Inputs struct {
	Definition string   // the equipment definition
	Job        string   // a job file that overrides number, tag and the like; may be empty
	Site       string   // a site file; may be empty
	Last       []string // readings of earlier outages, which are printed beside the boxes
	// Language is that of the paper, by ISO 639-1; empty takes the site's, else English.
	Language string
	// Spares are the blank tags of each kind; nil for the usual ones.
	Spares *keep.Spares
}

// Load reads the definition, and the job file if one is named, and decides the
// job. The Job is never nil: where a problem stands it has a hole. Problems are
// sorted by place. Only Problems without an error make a Job that may be
// printed.
func Load(files fs.FS, in Inputs) (*job.Job, source.Problems) {
	ix := &names.Index{Job: &job.Job{Files: source.Files{}}}
	site := read(files, in, ix)
	if ix.Def != nil {
		expand.Site(ix, site)
		if !ix.Def.At.IsZero() { // else nothing could be read, which has been told
			decide(ix, in.Spares)
		}
	}
	inTheirWords(ix)
	ix.Problems.Sort()
	if left := len(ix.Problems) - source.Most; left > 0 {
		ix.Problems = ix.Problems[:source.Most]
		ix.Problems.Add(source.Pos{File: in.Definition}, "more-problems", strconv.Itoa(left)+" more problems are not listed: put these right first")
	}
	return ix.Job, ix.Problems
}

// read takes the input files into the index, and gives the site file. Without a
// definition there is none in the index.
func read(files fs.FS, in Inputs, ix *names.Index) *def.SiteFile {
	sum := sha256.New()
	sum.Write([]byte("matchmark " + strconv.Itoa(Format) + "\n"))
	bytes := func(name string) ([]byte, bool) {
		data, problems := source.Read(files, name)
		ix.Problems = append(ix.Problems, problems...)
		if len(problems) > 0 {
			return nil, false
		}
		ix.Job.Files[name] = data
		sum.Write([]byte(strconv.Itoa(len(data)) + "\n"))
		sum.Write(data)
		return data, true
	}
	data, ok := bytes(in.Definition)
	if !ok {
		return nil
	}
	var jobData, siteData []byte
	if in.Job != "" {
		jobData, _ = bytes(in.Job)
	}
	site := &def.SiteFile{}
	if in.Site != "" {
		siteData, _ = bytes(in.Site)
	}
	tongue := def.Tongue(in.Language)
	if siteData != nil {
		var problems source.Problems
		site, problems = tongue.ReadSite(in.Site, siteData)
		ix.Problems = append(ix.Problems, problems...)
	}
	if tongue == "" {
		tongue = def.Tongue(site.Language.Value)
	}
	ix.Tongue = tongue
	d, problems := tongue.Read(in.Definition, data)
	ix.Def, ix.Problems = d, append(ix.Problems, problems...)
	gather(ix, in.Definition, files, bytes)
	if jobData != nil {
		j, problems := tongue.ReadJob(in.Job, jobData)
		ix.Problems = append(ix.Problems, problems...)
		ix.Problems = append(ix.Problems, d.Override(j)...)
	}
	ix.Job.Language, ix.Job.English = string(tongue), ix.Def.English
	if tongue != "" && tongue != "en" {
		sum.Write([]byte("in " + tongue + "\n")) // other paper of the same machine
	}
	d.TakeSite(site)
	if site.Logo.Written() {
		if name, ok := beside(ix, files, in.Site, in.Site, site.Logo); ok {
			ix.Logo, _ = bytes(name)
			ix.LogoFile = name
		}
	}
	for _, font := range []struct {
		named source.Text
		to    *job.FontFile
	}{{site.Fonts.Regular, &ix.Plain}, {site.Fonts.Bold, &ix.Strong}} {
		if !font.named.Written() {
			continue
		}
		if name, ok := beside(ix, files, in.Site, in.Site, font.named); ok {
			data, _ := bytes(name)
			*font.to = job.FontFile{File: name, At: font.named.At, Data: data}
		}
	}
	ix.Read = len(ix.Problems)
	for _, name := range in.Last {
		bytes(name)
	}
	if in.Spares != nil && *in.Spares != keep.UsualSpares {
		fmt.Fprintln(sum, "spares", *in.Spares)
	}
	ix.Job.Digest = hex.EncodeToString(sum.Sum(nil))[:8]
	return site
}

// decide runs the stages in order. Each leaves holes where it found problems and
// the next walks round them, so that one run tells everything.
func decide(ix *names.Index, spares *keep.Spares) {
	j := ix.Job
	tell := func(ps source.Problems) { ix.Problems = append(ix.Problems, ps...) }
	proofread.Limits(ix)
	ix.Chosen = choose.Machine(ix.Def, &ix.Problems)
	j.Choices = ix.Chosen.Choices
	ok := expand.Job(ix)
	ix.Problems.Follow(ix.Read, 1)
	if !ok {
		return
	}
	named := len(ix.Problems)
	defer func() { ix.Problems.Follow(named, 2) }()
	tell(plan.Boxes(j))
	tell(putback.Rows(j))
	keep.Close(j)
	tell(keep.Supplies(j))
	tell(plan.Work(j))
	w := walk.Of(j)
	w.Note()
	tell(hazard.Attach(j))
	proof.Bind(w)
	tell(proof.All(w))
	proofread.All(ix)
	tell(keep.Numbers(j))
	tell(keep.Tags(j, spares))
	blocks.Merge(j)
}
