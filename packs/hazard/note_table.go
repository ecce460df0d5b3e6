package hazard

import (
	"slices"

	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/packs/phrase"
)

// builtins are the hazard notes that the program brings along, in our own words.
// They say what the hazard is, what happens, and how to keep clear of it, and
// never hold an act that is a step of the work. In the texts {watch} is the
// site's fire watch and {heavy} its heavy mass.
//
// The numbers of the signs are those of ISO 7010. The rules were read in the
// sources that state repeat them (29 CFR 1910.147, .252 and 1926.1101 through the
// Washington code and public forms; ASME P30.1 and DOE-STD-1090-96 themselves);
// 29 CFR 1910.146, 1910.1001, 1910.1200, Directives 2009/148/EC and 2013/35/EU,
// ISO 13732-1, ISO 14118 and NFPA 51B are named from memory. Which signal word a
// hazard gets is common practice, no source.
var builtins = []*builtin{
	{
		Caution: job.Caution{
			Key: "lockout", Signal: "danger", Signs: []string{"M028", "M021", "W012"},
			Hazard: "Machine that can start, or let go what is stored in it.",
			Result: "It turns, fills or drops on whoever is at it.",
			Avoid:  "Nobody at the machine before every point is locked and proved; no lock off but one's own.",
			Rule:   "29 CFR 1910.147(d); ISO 14118",
		},
		words: phrase.Words(`lock(?:ed)? out`),
		// A step that puts a lock on again after its own test is told by the note of unlocking,
		// unless its text speaks of locking out.
		does: func(_ *job.Job, st *job.Step) bool {
			return len(st.Lock) > 0 || len(st.LockAgain) > 0 && len(st.UnlockForNow) == 0
		},
	},
	{
		Caution: job.Caution{
			Key: "unlocking", Signal: "danger", Signs: []string{"M028", "W012", "W019"},
			Hazard: "Locks that come off.",
			Result: "What was shut off comes back on whoever is still at it.",
			Short:  "People, tools and rags clear first. Each lock off by its owner alone.",
			Avoid:  "People, tools and rags clear first, everybody told. Each lock off by its owner alone; after it nobody goes near before it is locked and proved.",
			Rule:   "29 CFR 1910.147(e); ISO 14118",
		},
		words: phrase.Words(`locks? (?:taken )?off`),
		does:  func(_ *job.Job, st *job.Step) bool { return len(st.Unlock)+len(st.UnlockForNow) > 0 },
	},
	{
		Caution: job.Caution{
			Key: job.ConfinedSpace, Signal: "danger", Signs: []string{"W041"},
			Hazard: "Enclosed space.",
			Result: "Bad air gives no sign, and the one who goes in to help falls as well.",
			Short:  "No head and no body inside without permit, gas test, attendant and rescue.",
			Avoid:  "No head and no body inside without permit, attendant, rescue, and a gas test at top, middle and bottom: oxygen first, then what burns, then poison.",
			Rule:   "29 CFR 1910.146",
		},
		words: phrase.Words(`confined space`),
		// Whoever needs the permit for entry is inside, at whichever step.
		does: func(j *job.Job, st *job.Step) bool {
			return slices.ContainsFunc(st.Open, func(o *job.Opening) bool { return o.Enclosed }) ||
				slices.ContainsFunc(st.Permits, j.IsEntry)
		},
	},
	{
		Caution: job.Caution{
			Key: hanging, Signal: "danger", Signs: []string{"W015", "P024", "W024"},
			Hazard: "Load that hangs.",
			Result: "A brake that slips or a sling that creeps lets it down on whoever is under it.",
			Short:  "Nobody under it, no hand or foot below it. The hook is never left alone.",
			Avoid:  "Nobody under it. No hand or foot below it or between it and its seat. Nobody moves the hook, and it is never left alone.",
			Rule:   "DOE-STD-1090-96 ch. 7; ASME P30.1",
		},
		words: phrase.Words(`while (?:it|the \w+) hangs`),
		does:  func(j *job.Job, st *job.Step) bool { return len(st.Hangs) > 0 || heldForBolts(j, st) },
	},
	{ // in place of the one above at steps that say what stands under the load
		Caution: job.Caution{
			Key: propUnder, Signal: "danger", Signs: []string{"W015", "P024", "W024"},
			Hazard: "Load that hangs.",
			Result: "A brake that slips or a sling that creeps lets it down on whoever is under it.",
			Short:  "Nobody under it, no hand or foot below it before what is written at the step stands under it. The hook is never left alone.",
			Avoid:  "Nobody under it. No hand or foot below it or between it and its seat; where a step writes what stands under it, not before that stands. Nobody moves the hook, and it is never left alone.",
			Rule:   "DOE-STD-1090-96 ch. 7; ASME P30.1",
		},
	},
	{
		Caution: job.Caution{
			Key: "lifting", Signal: "warning", Signs: []string{"W015", "P024", "M014", "M008"},
			Hazard: "Load on the hook.",
			Result: "A load that slips, swings or drops kills whoever is under it or beside it.",
			Short:  "Nobody under it, no hand between load and seat. One named person gives the signals.",
			Avoid:  "Nobody under it, no hand between load and seat. One named person gives the signals. No sling without its tag, none over a bare edge, none flatter than 30° to the floor.",
			Rule:   "ASME P30.1; 29 CFR 1910.184",
		},
		words: phrase.Words(`cranes?|hoists?|sling(?:s|ed)?|chain blocks?|chain falls?|shackles?|eye ?bolts?|lifting (?:beam|gear|eyes?|lugs?)|lift plan|trial lift`),
		does:  onHook,
	},
	{
		Caution: job.Caution{
			Key: "rotor-lift", Signal: "warning", Signs: []string{"W015", "W019", "W024"},
			Hazard: "Rotor leaving its bearings.",
			Result: "One that is not level catches on seals and blades, jumps free, and rolls.",
			Avoid:  "Heads and hands out of the housing, nobody between rotor and wall. No bare sling on journals, seals or blades. Its cradle stands ready and is chocked.",
			Rule:   "DOE-STD-1090-96 2.2; ASME P30.1",
		},
	},
	{
		Caution: job.Caution{
			Key: "hand-lift", Signal: "caution", Signs: []string{"W024", "M008", "M009"},
			Hazard: "Heavy part lifted by hand.",
			Result: "Backs and fingers are hurt when one lets go before the other.",
			Avoid:  "Nobody alone over {heavy}. Agreed who counts down; the way and the place to set it down are clear.",
			Rule:   "ISO 11228-1",
		},
		words: phrase.Words(`two people|two[- ]man`),
		// Who turns a shaft by hand lifts nothing.
		unlike: phrase.Of(`(?i)\b(turn|bar)(s|ed|ing)? (it |them )?((round |over )?by hand|(round )?(the |its )?(\pL+ )?(shaft|rotor|crankshaft|flywheel|coupling|screw|spindle)s?(\s*$| (\d|round|over|by|to|until|till|with|through|slowly|once|twice|one|a|half a|back|on|from|in|at|so|while|for|between|clockwise|against)\b))`),
		does:   byHand,
	},
	{
		Caution: job.Caution{
			Key: job.HotWork, Signal: "warning", Signs: []string{"W021", "W017", "P003", "M004"},
			Hazard: "Flame and sparks.",
			Result: "Oil, rags, coatings and dust burn, also behind the wall and an hour later.",
			Short:  "Nothing that burns within 11 m (35 ft) uncovered; a fire watch stays {watch} after the flame is out.",
			Avoid:  "Nothing that burns within 11 m (35 ft) uncovered. A fire watch with extinguisher stays {watch} after the flame is out. No chlorinated solvent near: its smoke is poison.",
			Rule:   "29 CFR 1910.252(a)(2); NFPA 51B",
		},
		words: phrase.Words(`torch(?:es)?|blowlamp|naked flame|flame[- ]cut|braz(?:e|ed|ing)|weld(?:ed|ing)? (?:it|the|a|on)|grind(?:ing)? (?:it|the|off|away)`),
		does: func(_ *job.Job, st *job.Step) bool {
			for _, p := range st.Permits {
				if allows, said := p.Allows(job.ForHotWork); allows || !said && p.Key == job.HotWork {
					return true
				}
			}
			return st.HeatsWith(heat.Torch)
		},
	},
	{
		Caution: job.Caution{
			Key: "heating", Signal: "warning", Signs: []string{"W017", "W021", "M009"},
			Hazard: "Hot part.",
			Result: "Metal that looks cold burns deep at a touch, and oil or solvent on it catches fire.",
			Short:  "All near it counts as hot until measured. Dry gloves rated for the heat; nothing past its written temperature.",
			Avoid:  "All near it counts as hot until measured. Dry gloves rated for the heat. No part wet with solvent goes into the heat, none goes past its written temperature, and no synthetic sling touches it.",
			Rule:   "ISO 13732-1; 29 CFR 1910.138",
		},
		words: phrase.Words(`heat(?:ed|ing)? (?:it|the|them|up|to|in|on|with|both|each)|warm(?:ed|ing)? (?:it|the|them|up|in|on|both|each)|hot pull|shrink fit|in(?:to)? the oven|hot plate|oil bath`),
		does:  func(_ *job.Job, st *job.Step) bool { return st.HeatsWith() },
	},
	{
		Caution: job.Caution{
			Key: "induction", Signal: "warning", Signs: []string{"W006", "P007", "W017", "W021"},
			Hazard: "Magnetic field of the induction heater.",
			Result: "It stops pacemakers, pulls tools, and heats rings and watches on the hand.",
			Avoid:  "Nobody with an implant inside the marked ring. Rings, watches and keys stay outside.",
			Rule:   "Directive 2013/35/EU",
		},
		words: phrase.Words(`induction`),
		does:  func(_ *job.Job, st *job.Step) bool { return st.HeatsWith(heat.Induction) },
	},
	{
		Caution: job.Caution{
			Key: "cold", Signal: "warning", Signs: []string{"W010", "W041", "M013", "M009"},
			Hazard: "Dry ice or liquid nitrogen.",
			Result: "It freezes skin at once, and its gas takes the place of air without a smell: one or two breaths and you drop.",
			Short:  "Never alone, doors open, gas meter on the chest: when it sounds, everybody out, and not back for the part.",
			Avoid:  "Never alone, never in a pit, doors open. The meter on the chest is for oxygen, and for carbon dioxide with dry ice; when it sounds, everybody out, and not back for the part. The vessel is never sealed.",
			Rule:   "29 CFR 1910.146(b): oxygen 19.5 to 23.5 %",
		},
		words: phrase.Words(`dry ice|liquid nitrogen`),
		does:  func(_ *job.Job, st *job.Step) bool { return st.Chills() },
	},
	{
		Caution: job.Caution{
			Key: "springs", Signal: "warning", Signs: []string{"W001", "M004"},
			Hazard: "Spring under load.",
			Result: "It throws cover, nut and spring when the last thread lets go.",
			Avoid:  "Face and hands out of its axis. No nut turns before it is known how far and how hard the spring pushes.",
			Rule:   "29 CFR 1910.147(d)(5)(i)",
		},
		words: phrase.Words(`spring (?:load|force|pressure)|compressed spring`),
		does:  func(j *job.Job, st *job.Step) bool { return frees(j, st, "spring") },
	},
	{
		Caution: job.Caution{
			Key: "pressure", Signal: "warning", Signs: []string{"W001", "M004", "M013"},
			Hazard: "Pressure or hot water behind the joint.",
			Result: "It sprays, scalds, and throws the cover.",
			Avoid:  "Body to the side of the joint. No bolt turns before the gauge stands at zero and the open drain has been seen. The bolts nearest to you are never the first.",
			Rule:   "29 CFR 1910.147(d)(5)",
		},
		does: func(j *job.Job, st *job.Step) bool { return frees(j, st, "pressure") },
	},
	{
		Caution: job.Caution{
			Key: "weight", Signal: "warning", Signs: []string{"W035", "W019"},
			Hazard: "Part that holds another one up.",
			Result: "What it holds comes down when it is slack.",
			Avoid:  "Nobody under it or in its way. Nothing is slackened before the other part hangs or stands by itself.",
			Rule:   "29 CFR 1910.147(d)(5)(i)",
		},
		does: func(j *job.Job, st *job.Step) bool { return frees(j, st, "weight") },
	},
	{
		Caution: job.Caution{
			Key: "propped", Signal: "warning", Signs: []string{"W024", "W035"},
			Hazard: "Load on screws or a cradle.",
			Result: "A screw that slips or a cradle that tips lets it down on hands and feet.",
			Short:  "No hand or foot under it or in the gap.",
			Avoid:  "No hand or foot under it or in the gap. All screws carry alike; the cradle stands on firm ground.",
			Rule:   "29 CFR 1910.147(d)(5)(i)",
		},
		words: phrase.Words(`(?:on|off) (?:the |its )?(?:jacking|saddle) screws|saddle screws (?:up|down)|jack(?:ed|s)? (?:it|the \w+) up|screw cradle|cradles? (?:under|up|down)`),
	},
	{
		Caution: job.Caution{
			Key: "asbestos", Signal: "warning", Signs: []string{"W071", "M017"},
			Hazard: "Old gasket or packing.",
			Result: "Where it holds asbestos, its dust makes cancer, years later.",
			Short:  "Fibre of unknown age: stop, leave it wet and whole, have it tested.",
			Avoid: "White or grey fibre of unknown age: stop, leave it wet and whole, have it tested. No dry scraping, no wire brush, no grinder, no air. " +
				"What goes in its place is free of asbestos: what the maker names, as graphite, aramid or PTFE. A new thickness changes bolt load and float.",
			Rule: "29 CFR 1926.1101 and 1910.1001; Directive 2009/148/EC",
		},
		offOnly: true,
		words:   phrase.Words(`gaskets?|packing rings?|gland packing`),
		does:    func(j *job.Job, st *job.Step) bool { return takesOff(j, st, oldFibre) },
	},
	{
		Caution: job.Caution{
			Key: "lagging", Signal: "warning", Signs: []string{"W071", "M017"},
			Hazard: "Old lagging or heat shield.",
			Result: "Where it holds asbestos, its dust makes cancer, years later.",
			Short:  "Fibre of unknown age: stop, leave it wet and whole, have it tested. New shields are free of asbestos: aluminium sheet with a mineral wool blanket.",
			Avoid: "White or grey fibre of unknown age: stop, leave it wet and whole, have it tested. No dry stripping, no wire brush, no grinder, no air. " +
				"What goes in its place is free of asbestos: as heat shield an aluminium sheet with a mineral wool blanket, or calcium silicate board.",
			Rule: "29 CFR 1926.1101 and 1910.1001; Directive 2009/148/EC",
		},
		offOnly: true,
		words:   phrase.Words(`lagging|thermal insulation|heat shield`),
		does:    func(j *job.Job, st *job.Step) bool { return takesOff(j, st, oldLagging) },
	},
	{
		Caution: job.Caution{
			Key: "solvent", Signal: "warning", Signs: []string{"W021", "P003", "M009"},
			Hazard: "Solvent.",
			Result: "Its vapour creeps, catches fire far from the tin, and makes dizzy.",
			Avoid:  "Lids on, air moving, nothing hot near. Gloves as the safety data sheet has them; never to wash hands.",
			Rule:   "29 CFR 1910.1200",
		},
		words: phrase.Words(`solvent|degreas(?:e|er|ing)|white spirit|acetone|brake cleaner`),
	},
	{
		Caution: job.Caution{
			Key: "sharp", Signal: "caution", Signs: []string{"W022", "M009"},
			Hazard: "Sharp edges.",
			Result: "Shims, blades and split lines cut deep.",
			Avoid:  "Cut-proof gloves. No finger along an edge that has not been stoned.",
			Rule:   "EN 388",
		},
	},
	{
		Caution: job.Caution{
			Key: "pinch", Signal: "caution", Signs: []string{"W024", "W019"},
			Hazard: "Parts that close on a hand.",
			Result: "Fingers are crushed between parts that turn or are drawn together.",
			Avoid:  "A bar finds the hole, never a finger. Nobody turns the shaft but at the word of the one named.",
			Rule:   "ASME P30.1; ISO 13854",
		},
	},
	{
		Caution: job.Caution{
			Key: "eyes", Signal: "caution", Signs: []string{"M004"},
			Hazard: "Flying bits.",
			Result: "A chip from a punch, brush or air hose takes an eye.",
			Avoid:  "Glasses with side shields, also for whoever stands by. Air for cleaning under 2 bar (30 psi).",
			Rule:   "29 CFR 1910.133(a); 1910.242(b)",
		},
		words: phrase.Words(`hammer|chisel|wire brush|blow (?:it|them) (?:out|off|clean)|compressed air`),
	},
	{
		Caution: job.Caution{
			Key: "foreign-material", Signal: "notice",
			Hazard: "Machine that stands open.",
			Result: "One chip, rag or tool left inside ruins it.",
			Short:  "Pockets empty, tools on cords; what falls in is told at once.",
			Avoid:  "Pockets empty, tools on lanyards, the cover on whenever nobody works at it. What falls in is told at once.",
			Rule:   "plant procedure for foreign material",
		},
		does: func(_ *job.Job, st *job.Step) bool { return len(st.Open) > 0 },
	},
}
