package gist

import "saywright/grammar/act"

// gistName is what a quantity needs to be meant: with a figure, and where it is only named (asked for, explained, forgotten), with what
// may stand beside either. Terms are parted by blanks, the senses that each may have by bars; a row more is another way to name it.
type gistName struct {
	plain string // in plain words
	fig   gistFigure
	with  string // needed beside a figure
	named string // needed without one; "" is the same, "-" never
	may   string
	figs  []gistFigure // of a statement with several figures; the plain words hold them as #1, #2
	list  gistFigure   // of a statement with a list of figures, beside those; the plain words hold it as #*
	only  act.Kind     // Check of what is only claimed, State of what never is
}

// gistLine is a question, an order or a wish without a figure: what it needs and what may stand beside it.
type gistLine struct {
	normal string
	need   string
	may    string
}

// gistMode is what is done with what a sentence names: it is tried, held against the rest, explained, forgotten.
type gistMode struct {
	act    act.Kind
	need   string
	may    string
	names  bool // a quantity without a figure
	states bool // quantities with figures
}

// gistNames, gistLines, gistModes and gistWords are all the tables of the gist.
var (
	gistNames = [][]gistName{upNames, alongNames, shopNames, askedNames}
	gistLines = [][]gistLine{upLines, alongLines, askedLines, orderLines}
	gistWords = []string{commonSenses, upSenses, oneBoardSenses, boundSenses, alongSenses, shopSenses, askedSenses, orderSenses, planSenses, modeSenses, amendSenses}
)
