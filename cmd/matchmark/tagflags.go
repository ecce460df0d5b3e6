package main

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/pflag"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/keep"
	"matchmark/packs/stock"
	"matchmark/templates"
)

// tagFlags are the flags of print that say on what tags are printed, and how many.
type tagFlags struct {
	stocks  []string
	start   int
	copies  map[string]int
	spares  map[string]int
	test    bool
	replace bool
	utf8    bool
	wrapped bool
}

func (g *tagFlags) add(f *pflag.FlagSet) {
	f.StringSliceVar(&g.stocks, "stock", nil, "print the tags on these `NAMES`, as 70x140-roll or one of the site file")
	f.IntVar(&g.start, "start", 1, "begin at this `PLACE` of a half-used sheet of labels, counted from 1")
	f.StringToIntVar(&g.copies, "copies", nil, "print each label so often, as `bag=2`: one for outside, one for inside")
	f.StringToIntVar(&g.spares, "spares", nil, "blank tags, as `hang=4,box=2,bag=6`; hang=4 if not said")
	f.BoolVar(&g.test, "test-page", false, "write only a page of each stock with outlines and rulers")
	f.BoolVar(&g.replace, "replace", false, "replace a pack of the same revision that has another digest")
	f.BoolVar(&g.wrapped, "envelope", false, "codes of hang tags and box labels with data identifiers (ISO/IEC 15418) in the envelope of ISO/IEC 15434")
	f.BoolVar(&g.utf8, "utf8-mark", false, "begin the register with the mark by which a spreadsheet knows UTF-8")
}

// options are what the flags say, with the stocks of the site.
func (g *tagFlags) options(jb *job.Job) (templates.TagOptions, error) {
	o := templates.TagOptions{Start: g.start, Envelope: g.wrapped}
	all := stocksFor(jb)
	for _, name := range g.stocks {
		s, ok := stock.Named(all, name)
		if !ok {
			var names []string
			for _, x := range all {
				names = append(names, x.Name)
			}
			return o, fmt.Errorf("no stock is called %q; there are %s", name, strings.Join(names, ", "))
		}
		if i := slices.IndexFunc(o.Stocks, func(x stock.Stock) bool { return x.Use == s.Use }); i >= 0 {
			return o, fmt.Errorf("%s and %s are both for the same tags", o.Stocks[i].Name, s.Name)
		}
		o.Stocks = append(o.Stocks, s)
	}
	copies, err := byUse("--copies", g.copies, 9)
	for u, n := range copies {
		o.Copies[u] = n
	}
	return o, err
}

// tagOptions are what the flags say of tags, with the stocks of the site on the paper that is
// printed on.
func (p *printFlags) tagOptions(jb *job.Job) (templates.TagOptions, error) {
	o, err := p.tags.options(jb)
	if err != nil {
		return o, err
	}
	paper, err := paperNamed(cmp.Or(p.paper, jb.Site.Paper))
	if err != nil {
		return o, err
	}
	most, name := 0, ""
	for use, usual := range stock.On(paper.Name, stock.Mm(paper.W), stock.Mm(paper.H)) {
		s := usual
		if i := slices.IndexFunc(o.Stocks, func(x stock.Stock) bool { return int(x.Use) == use }); i >= 0 {
			s = o.Stocks[i]
		}
		if n := s.Across * s.Down; n > most {
			most, name = n, s.Name
		}
	}
	if p.tags.start > most {
		return o, fmt.Errorf("--start %d: a sheet of %s has places 1 to %d, and no stock in use has more", p.tags.start, name, most)
	}
	return o, nil
}

// stocksFor lists the stocks of the site, then the usual ones.
func stocksFor(jb *job.Job) []stock.Stock {
	all := slices.Clone(jb.Site.Stocks)
	for _, p := range []layout.Paper{layout.A4, layout.Letter} {
		all = append(all, stock.On(p.Name, stock.Mm(p.W), stock.Mm(p.H))...)
	}
	return append(all, stock.Rolls()...)
}

// byUse reads numbers for uses of labels, each from 0 to most.
func byUse(flag string, numbers map[string]int, most int) (map[stock.Use]int, error) {
	out := map[stock.Use]int{}
	for word, n := range numbers {
		u := slices.Index(stock.Uses, word)
		if u < 0 || n < 0 || n > most {
			return nil, fmt.Errorf("%s %s=%d: it takes %s, each with a number up to %d", flag, word, n, strings.Join(stock.Uses, ", "), most)
		}
		out[stock.Use(u)] = n
	}
	return out, nil
}

// blanks are the blank tags that the flags ask for, nil for the usual ones.
func (g *tagFlags) blanks() (*keep.Spares, error) {
	if len(g.spares) == 0 {
		return nil, nil
	}
	n, err := byUse("--spares", g.spares, keep.MostSpares)
	if err != nil {
		return nil, err
	}
	return &keep.Spares{job.HangTag: n[stock.Hang], job.BoxLabel: n[stock.Box], job.BagLabel: n[stock.Bag]}, nil
}
