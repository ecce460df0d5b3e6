package words

// englishTag are the words of Tag in English.
var englishTag = Tag{
	Title: "Tags", Spare: "spare", Keep: "keep", Stub: "stub", Reuse: "reuse", Repair: "repair", OnHold: "hold",
	ScrapBag: "Scrap bag", ScrapKept: "the new parts compared with these; keep them until then", ScrapListed: "what belongs in it: register no. %s",
	Outside: "outside", Inside: "inside", Compared: "old part compared with the new one", OldAmong: "old ones among them, then scrap", OnRegister: "register no. %s", Mind: "mind:",
	BagIn: "%s, bag %s", Mass: "mass %s", MassAtLeast: "mass at least %s", SideFaces: "%s faces %s",
	MoreKinds: Counted{"one": "and 1 kind more", "other": "and %s kinds more"}, InOne: "%s in the %s", InBag: "%s in bag %s", InBags: "%s in %s bags", InAll: "%s in all",
	BagsInside: "bags inside: %s", Bags: "%s bags", Old: "%s (old, then scrap)", OldShort: "%s (old)",
	Kind: map[string]string{"bag": "bag", "box": "box", "tray": "tray", "crate": "crate"},
}
