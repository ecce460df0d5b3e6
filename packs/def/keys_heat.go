package def

import "matchmark/packs/source"

// The keys of what is heated to come off or to go on.

var heatKind = &kind[Heat]{
	name:   "heat",
	doc:    "One joint that is opened by heat: to draw a hub off, to put it on, or both.",
	letter: "H",
	keys: append([]key[Heat]{
		varying("what", "What is heated.", "Coupling hub", func(h *Heat) *Varying { return &h.What }).must(),
		each(func(h *Heat) *[]source.Text { return &h.Each }),
		varying("fit", "The fit by its designation, bore first.", "120 H7/r6", func(h *Heat) *Varying { return &h.Fit }),
		varying("interference", "Least and greatest interference on the diameter, where no designation gives them.", "0.015 to 0.065 mm",
			func(h *Heat) *Varying { return &h.Interference }),
		varying("diameter", "The diameter of the joint, where no designation gives it.", "130 mm", func(h *Heat) *Varying { return &h.Diameter }),
		single("sizes", "Bore and seat as measured earlier; they count instead of the greatest interference.",
			"{bore: 120.011 mm, seat: 120.061 mm}", sizesKind, func(h *Heat, at source.Pos) *Sizes { h.Sizes.At = at; return &h.Sizes }),
		single("read", "The dimensions that read bore and seat on this job.", "{bore: D14, seat: D15}", readKind,
			func(h *Heat, at source.Pos) *Readings { h.Read.At = at; return &h.Read }),
		single("hub", "What is heated.", "{part: hub, material: carbon steel, outside: 210 mm, length: 150 mm, kind: plain carbon steel hub}", hubKind,
			func(h *Heat, at source.Pos) *Hub { h.Hub.At = at; return &h.Hub }).must(),
		single("shaft", "What it sits on.", "{part: shaft, material: carbon steel, behind: 600 mm}", shaftKind,
			func(h *Heat, at source.Pos) *Shaft { h.Shaft.At = at; return &h.Shaft }).must(),
		items("neighbours", "What sits beside it and must stay cool.", "[{what: Bearing cover, away: 85 mm, kind: bearing cover}]", neighbourKind, addNeighbour),
		text("nothing-near", "Why nothing beside it has to be protected.", "the shaft lies bare on its stands", func(h *Heat) *source.Text { return &h.NothingNear }),
		text("air", "How warm parts and air are when the heat goes on; 20 °C if not said.", "15 °C", func(h *Heat) *source.Text { return &h.Air }),
		single("grip", "Friction and smoothing, for what the joint holds and what it takes to pull it cold.",
			"{holding: 0.12, pulling: 0.24, smoothing: none, decided-by: works engineer, because: dry and clean steel}", gripKind, func(h *Heat, at source.Pos) *Grip { h.Grip.At = at; return &h.Grip }),
		single("at-work", "Where the joint works, warm and turning: what it holds is worked out there.",
			"{coldest: 5 °C, hottest: 60 °C, hub-over: 10 C rise, shaft-over: 20 C rise, rpm: 1480}", atWorkKind, func(h *Heat, at source.Pos) *AtWork { h.AtWork.At = at; return &h.AtWork }),
		text("seat-form", "The form of the seat, straight if not said; a taper and a shrink disc are not drawn or fitted by heat, and are refused with what to do instead.", "straight",
			func(h *Heat) *source.Text { return &h.SeatForm }).oneOf("straight", "taper", "shrink disc"),
		single("pull", "How it is drawn off.", "{by: torch, clearance: 0.02 mm, longest: 15 min, puller: Three-arm puller, shield: split sheet and mineral wool}", pullKind,
			func(h *Heat, at source.Pos) *HeatPull { h.Pull.At = at; return &h.Pull }),
		single("put-on", "How it is put on.", "{by: oven, oven: 180 °C, clearance: 0.10 mm}", putOnKind,
			func(h *Heat, at source.Pos) *HeatPutOn { h.PutOn.At = at; return &h.PutOn }),
		text("fire-watch", "How long the fire watch stays after the flame is out, where it is not as on the site.", "90 min", func(h *Heat) *source.Text { return &h.FireWatch }),
		text("note", "A remark printed on its sheet.", "The grub screw is out first.", func(h *Heat) *source.Text { return &h.Note }),
	}, applies(func(h *Heat) *Applies { return &h.Applies })...),
}

var sizesKind = &kind[Sizes]{
	name: "measured sizes",
	doc:  "A bore and a seat as measured, each with the temperature of its part.",
	keys: []key[Sizes]{
		text("bore", "The bore.", "120.011 mm", func(s *Sizes) *source.Text { return &s.Bore }).must(),
		text("seat", "The seat.", "120.061 mm", func(s *Sizes) *source.Text { return &s.Seat }).must(),
		text("bore-at", "How warm the hub was; 20 °C if not said.", "22 °C", func(s *Sizes) *source.Text { return &s.BoreAt }),
		text("seat-at", "How warm the shaft was; 20 °C if not said.", "22 °C", func(s *Sizes) *source.Text { return &s.SeatAt }),
	},
}

var readKind = &kind[Readings]{
	name: "readings of a fit",
	doc:  "The dimensions that read bore and seat.",
	keys: []key[Readings]{
		text("bore", "The dimension that reads the bore.", "D14", func(r *Readings) *source.Text { return &r.Bore }).marks("D").must(),
		text("seat", "The dimension that reads the seat.", "D15", func(r *Readings) *source.Text { return &r.Seat }).marks("D").must(),
	},
}

var hubKind = &kind[Hub]{
	name: "heated part",
	doc:  "What is heated: a plain ring as long as the fit.",
	keys: []key[Hub]{
		text("part", "The part.", "hub", func(h *Hub) *source.Text { return &h.Part }).must(),
		text("material", "What it is made of.", "carbon steel", func(h *Hub) *source.Text { return &h.Material }).must(),
		varying("outside", "Its outside diameter, where it is thinnest.", "210 mm", func(h *Hub) *Varying { return &h.Outside }).must(),
		varying("length", "The length of the fit.", "150 mm", func(h *Hub) *Varying { return &h.Length }).must(),
		text("kind", "What sort of part it is; it gives its highest temperature.", "plain carbon steel hub", func(h *Hub) *source.Text { return &h.Kind }),
		text("at-most", "The highest temperature that the site or the maker allows.", "200 °C", func(h *Hub) *source.Text { return &h.AtMost }),
		text("source", "Where that temperature comes from.", "site rule 12", func(h *Hub) *source.Text { return &h.Source }),
		text("yield", "Its yield stress; without it nothing is said of yielding.", "350 MPa", func(h *Hub) *source.Text { return &h.Yield }),
		text("strength", "Its tensile strength from the drawing, where it is of a brittle material; without it the weakest grade counts.", "250 MPa", func(h *Hub) *source.Text { return &h.Strength }),
	},
}

var shaftKind = &kind[Shaft]{
	name: "seat of a heated part",
	doc:  "What the heated part sits on.",
	keys: []key[Shaft]{
		text("part", "The part.", "shaft", func(s *Shaft) *source.Text { return &s.Part }).must(),
		text("material", "What it is made of.", "carbon steel", func(s *Shaft) *source.Text { return &s.Material }).must(),
		varying("bore", "The bore of a hollow shaft.", "40 mm", func(s *Shaft) *Varying { return &s.Bore }).noneOrMore(),
		varying("behind", "How far the shaft runs on behind, toward the machine.", "600 mm", func(s *Shaft) *Varying { return &s.Behind }).noneOrMore().must(),
		varying("front", "How far it stands out in front; flush if not said.", "20 mm", func(s *Shaft) *Varying { return &s.Front }).noneOrMore(),
		text("yield", "Its yield stress; without it nothing is said of yielding.", "300 MPa", func(s *Shaft) *source.Text { return &s.Yield }),
		text("torque", "The torque that it carries under the heated part; its shear is counted in the stress of the shaft.", "900 N·m", func(s *Shaft) *source.Text { return &s.Torque }).noneOrMore(),
	},
}

var neighbourKind = &kind[Neighbour]{
	name: "neighbour of a heated part",
	doc:  "What sits beside a heated part and must stay cool.",
	keys: []key[Neighbour]{
		text("what", "What it is.", "DE bearing cover", func(n *Neighbour) *source.Text { return &n.What }).must(),
		text("away", "How far it is from the near face of the heated part.", "85 mm", func(n *Neighbour) *source.Text { return &n.Away }).noneOrMore().must(),
		text("kind", "What sort of part it is; it gives its highest temperature.", "bearing cover", func(n *Neighbour) *source.Text { return &n.Kind }),
		text("at-most", "The highest temperature that the site or the maker allows.", "100 °C", func(n *Neighbour) *source.Text { return &n.AtMost }),
		text("source", "Where that temperature comes from.", "site rule 12", func(n *Neighbour) *source.Text { return &n.Source }),
		text("kept-cool", "How it is kept cool.", "wet cloth on the cover", func(n *Neighbour) *source.Text { return &n.KeptCool }),
		text("measured-with", "How its temperature is watched.", "contact probe on top", func(n *Neighbour) *source.Text { return &n.MeasuredWith }),
	},
}

// addNeighbour adds an empty neighbour to a heat.
func addNeighbour(h *Heat, at source.Pos) *Neighbour {
	n := &Neighbour{At: at}
	h.Neighbours = append(h.Neighbours, n)
	return n
}

var gripKind = &kind[Grip]{
	name: "grip",
	doc:  "What a joint is reckoned with for holding and for pulling.",
	keys: []key[Grip]{
		one(decimalForm, "holding", "Friction that is surely there: a low one, for what it holds.", "0.12", func(g *Grip) *source.Text { return &g.Holding }).must(),
		one(decimalForm, "pulling", "Friction that may be there: a high one, for the puller.", "0.24", func(g *Grip) *source.Text { return &g.Pulling }).must(),
		text("smoothing", "How much of the roughness is pressed flat: none, 0.8 of it (DIN 7190:2001) or 0.4 (DIN 7190-1:2017).", "none",
			func(g *Grip) *source.Text { return &g.Smoothing }).oneOf("none", "0.8", "0.4").must(),
		text("decided-by", "Who answers for the two frictions.", "R. Ashdown, works engineer", func(g *Grip) *source.Text { return &g.DecidedBy }),
		text("because", "Why they fit this joint.", "steel on steel, dry and clean", func(g *Grip) *source.Text { return &g.Because }),
		text("hub-rough", "Roughness height Rz of the bore.", "6 µm", func(g *Grip) *source.Text { return &g.HubRough }).noneOrMore(),
		text("shaft-rough", "Roughness height Rz of the seat.", "3 µm", func(g *Grip) *source.Text { return &g.ShaftRough }).noneOrMore(),
	},
}

var atWorkKind = &kind[AtWork]{
	name: "joint at work",
	doc:  "Where a joint works: the temperatures of the shaft under the hub, running or at rest, and the highest speed.",
	keys: []key[AtWork]{
		text("coldest", "The coldest that the shaft under the hub is.", "5 °C", func(w *AtWork) *source.Text { return &w.Coldest }).must(),
		text("hottest", "The hottest that it is.", "60 °C", func(w *AtWork) *source.Text { return &w.Hottest }).must(),
		text("hub-over", "How much hotter than its shaft the hub gets, as when it starts up; none if not said.", "10 C rise", func(w *AtWork) *source.Text { return &w.HubOver }),
		text("shaft-over", "How much hotter than its hub the shaft gets; none if not said.", "20 C rise", func(w *AtWork) *source.Text { return &w.ShaftOver }),
		one(decimalForm, "rpm", "The highest speed in turns a minute; at rest if not said.", "1480", func(w *AtWork) *source.Text { return &w.RPM }).noneOrMore(),
	},
}

var pullKind = &kind[HeatPull]{
	name: "hot pull",
	doc:  "How a hub is drawn off hot.",
	keys: []key[HeatPull]{
		text("by", "What heats it.", "torch", func(o *HeatPull) *source.Text { return &o.By }).oneOf("torch", "induction").must(),
		text("net", "The heat that goes into it, if it is known.", "20 kW", func(o *HeatPull) *source.Text { return &o.Net }),
		text("depth", "How deep induction heats; the outer face if not said.", "3 mm", func(o *HeatPull) *source.Text { return &o.Depth }),
		text("clearance", "How much looser than free it must be.", "0.02 mm", func(o *HeatPull) *source.Text { return &o.Clearance }),
		text("rise", "How much hotter than the shaft the maker wants it, instead of the clearance.", "90 C rise", func(o *HeatPull) *source.Text { return &o.Rise }),
		text("workable", "How long it takes from heat off until the part is off its seat, where the usual 60 s are not it.", "12 s", func(o *HeatPull) *source.Text { return &o.Workable }),
		text("workable-because", "Why it is drawn in that time.", "the hydraulic puller is under load before the heat goes on", func(o *HeatPull) *source.Text { return &o.WorkableBecause }),
		text("longest", "How long it is heated before giving up.", "15 min", func(o *HeatPull) *source.Text { return &o.Longest }).must(),
		text("puller", "What draws it, or none, where it is drawn off by hand.", "Three-arm puller", func(o *HeatPull) *source.Text { return &o.Puller }).must(),
		text("pulls-with", "What the puller is good for.", "300 kN", func(o *HeatPull) *source.Text { return &o.PullsWith }),
		text("shield", "What stands between the flame and the neighbour.", "split aluminium sheet and mineral wool", func(o *HeatPull) *source.Text { return &o.Shield }),
		text("if-stuck", "What is done when it does not move, besides stopping.", "call the engineer", func(o *HeatPull) *source.Text { return &o.IfStuck }),
	},
}

var putOnKind = &kind[HeatPutOn]{
	name: "hot fit",
	doc:  "How a part is put on hot.",
	keys: []key[HeatPutOn]{
		text("by", "What heats it.", "oven", func(o *HeatPutOn) *source.Text { return &o.By }).oneOf("oven", "induction", "torch").must(),
		text("net", "The heat that goes into it, if it is known: for the time in the heater.", "3 kW", func(o *HeatPutOn) *source.Text { return &o.Net }),
		text("oven", "What the oven or oil bath is set to: for the time in it.", "180 °C", func(o *HeatPutOn) *source.Text { return &o.Oven }),
		text("clearance", "The clearance it slides on with.", "0.10 mm", func(o *HeatPutOn) *source.Text { return &o.Clearance }),
		text("rise", "How much hotter than the shaft the maker wants it, instead of the clearance.", "90 C rise", func(o *HeatPutOn) *source.Text { return &o.Rise }),
		text("heat-to", "The temperature that the maker gives, if he gives one.", "110 °C", func(o *HeatPutOn) *source.Text { return &o.HeatTo }),
		text("chill", "What the shaft is cooled with, if heat alone is not enough.", "dry ice", func(o *HeatPutOn) *source.Text { return &o.Chill }).
			oneOf("dry ice", "liquid nitrogen"),
		text("coolant", "How much of it is brought into the room.", "20 kg", func(o *HeatPutOn) *source.Text { return &o.Coolant }),
		text("room", "The free volume of the room.", "400 m3", func(o *HeatPutOn) *source.Text { return &o.Room }),
	},
}
