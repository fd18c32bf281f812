package idiom

import (
	"saywright/grammar/phrase"
)

// What comes of one thing for another is tried: "would dropping a rail make the gap three", "how much gap do I lose with seven rails", "do the
// brackets meet with a two inch gap". The figure is of what it stands beside, and no change by so much. Everyday speech, no source.

// comesOfIt are such turns.
var comesOfIt = []phrase.Placed{
	// One fewer or one more of them, and what it comes to.
	{"^ [so|and] (would|will|could|might|does|can) (dropping|losing|removing|skipping|omitting|(taking (out|off|away))|(leaving (out|off))) (a|one) !(rail|board|slat|stiffener) (make|give|get|bring|leave|put|mean|(end up with)) [me|us] [(with|to|at)] [the|a] !(GAP|OPENING|WALL|HEIGHT|bays|(bottom gap)) [be|to|at|of] # [\\?] $$", "what if one $1 fewer , $2 $3", nil},
	{"^ [so|and] (would|will|could|might|does|can) (dropping|losing|removing|skipping|omitting|(taking (out|off|away))|(leaving (out|off))) (a|one) !(rail|board|slat|stiffener) (make|give|get|bring|leave|put|mean|(end up with)) [me|us] [(with|to|at)] [the|a] # !(GAP) [\\?] $$", "what if one $1 fewer , $3 $2", nil},
	{"^ [so|and] (would|will|could|might|does|can) (adding|(putting in)) (a|one|another|(one more)) !(rail|board|slat|stiffener) (make|give|get|bring|leave|put|mean|(end up with)) [me|us] [(with|to|at)] [the|a] !(GAP|OPENING|WALL|HEIGHT|bays|(bottom gap)) [be|to|at|of] # [\\?] $$", "what if one more $1 , $2 $3", nil},
	{"^ [so|and] (would|will|could|might|does|can) (adding|(putting in)) (a|one|another|(one more)) !(rail|board|slat|stiffener) (make|give|get|bring|leave|put|mean|(end up with)) [me|us] [(with|to|at)] [the|a] # !(GAP) [\\?] $$", "what if one more $1 , $3 $2", nil},
	{"^ [so|and] if (i|we) (make|made|have|had|set|use|used) [the|a] !(GAP) [(to|at|be)] # [,] [then] (i|we) (can|could|may) (drop|lose|skip|remove|omit|(do without)|(leave out)) (a|one) !(rail|board|slat|stiffener) [\\?] $$", "what if the $1 is $2 , one $3 fewer", nil},
	// So many of them, and how much comes of it.
	{"^ [so|and] how much (of the|of my|[the|my]) !(GAP|OPENING|HEIGHT) (do|would|will|could) (i|we) [have to] (lose|gain|(give up)|save|get) (with|at|for|using|on|if i use|if we use) ## RAIL [\\?] $$", "what if $2 rails , what is the $1 ?", nil},
	{"^ [so|and] how (much|far) (does|do|would|will) [the|my|our] !(GAP|gaps|OPENING) (shrink|grow|narrow|widen|tighten|close|open) [up|by] (with|at|for|using|if i use|if we use) ## RAIL [\\?] $$", "what if $2 rails , what is the $1 ?", nil},
	{"^ [so|and] ((do|does|will|would|could)|(is|are) [it|there]) ## RAIL (need|take|want|call for|mean) [a] (more|fewer|less|extra) (boards|lumber|wood|stock|timber) [\\?] $$", "what if $1 rails , what do i need to buy ?", nil},
	{"^ [so|and] (do|does|will|would|could) ## RAIL (need|take|want|mean|make|give) [me|us|for] [a|the] (((taller|higher|lower|shorter) wall)|(wall [be] (taller|higher|lower|shorter))) [\\?] $$", "what if $1 rails , how high is the wall ?", nil},
	{"^ [so|and] with ## RAIL [,] (is|are|would|will) [the|my] wall [be] (taller|higher|lower|shorter) [\\?] $$", "what if $1 rails , how high is the wall ?", nil},
	{"^ [so|and] with [a|an] # !(GAP) [,] (is|are|would|will) [the|my] wall [be] (taller|higher|lower|shorter) [\\?] $$", "what if the $2 is $1 , how high is the wall ?", nil},
	{"^ [so|and] (do|does|will|would|could) [a|an] # !(GAP) (need|take|want|mean|make) [for] (more|fewer|less) RAIL [\\?] $$", "what if the $2 is $1 , how many rails ?", nil},
	// Whether the brackets meet.
	{"^ [so|and] (do|does|will|would|could|can) [the|my|our|those] (bracket|brackets) (meet|touch|clear|clash|collide|hit|bump|overlap|interfere|(run into each other)|(hit each other)|(touch each other)|(clear each other)) [with|at|on] [a|an] # !(GAP) [\\?] $$", "what if the $2 is $1 , anything to watch out for ?", nil},
	{"^ [so|and] (do|does|will|would|could|can) [the|my|our|those] (bracket|brackets) (meet|touch|clear|clash|collide|hit|bump|overlap|interfere) (at|with) # [\\?] $$", "what if the gap is $1 , anything to watch out for ?", nil},
	{"^ [so|and] with ## RAIL [,] (do|does|will|would|could|can) [the|my|our|those] (bracket|brackets) (meet|touch|clear|clash|collide|hit|bump|overlap|interfere|(run into each other)|(hit each other)|(touch each other)|(clear each other)) [\\?] $$", "what if $1 rails , anything to watch out for ?", nil},
	{"^ [so|and] (do|does|will|would) [the|my|our|those] bracket|brackets|ears (stick|stand|poke|reach) out [by] # [\\?] $$", "is it true that the bracket ear is $1 ?", nil},
	// One figure against another quantity.
	{"^ [so|and] is a # QUANT|GAP|bay|OPENING (wider|bigger|larger|greater|more|higher|longer) than [the|my|our] !(QUANT|(bay ##)) [\\?] $$", "is it true that the $2 is under $1 ?", nil},
	{"^ [so|and] is a # QUANT|GAP|bay|OPENING (over|above) [the|my|our] !(QUANT|(bay ##)) [\\?] $$", "is it true that the $2 is under $1 ?", nil},
	{"^ [so|and] is a # QUANT|GAP|bay|OPENING (narrower|smaller|less|lower|shorter|tighter) than [the|my|our] !(QUANT|(bay ##)) [\\?] $$", "is it true that the $2 is over $1 ?", nil},
	{"^ [so|and] is a # QUANT|GAP|bay|OPENING (under|below) [the|my|our] !(QUANT|(bay ##)) [\\?] $$", "is it true that the $2 is over $1 ?", nil},
	// What it may be less or more than.
	{"^ [the|my|our] !(GAP|OPENING|WALL|HEIGHT|span|bay|(bottom gap)) is [at] # [high|wide|tall] [,|;|.] [and|so] (can|could|might) it be [made] [any|a bit|a little|even|still] (less|smaller|tighter|narrower|lower|shorter) [\\?] $$", "the $1 is $2 , what if the $1 is under $2 ?", nil},
	{"^ [the|my|our] !(GAP|OPENING|WALL|HEIGHT|span|bay|(bottom gap)) is [at] # [high|wide|tall] [,|;|.] [and|so] (can|could|might) it be [made] [any|a bit|a little|even|still] (more|bigger|larger|wider|higher|taller) [\\?] $$", "the $1 is $2 , what if the $1 is over $2 ?", nil},
	{"(keep|hold|leave) [all] [the|my|our|every] !(GAP|gaps) beneath #", "keep the $1 under $2", nil},
	// Rails that are longer are less short of their space.
	{"(cut|make|saw|leave|have|get) [all] [the|my|our|those|these] !(RAIL) # longer", "reduce the fit by $2", nil},
	{"(cut|cutting|saw|sawed) (them|those|these) # longer", "reduce the fit by $1", nil},
	{"^ [so|and] (can|could|should|would) [all] [the|my|our|those|these] !(RAIL) be [made|cut|sawn] # longer [\\?] $$", "what if i reduce the fit by $2", nil},
}
