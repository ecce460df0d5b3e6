package words

// Tag are the words of tags and labels.
type Tag struct {
	Title, Spare, Keep, Stub, Reuse, Repair, OnHold, ScrapBag, ScrapKept string
	Outside, Inside, Compared, OldAmong, Mind                            string
	BagIn, Mass, MassAtLeast, SideFaces, InOne, InBag, InBags, InAll     Sentence
	BagsInside, Bags, Old, OldShort, OnRegister, ScrapListed             Sentence
	MoreKinds                                                            Counted
	Kind                                                                 map[string]string
}
