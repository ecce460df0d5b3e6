package main

import (
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"runtime/debug"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing/fstest"

	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/def"
	"matchmark/packs/outage"
	"matchmark/packs/source"
	"matchmark/templates"
)

// A task is one job of an outage.
type task struct {
	in     packs.Inputs
	text   string // of the job file, where it was made of a row of a table
	name   string // for a person: the job file, or the table and its row
	folder string // for its files, under that of the outage
	twice  string // another task with the same folder, for which this one is not printed
}

// A rowFS is the disk, with job files besides that were made of rows of a table.
type rowFS struct {
	disk
	rows fstest.MapFS
}

// Open implements fs.FS.
func (r rowFS) Open(name string) (fs.File, error) {
	if f, ok := r.rows[name]; ok {
		return &stream{Reader: bytes.NewReader(f.Data)}, nil
	}
	return r.disk.Open(name)
}

// outage prints every job of a table or folder into a folder of its own, and an index
// of them all. One that fails does not stop the others.
func (p *printFlags) outage(definition string, s streams) int {
	part, of, err := shard(p.shard)
	switch {
	case err != nil:
		return s.usage(err, "hint: --shard 3/8\n")
	case p.out == "-" || p.job != "" || inputName(definition) == stdinName:
		return s.usage(errors.New("--jobs takes its jobs from files, and writes into a folder"), "hint: matchmark print FILE --jobs CSV --out DIR\n")
	}
	tasks, problems := p.tasks(definition)
	report(s.err, problems, source.Files{})
	if problems.Errors() > 0 {
		return exitFor(problems)
	}
	stem := "index"
	if of > 1 {
		stem = fmt.Sprintf("index-%d-of-%d", part, of)
		share := tasks[:0:0]
		for i, t := range tasks {
			if i%of == part-1 {
				share = append(share, t)
			}
		}
		tasks = share
	}
	done := p.printAll(tasks, s)
	if err := p.writeIndex(filepath.Join(p.out, stem), done); err != nil {
		fmt.Fprintf(s.err, "error: %v\n", err)
		return exitFiles
	}
	return summary(done, filepath.Join(p.out, stem), s)
}

// shard reads 3/8: the third of eight shares. Nothing is the whole.
func shard(text string) (part, of int, err error) {
	if text == "" {
		return 1, 1, nil
	}
	a, b, _ := strings.Cut(text, "/")
	part, err1 := strconv.Atoi(a)
	of, err2 := strconv.Atoi(b)
	if err1 != nil || err2 != nil || part < 1 || of < part {
		return 0, 0, fmt.Errorf("--shard %s is no share", text)
	}
	return part, of, nil
}

// tasks lists the jobs of an outage: the rows of a table in their order, or the job
// files of a folder by name.
func (p *printFlags) tasks(definition string) ([]task, source.Problems) {
	var out []task
	info, err := os.Stat(p.jobs)
	if err == nil && info.IsDir() {
		files, _ := filepath.Glob(filepath.Join(p.jobs, "*.yaml")) // the pattern is right
		slices.Sort(files)
		for _, f := range files {
			if filepath.Base(f) != siteBeside {
				out = append(out, task{in: p.with(definition, f), name: f})
			}
		}
		if len(out) == 0 {
			return nil, source.Problems{{Pos: source.Pos{File: p.jobs}, Severity: source.Error, Code: "empty-file", Message: "no job file (.yaml) lies in this folder"}}
		}
	} else {
		data, problems := source.Read(disk{}, p.jobs)
		if problems.Errors() > 0 {
			return nil, problems
		}
		rows, problems := outage.ReadJobs(p.jobs, data)
		if problems.Errors() > 0 {
			return nil, problems
		}
		for _, r := range rows {
			file := definition
			if r.Definition != "" {
				file = filepath.Join(filepath.Dir(p.jobs), r.Definition)
			}
			out = append(out, task{in: p.with(file, r.Name), text: r.Text, name: r.Name})
		}
	}
	name(out)
	return out, nil
}

// with are the input files of one job.
func (p *printFlags) with(definition, job string) packs.Inputs {
	in := p.inputs(definition)
	in.Job = job
	return in
}

// name gives each task its folder, by number and revision of its job. Of two with the
// same the later is not printed: it would take the folder of the first.
func name(tasks []task) {
	met := map[string]string{}
	for i := range tasks {
		t := &tasks[i]
		number, revision := t.order()
		t.folder = fileName(cmp.Or(number, "job") + "-" + cmp.Or(revision, "0"))
		if first, ok := met[t.folder]; ok {
			t.twice = first
			continue
		}
		met[t.folder] = t.name
	}
}

// order reads number and revision of a task's job, from the job file or else from the
// definition.
func (t *task) order() (number, revision string) {
	files := t.files()
	if data, problems := source.Read(files, t.in.Job); len(problems) == 0 {
		j, _ := def.ReadJob(t.in.Job, data)
		number, revision = j.Job.Number.Value, j.Job.Revision.Value
	}
	if number != "" && revision != "" {
		return number, revision
	}
	if data, problems := source.Read(files, t.in.Definition); len(problems) == 0 {
		d, _ := def.Read(t.in.Definition, data)
		number, revision = cmp.Or(number, d.Job.Number.Value), cmp.Or(revision, d.Job.Revision.Value)
	}
	return number, revision
}

func (t *task) files() fs.FS {
	if t.text == "" {
		return disk{}
	}
	return rowFS{rows: fstest.MapFS{t.in.Job: {Data: []byte(t.text)}}}
}

// printAll prints the tasks on all cores, and gives their summaries in order. Of a job
// no more is kept than that.
func (p *printFlags) printAll(tasks []task, s streams) []outage.Summary {
	defer debug.SetGCPercent(debug.SetGCPercent(tidiedOfMany))
	done := make([]outage.Summary, len(tasks))
	next := make(chan int)
	var tell sync.Mutex // the streams, and how many are done
	finished := 0
	var all sync.WaitGroup
	for range min(runtime.GOMAXPROCS(0), len(tasks)) {
		all.Add(1)
		go func() {
			defer all.Done()
			for i := range next {
				var talk bytes.Buffer
				done[i] = p.printTask(&tasks[i], &talk)
				tell.Lock()
				finished++
				word := counted(done[i].Pages, "page")
				if done[i].Failed != "" {
					word = "not printed: " + done[i].Failed
				}
				fmt.Fprintf(s.err, "%d of %d: %s: %s\n", finished, len(tasks), tasks[i].name, word)
				io.Copy(s.err, &talk)
				tell.Unlock()
			}
		}()
	}
	for i := range tasks {
		next <- i
	}
	close(next)
	all.Wait()
	return done
}

// printTask prints one job into its folder; what check says of it goes to talk.
func (p *printFlags) printTask(t *task, talk io.Writer) outage.Summary {
	number, revision := t.order()
	failed := func(why string, in ...source.Sentence) outage.Summary {
		s := outage.Summary{Job: number, Revision: revision, Title: t.name, Folder: "", Failed: why}
		if len(in) > 0 {
			s.Why = in[0]
		}
		return s
	}
	if t.twice != "" {
		return failed("number and revision are those of "+t.twice, source.Fixed("", "number and revision are those of %s", t.twice))
	}
	made, problems := p.make(t.files(), t.in)
	report(talk, problems, made.job.Files)
	if made.pack == nil {
		return failed(fmt.Sprintf("%s, the first: %s", counted(problems.Errors(), "problem"), problems.Error()), outage.Refused(problems))
	}
	if err := p.suits(made, talk); err != nil {
		return failed(err.Error())
	}
	w := made.writing(filepath.Join(p.out, t.folder, t.folder+fileName(p.chosen())))
	w.part, w.utf8 = p.partial(), p.tags.utf8
	if err := p.refused(w); err != nil {
		return failed(err.Error() + "; raise its revision, or say --replace")
	}
	err := w.collect()
	if err == nil {
		err = writeAll(w.files)
	}
	if err != nil {
		return failed(err.Error())
	}
	return outage.Of(made.job, t.folder, len(made.pack.Pages.Pages))
}

// writeIndex writes the index as PDF and as CSV.
func (p *printFlags) writeIndex(stem string, jobs []outage.Summary) error {
	paper, err := paperNamed(p.paper)
	if err != nil {
		return err
	}
	doc, misfits := templates.ComposeOutage(jobs, cmp.Or(string(p.language), outage.Language(jobs)), paper, pdf.NewFaces())
	if misfits.Errors() > 0 {
		return misfits
	}
	var table, sheet bytes.Buffer
	if err := errors.Join(outage.WriteCSV(&table, jobs), pdf.Write(&sheet, doc)); err != nil {
		return err
	}
	return writeAll([]output{{path: stem + ".csv", data: &table}, {path: stem + ".pdf", data: &sheet}})
}

// summary tells how many are printed and which are not.
func summary(jobs []outage.Summary, stem string, s streams) int {
	pages, tags, hours, crew := outage.Total(jobs)
	failed := 0
	for _, j := range jobs {
		if j.Failed != "" {
			failed++
			fmt.Fprintf(s.err, "not printed: %s %s (%s): %s\n", j.Job, j.Revision, j.Title, j.Failed)
		}
	}
	fmt.Fprintf(s.out, "%s of %s printed: %s, %s, %s hours, %s crew hours\n%s.pdf, %s.csv: the index\n", counted(len(jobs)-failed, "job"), strconv.Itoa(len(jobs)), counted(pages, "page"), counted(tags, "tag"), hours.Text(), crew.Text(), stem, stem)
	if failed > 0 {
		return exitProblems
	}
	return exitDone
}
