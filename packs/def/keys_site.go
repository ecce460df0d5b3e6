package def

import "matchmark/packs/source"

// A SiteFile is what a site file says: what is the same for all jobs of a site.
type SiteFile struct {
	At        source.Pos
	Company   source.Text
	Paper     source.Text
	Heavy     source.Text // mass above which nobody lifts alone
	FireWatch source.Text // time after hot work
	Critical  source.Text // share of a crane's rating from which a lift is critical
	Gloves    source.Text
	// Workable is the shortest time from heat off to off the seat that a crew of the site
	// works with.
	Workable, WorkableBecause source.Text
	Language                  source.Text
	Decimal                   source.Text // point or comma
	Roles                     []source.Text
	Logo                      source.Text // a picture beside the site file
	Fonts                     Fonts
	Cautions                  []*Caution // that steps of all definitions may name
	Stocks                    []*LabelStock
}

// Fonts are a site's own fonts, files beside the site file.
type Fonts struct{ Regular, Bold source.Text }

var fontsKind = &kind[Fonts]{
	name: "fonts of a site",
	doc:  "A site's own type for all text but values, marks and codes: TrueType files beside the site file that may be embedded. What they have no sign for is told at its place.",
	keys: []key[Fonts]{
		text("regular", "The font of plain text.", "fonts/Works-Regular.ttf", func(f *Fonts) *source.Text { return &f.Regular }).must(),
		text("bold", "The font of headings, and of what must be seen.", "fonts/Works-Bold.ttf", func(f *Fonts) *source.Text { return &f.Bold }).must(),
	},
}

// A LabelStock is what tags are printed on, as a site has it.
type LabelStock struct {
	Name                                        source.Text
	Use, On, Label, Across, Down, Pitch, First  source.Text
	Corner, Hole, HoleAt, Gap, Resolution, Turn source.Text
}

var stockKind = &kind[LabelStock]{
	name: "stock",
	doc:  "What tags and labels are printed on: a page that holds several, or a roll.",
	keys: []key[LabelStock]{
		text("for", "Which tags it is for: hang tags with a stub, box labels, bag labels.", "box", func(l *LabelStock) *source.Text { return &l.Use }).oneOf("hang", "box", "bag").must(),
		text("on", "The page, or roll for one label after the other.", "a4", func(l *LabelStock) *source.Text { return &l.On }).oneOf("a4", "letter", "roll").must(),
		text("label", "The size of one label as it is read, across and down.", "99.1 x 67.7 mm", func(l *LabelStock) *source.Text { return &l.Label }).must(),
		text("across", "How many labels lie beside each other.", "2", func(l *LabelStock) *source.Text { return &l.Across }),
		text("down", "How many labels lie below each other.", "4", func(l *LabelStock) *source.Text { return &l.Down }),
		text("pitch", "From the edge of one label to the same edge of the next, across and down.", "101.6 x 67.7 mm", func(l *LabelStock) *source.Text { return &l.Pitch }),
		text("first", "Where the first label begins: from the left and the upper edge of the page.", "4.65 x 13.1 mm", func(l *LabelStock) *source.Text { return &l.First }),
		text("corner", "The radius of the corners.", "2.5 mm", func(l *LabelStock) *source.Text { return &l.Corner }).noneOrMore(),
		text("hole", "The diameter of the hole for the wire.", "6 mm", func(l *LabelStock) *source.Text { return &l.Hole }),
		text("hole-at", "How far the middle of the hole is below the upper edge.", "11 mm", func(l *LabelStock) *source.Text { return &l.HoleAt }),
		text("gap", "The room between two labels of a roll.", "3 mm", func(l *LabelStock) *source.Text { return &l.Gap }).noneOrMore(),
		text("resolution", "Dots an inch of its printer.", "203", func(l *LabelStock) *source.Text { return &l.Resolution }),
		text("turned", "Whether the labels lie on their side on the page, their tops to the left.", "no", func(l *LabelStock) *source.Text { return &l.Turn }).oneOf("yes", "no"),
	},
}

var siteFileKind = &kind[SiteFile]{
	name: "site file",
	doc:  "What is the same for all jobs of a site.",
	keys: []key[SiteFile]{
		text("company", "The name on the front sheet.", "Marram Lime Works", func(s *SiteFile) *source.Text { return &s.Company }),
		text("paper", "The paper in the printer.", "a4", func(s *SiteFile) *source.Text { return &s.Paper }).oneOf("a4", "letter"),
		text("heavy", "The mass above which nobody lifts a part alone; 25 kg if not said.", "25 kg", func(s *SiteFile) *source.Text { return &s.Heavy }),
		text("fire-watch", "How long a fire watch stays after hot work, 30 min or more; 60 min if not said.", "60 min",
			func(s *SiteFile) *source.Text { return &s.FireWatch }),
		text("critical-lift", "The share of what the crane may lift from which a lift is critical; 75 % if not said.", "75 %",
			func(s *SiteFile) *source.Text { return &s.Critical }),
		text("workable", "The shortest time from heat off until a hub is off its seat that a crew can work with; 60 s if not said.", "90 s",
			func(s *SiteFile) *source.Text { return &s.Workable }),
		text("workable-because", "Why it takes that time.", "the torches are laid down outside the ring, then two pull", func(s *SiteFile) *source.Text { return &s.WorkableBecause }),
		flag("gloves", "Whether the boxes are written with gloves on; they are higher then.", "no", func(s *SiteFile) *source.Text { return &s.Gloves }),
		text("language", "The language of the paper, where --language says none; English if not said.", "es", func(s *SiteFile) *source.Text { return &s.Language }).oneOf(Tongues...),
		text("decimal", "The decimal sign, a point or a comma, of printed numbers and of readings that are typed; if not said the paper has that of its language, and readings are typed with a point.", "comma",
			func(s *SiteFile) *source.Text { return &s.Decimal }).oneOf("point", "comma"),
		mapOf("stocks", "What tags are printed on, by a name of the site's own.", "{99x68-a4: {for: box, on: a4, label: 99.1 x 67.7 mm, across: 2, down: 4, pitch: 101.6 x 67.7 mm, first: 4.65 x 13.1 mm}}", stockKind,
			func(s *SiteFile) *[]*LabelStock { return &s.Stocks }, func(l *LabelStock) *source.Text { return &l.Name }),
		list("roles", "Who signs: the roles that the site has.", "[supervisor, rigger, storekeeper]", func(s *SiteFile) *[]source.Text { return &s.Roles }),
		text("logo", "The picture on the front sheet: a PNG or JPEG file beside the site file, or an SVG drawing of filled paths, printed in greys.", "logo.png", func(s *SiteFile) *source.Text { return &s.Logo }),
		single("fonts", "The site's own fonts.", "{regular: fonts/Works-Regular.ttf, bold: fonts/Works-Bold.ttf}", fontsKind,
			func(s *SiteFile, _ source.Pos) *Fonts { return &s.Fonts }),
		mapOf("cautions", "Hazard notes of the site, which the steps of every definition may name.",
			"{belt-gallery: {signal: warning, hazard: Moving belts., avoid: Stay behind the rail.}}", cautionKind,
			func(s *SiteFile) *[]*Caution { return &s.Cautions }, func(c *Caution) *source.Text { return &c.Key }),
	},
}

// ReadSite reads a site file, as Read reads a definition.
func ReadSite(name string, data []byte) (*SiteFile, source.Problems) {
	return Tongue("").ReadSite(name, data)
}

// ReadSite reads a site file with its texts in the language.
func (t Tongue) ReadSite(name string, data []byte) (*SiteFile, source.Problems) {
	s := &SiteFile{}
	r := t.newReader(name, data)
	if root := r.root(data, "company: Marram Lime Works"); root != nil {
		s.At = r.firstKey(root)
		siteFileKind.fill(r, s, root, s.At)
	}
	return s, r.sorted()
}
