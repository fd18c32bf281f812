package lexicon

// Topics of ask and why that are no quantity.
var Tables = []string{"layout", "options", "marks", "posts", "cuts", "shopping", "cost", "steps", "cautions", "drawing",
	"spacer", "story pole", "hardware", "finish", "anchors", "shrinkage"}
