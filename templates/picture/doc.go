// Package picture draws: the two faces of a dimension with the arrow between them,
// the flank of a tooth, a lift from the side and from above, a hot joint cut along
// its axis, and its opening over time. Each takes data of the job and the words, and
// gives a block. Lifts, joints and charts are to scale; the pictures of dimensions
// are not.
package picture
