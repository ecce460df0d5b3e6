// Package layout is a page engine for printed forms. It sets text, write-in
// boxes, tables and QR codes into blocks, stacks the blocks, breaks the stack
// into pages and hands back frames: plain lists of placed items.
//
// The unit is the millimetre, the origin is the top left corner and y grows
// downward. Type sizes are in points. Nothing is ever scaled, clipped or shrunk
// to fit: what does not fit is still placed at its size and comes back as a
// [Misfit] that carries the caller's [Ref] and says by how much.
//
// The parts, in the order of use:
//
//	Setter    makes blocks: Para and Line (text), Value, Tick, Field … (write-in
//	          boxes), QR. It measures through the two-method Measurer, which the
//	          painter implements.
//	Block     a value with a size and items; Above, Beside and their like join
//	          blocks into bigger ones. Blocks may be copied and placed many times.
//	Table     rows of blocks under a head that is repeated on each page.
//	Piece     a block in the flow of a sheet: gaps, what stays together, what is
//	          drawn again at the top of the next page.
//	Paginate  the one place where pages are broken; gives Pages.
//	Stock     labels of one size laid on pages in a grid, never scaled.
//	Dump      a frame as text, each item with its place, for comparing pages in
//	          tests; Readable gives what a person reads on it.
//
// Text is set as given: it is not normalised. A combining mark on its own and
// text that runs from right to left cannot be set properly by the painter, so
// both are refused with a Misfit rather than drawn wrongly; letters composed
// with their accent are what the fonts hold. Signs that trade text needs and the
// fonts lack (⌀ ☐ ☑ ✓ ⚠ and the like) are drawn as outlines in the line, with the
// character kept for searching and copying.
//
// Everything here is deterministic and free of global state. A Setter keeps a
// cache of QR symbols and must not be used by two goroutines at once.
package layout
