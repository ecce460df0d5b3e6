package codes

// orderCodes are the problems of verbs that stand at the wrong step.
var orderCodes = []Entry{
	{"hands-in", "A machine is opened, marked or gauged while a lock is off.", "Do it between the step that locks and the one that unlocks."},
	{"loose-at-unlock", "A lock comes off while a joint is loose that is tightened only later.", "Tighten it at a step above."},
	{"loose-load", "A load is lifted with fasteners in it that are loose.", "Tighten them before the lift."},
	{"idle-lift", "A load is raised by several steps, and none takes it off, puts it back or sets it down.", "Write remove:, fit: or set-down: at the step that lands it."},
	{"no-lift-permit", "One lift is made without the permit that others are made on.", "Write permit: at the step."},
	{"permit-early", "A permit that ends with the locks is asked for before they are on.", "Write permit: at the step that locks."},
	{"permit-late", "Work is done on no permit before the one that ends with the locks is asked for.", "Write permit: at the step that locks."},
	{"permit-out", "A lock comes off while a permit is out whose holder relies on it.", "Ask for the permit at that step, or write hand-back: above it."},
	{"opened-elsewhere", "An opening is opened at a step that does not take off what closes it.", "Write open: at the step that does."},
	{"closed-early", "An opening is said to be closed before any of what came off it is back.", "Write close: at the step that puts it back."},
	{"closed-uncounted", "An opening that a person can be in is closed over tools that have not been counted.", "Write tool-count: yes above close:."},
	{"counted-in-vain", "Something is counted when nothing has come off yet, or when the machine can turn already.", "Count after the work and before the locks come off."},
	{"no-last-count", "Containers are counted, and never when all is back.", "Write count-all: at the step before the locks come off."},
	{"decided-late", "It is decided which parts go back when some are back already.", "Decide above the first step that puts back."},
	{"seen-too-late", "A mark is made, or an order written down, when nothing stands as it ran.", "Do it at the step that takes the parts off, or above it."},
	{"pack-shut-in", "A pack of shims is measured as found while it is in its place.", "Measure it at the step that takes it out, or below."},
	{"read-in-machine", "A reading is taken on the bench of a part that is in the machine then.", "Read it at a step without where: bench, or write of: the part that is on the bench."},
	{"read-loose", "A reading between parts is taken while the joint that holds one of them is loose.", "Measure above loosen:, set below tighten:, or say under with: how it is read."},
	{"read-tight", "A reading is to be taken with a joint loose, and its step tightens that above it.", "Write the reading above tighten:, or tighten at a step below."},
	{"scrapped-unjudged", "A part that is renewed only if something is found on it goes to scrap as it comes off.", "Lay it into a container, or write renew: always."},
	{"said-elsewhere", "A verb or a part stands at a step that does not speak of it, and another step speaks of it.", "Move it there, or say in the words of its own step what is done."},
	{"said-not-done", "The words of a step tell of counting or locking, and the step has no key for it.", "Write the key, or say it in other words."},
}
