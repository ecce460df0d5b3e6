package job

import (
	"strconv"
	"strings"
)

// Stamp is what is struck into a metal tag, or etched into a part that goes through the
// wash: the mark with its place and the check letters of the key, C4 NDE XBVT. The letters
// tell it from the same mark of another machine or job.
func (t *Tag) Stamp() string {
	fields := strings.Fields(t.Key)
	return strings.Join(fields[min(2, len(fields)):], " ")
}

// Signs of the envelope of ISO/IEC 15434 and of its format 06, data identifiers: record
// separator, group separator, end of transmission.
const (
	recordSeparator   = "\x1e"
	groupSeparator    = "\x1d"
	endOfTransmission = "\x04"
)

// Enveloped is the text of a tag's code for systems that read data identifiers of ISO/IEC
// 15418 (ASC MH10.8.2) in the envelope of ISO/IEC 15434: S the number of the thing for all
// its life, which is the key; Q how many pieces; Z, agreed between the two sides, the letters
// of its content. Envelope, format and identifiers are from memory of these standards.
func (t *Tag) Enveloped() string {
	return "[)>" + recordSeparator + "06" +
		groupSeparator + "S" + t.Key + groupSeparator + "Q" + strconv.Itoa(Pieces(t.All())) + groupSeparator + "Z" + t.Content +
		recordSeparator + endOfTransmission
}
