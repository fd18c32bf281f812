package idiom

import "saywright/grammar/phrase"

// What turned out otherwise than it was thought to be ("an inch longer than I thought") is corrected as what was said is, and what is pulled or squeezed
// by a length is changed by it. Everyday speech, no source.

// siteSlips are such turns.
var siteSlips = []phrase.Placed{
	{"# !(longer|shorter|wider|narrower|taller|higher|lower|bigger|smaller|tighter|deeper|more|less) than (i|we) [had|'d] (thought|figured|expected|reckoned|guessed|supposed|assumed|believed|remembered)", "$1 $2 than i said", nil},
	{"!(longer|shorter|wider|narrower|taller|higher|lower|bigger|smaller|tighter|deeper) than (i|we) [had|'d] (thought|figured|expected|reckoned|guessed|supposed|assumed|believed|remembered) by #", "$2 $1 than i said", nil},
	{"stretch [out] [the|my|our|all the|each|every] !(gap|gaps|opening|doorway|bottom gap) # $", "widen the $1 by $2", nil},
	{"squeeze [the|my|our|all the|each|every] !(gap|gaps|opening|doorway|bottom gap) # $", "narrow the $1 by $2", nil},
	{"[the] (first post|post 1|post one) [is|'s|at|goes] # from [the] !(left|right) [post|end] [,] [and] [the] second [one|post] [is|'s|at|goes] # from [the] !(left|right)", "post 1 $1 from the $2 and post 2 $3 from the $4", nil},
	{"[the] (second post|post 2|post two) [is|'s|at|goes] # from [the] !(left|right) [post|end] [,] [and] [the] first [one|post] [is|'s|at|goes] # from [the] !(left|right)", "post 2 $1 from the $2 and post 1 $3 from the $4", nil},
	{"^ [let us|ok|now] [just] start over|fresh and work in !(metric|millimeters|centimeters|inches)", "start over . work in $1", nil},
	{"start over|fresh (in|with|using) !(metric|millimeters|centimeters|inches|feet and inches)", "start over . work in $1", nil},
	{"^ [let us|please] define [the|my|our] !(opening|gap|bottom gap|span|wall height|kerf|overall) as #", "$1 is $2", nil},
}
