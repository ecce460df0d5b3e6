package packs_test

// harmless are the kinds of mutants that check may be silent about. They stay
// under a tenth of all.
var harmless = map[string]string{
	"take equipment.serial":   "prints on the front sheet only; many machines have none",
	"take equipment.location": "prints on the front sheet only",
	"take job.scope":          "prints on the front sheet only",

	"take parts.*.mass":   "of a part that one person can carry, without a tag of its own: nothing is worked out from it",
	"take parts.*.thread": "its hand stands, and no reading is set by turning it",
	"take parts.*.holds":  "the caution that it asks for stands all the same",
	"take parts.*.renew":  "the old part goes back then, as found; what the step says and its limit stand",

	"take parts.*.behind":   "the order that is written stands; of another nothing is told then but by after: lines",
	"take parts.*.behind[]": "the order that is written stands; of another nothing is told then but by after: lines",

	"take dimensions.*.at":           "at how many places it is read is the choice of the author",
	"take dimensions.*.at.station":   "at how many places it is read is the choice of the author",
	"take dimensions.*.at.station[]": "at how many places it is read is the choice of the author",
	"take dimensions.*.at.plane":     "at how many places it is read is the choice of the author",
	"take dimensions.*.at.plane[]":   "at how many places it is read is the choice of the author",
	"take dimensions.*.nominal":      "the box is wide enough for the range of the instrument then",
	"take dimensions.*.on-the":       "the kind of the size says it as well; the key only prints it",
	"take dimensions.*.reuse":        "the limit for new parts holds for old ones then, which is stricter",

	"take lay-down.*.floor": "a remark for the rigger; nothing is worked out from it",
	"take sets.*.why":       "the set is kept together all the same",

	"take joints.*.stages[]":   "how many stages there are is the choice of the author",
	"double joints.*.stages[]": "the same stage may come twice, as after slackening",

	"take cautions.*.signs":   "the words stand without their sign",
	"take cautions.*.signs[]": "the words stand without one of their signs",
	"take cautions.*.result":  "hazard and how to avoid it stand",
	"take cautions.*.rule":    "the sentence about site rules stands",

	"take parts.*.guard":    "of a job without an isolation: no lock waits for it",
	"take joints.*.pattern": "of three or four fasteners that one order is told for",

	"take dimensions.*.source":     "of a reading that is only recorded: no limit needs a source",
	"take dimensions.*.lost-by":    "what the author knows of an order and the faces do not show",
	"take dimensions.*.lost-by[]":  "what the author knows of an order and the faces do not show",
	"take dimensions.*.critical":   "it stands on the sheet of critical dimensions as well then",
	"take dimensions.*.why-coarse": "of an instrument that is fine enough without it",

	// What is fetched is a list for the store: which tools a job takes no rule knows,
	// but a torque without a wrench is told.
	"take tools":                    "the words of the steps name them",
	"take tools.tester":             "the words of the step name it",
	"take tools.spanner":            "the words of the joint name it",
	"take tools.puller.only":        "it stands on the list for the put-back row as well then",
	"take tools.heater.only":        "it stands on the list for taking off as well then",
	"take tools.cradle":             "the words of the step name it",
	"take tools.cradle.count":       "no number stands on the list then",
	"take tools.puller":             "the words of the step name it",
	"take tools.puller.size":        "no size stands on the list then",
	"take tools.puller.for":         "it is fetched for the whole job then",
	"take tools.heater":             "the words of the step name it",
	"take spares":                   "fetched in case, which nothing shows",
	"take spares.bearing":           "fetched in case, which nothing shows",
	"take spares.bearing.count":     "no number stands on the list then",
	"take spares.bearing.note":      "a remark",
	"take consumables":              "the words of the steps name them",
	"take consumables.oil":          "the words of the step name it",
	"take consumables.oil.count":    "no amount stands on the list then",
	"take consumables.locker":       "the joint names it",
	"take consumables.locker.count": "no amount stands on the list then",

	"take steps.each":               "a section whose steps have nothing of a place",
	"take steps.steps.caution":      "a hazard note of the author's choice",
	"take steps.steps.missed.*":     "a hint that nothing else in the definition knows of",
	"take steps.steps.people":       "of work that no heavy part asks for",
	"take steps.steps.check":        "who looks as well is the choice of the author",
	"take steps.steps.back-caution": "the cautions of the step stand at its put-back row as well then",
	"take steps.steps.photo":        "the words of the step ask for it",
	"take steps.steps.each":         "one step for both places, whose moves and boxes are all there",
	"take steps.steps.after.*":      "one of several reasons; the step stays where it is written, below the others",
	"take steps.steps.after":        "without it the step follows the one above, which binds it more",
	"take steps.steps.from":         "where the parts lie is known from where they went",
	"take steps.steps.from[]":       "where the parts lie is known from where they went",
	"take steps.steps.leave-out":    "the words of the step say so, and the part goes back later all the same",
	"take steps.steps.empty":        "the closing row of the section asks for it then",
	"take steps.steps.empty[]":      "the closing row of the section asks for it then",
	"take steps.steps[]":            "a step of words only",
	"take steps.steps.loosen":       "its fasteners come off in the same step",
	"take steps[]":                  "a section of words only",
	"move a step":                   "neither of the two steps says that it comes after the other, and no part, face or hold binds them",
}
