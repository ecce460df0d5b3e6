package words

// Tag are the words of tags and labels.
type Tag struct {
	Title, Spare, Keep, Stub, Reuse, Repair, OnHold, ScrapBag, ScrapKept, ScrapListed string
	Outside, Inside, Compared, OnRegister, Mind                                       string
	BagIn, Mass, MassAtLeast, SideFaces, MoreKinds, InOne, InBag, InBags, InAll       Sentence
	BagsInside, Bags, Old, OldShort                                                   Sentence
	Kind                                                                              map[string]string
}
