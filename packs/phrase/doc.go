// Package phrase looks for expressions in what is written: by how a step tells its work,
// how a reading is taken, how a part is called.
//
// Dozens of laws look through the same few hundred texts, and nearly every text has nothing
// of what nearly every law looks for. So a text is read once for all of them: which three
// signs stand behind one another in it, capitals as small letters, and all that is no letter,
// figure or underscore of ASCII as one space. An expression knows from its own form which words a text must
// have before it can match, and is run on those alone that have them. What it finds is what
// package regexp finds: a law writes its expression, and nothing else.
//
// An expression is taken apart when it is first asked for, and compiled when a text first
// has its words.
package phrase
