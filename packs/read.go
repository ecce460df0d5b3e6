package packs

import (
	"crypto/sha256"
	"fmt"
	"hash"
	"io/fs"
	"strconv"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/keep"
	"matchmark/packs/names"
	"matchmark/packs/source"
)

// A reader reads the files of a job. Whatever it reads is kept with the job, to be put
// into the pack, and is part of the digest, in the order it is read.
type reader struct {
	files fs.FS
	in    Inputs
	ix    *names.Index
	sum   hash.Hash
}

// read takes the input files into the index, and gives the site file. Without a
// definition there is none in the index.
func read(files fs.FS, in Inputs, ix *names.Index) *def.SiteFile {
	r := &reader{files, in, ix, sha256.New()}
	fmt.Fprintln(r.sum, "matchmark", Format)
	data, ok := r.bytes(in.Definition)
	if !ok {
		return nil
	}
	jobData, siteData := r.optional(in.Job), r.optional(in.Site)
	site, tongue := r.site(siteData)
	d, problems := tongue.Read(in.Definition, data)
	ix.Tongue, ix.Def, ix.Problems = tongue, d, append(ix.Problems, problems...)
	gather(ix, in.Definition, files, r.bytes)
	if jobData != nil {
		j, problems := tongue.ReadJob(in.Job, jobData)
		ix.Problems = append(ix.Problems, problems...)
		ix.Problems = append(ix.Problems, d.Override(j)...)
	}
	ix.Job.Language, ix.Job.English = string(tongue), d.English
	if tongue != "" && tongue != "en" {
		fmt.Fprintln(r.sum, "in", tongue) // other paper of the same machine
	}
	d.TakeSite(site)
	r.besideSite(site)
	ix.Read = len(ix.Problems)
	for _, name := range in.Last {
		r.bytes(name)
	}
	if in.Spares != nil && *in.Spares != keep.UsualSpares {
		fmt.Fprintln(r.sum, "spares", *in.Spares)
	}
	ix.Job.SetDigest(r.sum.Sum(nil))
	return site
}

// bytes are those of a file; what keeps it from being read is told.
func (r *reader) bytes(name string) ([]byte, bool) {
	data, problems := source.Read(r.files, name)
	r.ix.Problems = append(r.ix.Problems, problems...)
	if len(problems) > 0 {
		return nil, false
	}
	r.ix.Job.Files[name] = data
	r.sum.Write([]byte(strconv.Itoa(len(data)) + "\n"))
	r.sum.Write(data)
	return data, true
}

// optional are the bytes of a file that need not be named, nil if it is not.
func (r *reader) optional(name string) []byte {
	if name == "" {
		return nil
	}
	data, _ := r.bytes(name)
	return data
}

// site reads the site file, an empty one if there is none, and tells the language of the
// paper: that which was asked for, else that of the site.
func (r *reader) site(data []byte) (*def.SiteFile, def.Tongue) {
	site, tongue := &def.SiteFile{}, def.Tongue(r.in.Language)
	if data != nil {
		var problems source.Problems
		site, problems = tongue.ReadSite(r.in.Site, data)
		r.ix.Problems = append(r.ix.Problems, problems...)
	}
	if tongue == "" {
		tongue = def.Tongue(site.Language.Value)
	}
	return site, tongue
}

// besideSite reads the logo and the fonts that a site file names.
func (r *reader) besideSite(site *def.SiteFile) {
	named := func(t source.Text) (name string, data []byte) {
		if t.Written() {
			if file, ok := beside(r.ix, r.files, r.in.Site, r.in.Site, t); ok {
				name, data = file, r.optional(file)
			}
		}
		return name, data
	}
	r.ix.LogoFile, r.ix.Logo = named(site.Logo)
	for _, font := range []struct {
		named source.Text
		to    *job.FontFile
	}{{site.Fonts.Regular, &r.ix.Plain}, {site.Fonts.Bold, &r.ix.Strong}} {
		if file, data := named(font.named); file != "" {
			*font.to = job.FontFile{File: file, At: font.named.At, Data: data}
		}
	}
}
