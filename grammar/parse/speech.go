package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/solver"
)

// Speech is a line on its way from items to acts: what has been understood so far, and what is still open.
type Speech struct {
	C             act.Context
	Metric        bool
	Mixed         bool // a length of the line has a metric unit, and none another
	InCentimeters bool // the line says that it speaks in centimeters
	boards        bool // spare is counted in boards
	correcting    bool // after a word of correction
	stating       bool // after "I want", where a value may lean on what was spoken of
	Acts          []act.Act
	Ask           *solver.Question
	Carry         carry
	groups        []group
	head          *lex.Token // what gave the group at hand its force
	verified      bool       // it is asked whether something holds
	owned         []int      // acts that tell what is somebody's
}

// carry is what was spoken of last, for a part of the line that leaves it out: "gap two, but no more than three".
type carry struct {
	Name   *solver.Name
	senses []lexicon.Sense
	Kind   solver.Kind
	bay    int // of a measurement
	op     solver.Op
	item   *solver.Name // what was priced
	Wall   string
	spot   place          // of a bay, where something was measured last in the line
	slope  slope          // of a floor that was told to lie lower or higher at one end
	sold   []solver.Value // lengths on sale, with their size in name
}

// group is a stretch of the line with one force.
type group struct {
	force   act.Kind
	head    *lex.Token
	items   []Item
	sense   []lexicon.Sense // of a question: what its words ask for
	soft    []lexicon.Sense // of a why: what may be meant besides, where it fits
	topic   string
	named   string // the words that named the topic
	cmd     string
	name    string
	csv     bool
	dropped bool // taken back; only what it spoke of stays in mind
	sealed  bool // nothing after it changes its force
	leaves  bool // a farewell that takes no leave
	metric  bool // its sentence works in millimeters
	inside  bool // its head stands inside a part of the sentence, not at its beginning
}

// fail keeps the first thing that is not clear.
func (s *Speech) fail(at int, q solver.Question) {
	if s.Ask == nil {
		q.At = &at
		s.Ask = &q
	}
}

// EndPosts takes "end posts" for all posts where the word only tells what a distance is measured between: "end posts are
// 4x4, 12 ft on center", and nothing is said of added ones.
func (s *Speech) EndPosts() {
	sized, apart, added := -1, false, false
	for i, a := range s.Acts {
		for _, st := range a.Statements {
			switch st.Name.Quantity {
			case solver.EndPostSize:
				sized = i
			case solver.AddedPostSize:
				added = true
			case solver.Centers, solver.Span, solver.Overall:
				apart = true
			}
		}
	}
	if sized < 0 || !apart || added || s.mentions("end post") != 1 || s.saysBoth() || s.namesDistance() {
		return
	}
	for j := range s.Acts[sized].Statements {
		if n := &s.Acts[sized].Statements[j].Name; n.Quantity == solver.EndPostSize {
			n.Quantity = solver.PostSize
		}
	}
}

// namesDistance reports whether the distance between the end posts is called by its own name, or told before them, so that "end
// posts" does not tell what it lies between: "centers 162, end posts 6x6".
func (s *Speech) namesDistance() bool {
	told, sized, faces := false, false, false
	for _, g := range s.groups {
		for _, it := range g.items {
			if it.value() {
				if sized && faces && it.lim.lo.Size == "" {
					return true // "end posts are 6x6, face to face 130"
				}
				told, sized = told || it.lim.lo.Size == "", sized || it.lim.lo.Size != ""
				continue
			}
			faces = sized && it.Kind == lexicon.Dim
			if told && strings.Contains(it.Text, "end post") {
				return true
			}
			if it.Kind != lexicon.Part {
				continue
			}
			switch it.Key() {
			case "centers", "span", "overall":
				return true
			}
		}
	}
	return false
}

// mentions counts how often the line names something.
func (s *Speech) mentions(words string) int {
	n := 0
	for _, g := range s.groups {
		for _, it := range g.items {
			n += strings.Count(it.Text, words)
		}
	}
	return n
}

// Sentences cuts a line at its full stops and question marks.
func (s *Speech) Sentences(list []Item) {
	start := 0
	list = rejoined(list)
	for i, it := range list {
		if it.value() || it.Kind != lexicon.Stop && it.Kind != lexicon.QMark {
			continue
		}
		s.sentence(list[start:i], it.Kind == lexicon.QMark)
		start = i + 1
	}
	s.sentence(list[start:], false)
}

func (s *Speech) sentence(list []Item, asked bool) {
	if len(list) == 0 {
		return
	}
	for _, it := range list {
		if !it.value() && it.Kind == lexicon.Units {
			s.Metric = it.Key() == "metric" // for this sentence and what follows
		}
	}
	g := grouping{s: s, list: list, first: len(s.groups), asked: asked, g: group{force: act.State}}
	for i := range list {
		g.step(i)
	}
	g.flush(group{})
	for k := g.first; k < len(s.groups); k++ {
		s.groups[k].noMore()
	}
	g.whyNotAlone()
	g.whatIfLast()
	g.interrogative()
	g.topicFirst()
	g.wantsFigure()
	g.conditions()
	g.provisos()
	if asked {
		g.question()
	}
}
