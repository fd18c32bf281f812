package idiom

import (
	"sync"

	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What goes while something else stays, with any words in front ("let's drop the stiffeners and keep the gap"), which of the two is named first or not, what is liked better than
// something else that is then not done ("I'd rather lose a board than raise the wall"), and bays that have another count than the rest. Everyday speech, no source.

const (
	// wishTo leads to an order.
	wishTo = "?ok|okay|so|well|now|and|but|alright ?, ?please|maybe|(let us)|((i|we) [really] (would|will|can|should|shall|could|(am going to)|(are going to)|((want|need|would like|would love) to)))|((you|we) can)|(can you)|(could you)|(why do not we)|(go ahead and)|we|i ?then ?just|simply|please|rather"
	// goesOff is what is forgotten.
	goesOff = "!(BESIDEQ|COUNTQ|([the|my|our|your] (OPENING|STIFF|bays|posts)))"
	andThen = "?, ?but|and|then ?please|(let us) ?just"
	midThen = ",|;|and|but|. ?and|but ?then ?please|(let us) ?just"
	oneBay  = "!(RAIL|STIFF)"
	aFew    = "!(one|two|three|four|five|six|seven|eight|nine|1|2|3|4|5|6|7|8|9)" // "boards six, bay 1 60" tells its width
	inRest  = "elsewhere|((everywhere|anywhere) else)|(in (all|each of) the (others|rest|(other bays)))|(in the (others|rest|(other (one|bay|bays))))"
)

var keptTurns = []phrase.Placed{
	{"^^ " + wishTo + " " + forgetting + " " + goesOff + " " + andThen + " " + keepsIt + " " + stayMany + " " + keptIn + " $$", "$1 the $2", nil},
	{"^^ " + wishTo + " " + forgetting + " " + goesOff + " and " + goesOff + " " + andThen + " " + keepsIt + " " + stayMany + " " + keptIn + " $$", "$1 the $2 and the $3", nil},
	{"^^ " + wishTo + " (never mind)|(forget about) ?about " + goesOff + " " + andThen + " " + keepsIt + " " + stayMany + " " + keptIn + " $$", "forget the $1", nil},
	{"^^ " + wishTo + " " + keepsIt + " " + stayMany + " " + keptIn + " " + midThen + " " + forgetting + " " + goesOff + " $$", "$1 the $2", nil},
	{"^^ " + wishTo + " " + keepsIt + " " + stayMany + " " + keptIn + " " + midThen + " (never mind)|(forget about) ?about " + goesOff + " $$", "forget the $1", nil},
	{"^^ " + wishTo + " " + keepsIt + " " + stayMany + " " + keptIn + " " + midThen, "", countGoes},
	{"^ " + wishTo + " drop|lose|shave|cut|take|knock|trim # ?in|of|off|from|off ?of|from ?the|our|my height|(wall height)|(height of [the] wall) $", "lower the wall by $1", nil},
	{"^ " + wishTo + " drop|lose|cut ?the|our|my height|(wall height)|(height of [the] wall) ?by # $", "lower the wall by $1", nil},
	// Never mind one thing, and then another.
	{"^^ ?ok|okay|so|well|no|oh ?, (never mind) ?about " + goesOff + " ,|;|.|- ?and|but|just", "forget the $1 ,", tellsBehind},
	// Bays that have another count than the rest.
	{"^^ ?the " + oneBay + " ?is|are|:|= ## ,|;|and ?but|and|with ?only|just ?in bay ## ?is|has|gets|with|:|= ?only|just " + aFew + " $$", "$2 $1 , $4 $1 in bay $3", nil},
	{"^^ ?the " + oneBay + " ?is|are|:|= ## ,|;|and ?but|and|with ?only|just ## in bay ## $$", "$2 $1 , $3 $1 in bay $4", nil},
	{"^^ ## " + oneBay + " ,|; ?but|and|with only|just ?in bay ## ?is|has|gets|with|:|= ?only|just " + aFew + " $$", "$1 $2 , $4 $2 in bay $3", nil},
	{"^^ ## " + oneBay + " ,|; ?but|and|with ?only|just in bay ## ?is|has|gets|with|:|= ?only|just " + aFew + " $$", "$1 $2 , $4 $2 in bay $3", nil},
	{"^^ ## " + oneBay + " in bay ## ,|;|and ?but|and ## ?of ?them " + inRest + " $$", "$4 $2 , $1 $2 in bay $3", nil},
	{"^^ bay ## ?is|has|gets|with|:|= ## " + oneBay + " ,|;|and ?but|and ## ?of ?them " + inRest + " $$", "$4 $3 , $2 $3 in bay $1", nil},
	{"^^ bay ## ?is|has|gets|with|:|= ## " + oneBay + " ,|;|and ?but|and none|no|zero " + inRest + " $$", "no $3 , $2 $3 in bay $1", nil},
	{"^^ ## " + oneBay + " in bay ## ,|;|and ?but|and none|no|zero " + inRest + " $$", "no $2 , $1 $2 in bay $3", nil},
}

var keptBook = sync.OnceValue(func() *phrase.Book { return phrase.BookOf(keptTurns) })

// countGoes: some of what is counted or measured goes, and that is changed: "keep the gap and drop an inch of height".
func countGoes(_, after []scan.Atom) bool {
	return len(after) > 2 && changesVerb[after[0].Text] && (addsOne[after[1].Text] || HasFigures(after[1:2]) || FigureStarts(after, 1))
}

// FigureStarts reports whether a figure begins at an atom.
func FigureStarts(atoms []scan.Atom, i int) bool {
	_, ok := FigureEnd(atoms, i)
	return ok
}

// tellsBehind: something is told behind, with a figure or a change.
func tellsBehind(_, after []scan.Atom) bool {
	return len(after) > 1 && tellsFigure(after) && !givesIt[after[0].Text]
}

// givesIt are verbs that give what was named a value: "never mind the trim, make it half an inch".
var givesIt = scan.WordSet("make call say set put it that use take go")

// changesVerb are the verbs that change something by an amount.
var changesVerb = scan.WordSet("lower raise lose drop add take cut shave trim widen narrow tighten loosen shrink reduce increase lift shorten lengthen close open move remove")

// hasVerb are the verbs that tell how it shall be.
var hasVerb = scan.WordSet("have use get build go keep do")

// likedBetter are the words of what is liked better than something else.
var likedBetter = scan.WordSet("rather sooner")

// ratherThan leaves out what is not to be done where something else is liked better: "I'd rather lose a board than raise the wall".
func ratherThan(atoms []scan.Atom) []scan.Atom {
	n := len(atoms)
	verb := 1
	if n > 2 && (atoms[0].Text == "i" || atoms[0].Text == "we") && (atoms[1].Text == "would" || atoms[1].Text == "had") {
		verb = 3
	}
	if n < verb+4 || !likedBetter[atoms[verb-1].Text] || !changesVerb[atoms[verb].Text] && !hasVerb[atoms[verb].Text] {
		return atoms
	}
	for i := verb + 2; i+1 < n; i++ {
		if atoms[i].Text != "than" {
			continue
		}
		if !changesVerb[atoms[i+1].Text] {
			return atoms
		}
		for _, a := range atoms[i+1:] {
			if a.Text == "," || a.Text == ";" || a.Text == "so" || a.Text == "if" {
				return atoms
			}
		}
		if hasVerb[atoms[verb].Text] {
			return atoms[:i]
		}
		return atoms[verb:i]
	}
	return atoms
}
