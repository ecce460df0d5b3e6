package codes

// jointCodes are the problems of fasteners and joints.
var jointCodes = []Entry{
	{"fasteners-out", "A joint is tightened while some of its fasteners are out.", "Fit them above it."},
	{"for-now-idle", "A joint says how tight it is held for now, and no step tightens it while its fasteners are in for now.", "Write tighten: below fit-for-now:, or take for-now: out."},
	{"joint-count", "A joint has another number of fasteners than its layout has places.", "Count them on the joint, and put both right."},
	{"joint-refused", "The calculation of a joint refuses what is given, for the reason in the message.", "Write what the message names, with its source."},
	{"joint-spread", "One joint holds fasteners that go back at different steps.", "Write each: to make a joint of each place."},
	{"layout-order", "An order of tightening cannot be read.", "Write crosswise, outward or in turn, or the maker's order by numbers."},
	{"layout-shape", "A layout has no shape, or two, or does not say how many fasteners stand where.", "Write one: circle:, rectangle:, oval:, split-line: or places:, with the numbers of the example."},
	{"look-at-joint", "A joint can be tightened so, and something in it is unusual.", "Read the reason; change the figure or leave it on purpose."},
	{"loosened-twice", "A joint is loosened twice and not tightened between.", "Take it out of one of the steps."},
	{"never-loosened", "A joint is tightened that is tight then.", "Loosen it before, or take it out."},
	{"never-tightened", "A joint or part is loosened, or a fastener goes back, and it is not tightened after that.", "Write tighten: at that step or later, or reverse: its section."},
	{"no-fasteners", "A joint does not say which fasteners it has.", "Write parts:."},
	{"no-joint", "A part comes off with screws that belong to no joint: nothing says how tight they become.", "Describe the joint, or write no-value: with how."},
	{"no-layout", "A joint of several fasteners has no layout, so its order is not drawn.", "Write layout:."},
	{"no-torque", "A joint does not say how tight its fasteners become.", "Write torque:, stages:, or no-value: if nobody gives one."},
	{"no-wrench", "No torque wrench that is fetched for a step reaches the torque of a joint tightened there.", "Add a wrench with such a range, or write the step behind for: of the one that reaches it."},
	{"not-a-preload", "A preload cannot be read.", "Write 75 % of proof, 210 kN, or 450 MPa."},
	{"not-a-torque", "A torque has another kind of unit.", "Write it in N·m or lb-ft; for a tensioner say tensioner:."},
	{"off-still", "A joint is tightened before some of its fasteners are back.", "Tighten it below."},
	{"thread", "A thread cannot be read.", "Write it as M24, M90x2, 3/4-10 UNC or Tr 40x7."},
	{"thread-differs", "A joint and its fastener have different threads.", "Put one right; fasteners of two threads are two joints."},
	{"friction-unbacked", "Frictions are not measured on this joint, and nobody stands behind them.", "Write decided-by: and because:."},
	{"joint-in-words", "The words of a step name a joint that it neither loosens nor tightens: there is no torque and nothing to tick.", "Write loosen: or tighten:, or take the mark out of the words."},
}
