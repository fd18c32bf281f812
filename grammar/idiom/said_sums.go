package idiom

import "saywright/grammar/phrase"

// A quantity that leans on another, said without its "is": "bottom gap the gap plus half an inch", "gap half as much again"; shares that stand before what they
// are compared with. Everyday speech, no source.

// sumsTold are such turns.
var sumsTold = []phrase.Placed{
	{"^ !ANYQUANT|wall ?is|are|= ?the|my|our (same as)|(equal to)|(as much as)|as|equals ?the|my|our !ANYQUANT plus # $", "$1 is equal to $2 plus $3", nil},
	{"^ !ANYQUANT|wall ?is|are|= ?the|my|our (same as)|(equal to)|(as much as)|as|equals ?the|my|our !ANYQUANT minus|less # $", "$1 is equal to $2 minus $3", nil},
	{"^ !ANYQUANT|wall ?is|are|= ?the|my|our !ANYQUANT plus # $", "$1 is equal to $2 plus $3", nil},
	{"^ !ANYQUANT|wall ?is|are|= ?the|my|our !ANYQUANT minus|less # $", "$1 is equal to $2 minus $3", nil},
	{"^ !ANYQUANT|wall is|are|= ?the|my|our !ANYQUANT and # $", "$1 is equal to $2 plus $3", nil},
	{"^ !ANYQUANT ?is|are|= ?the|my|our !((twice|half|double|(two times)|(three times)) [the|my|our] ANYQUANT) minus|less # $", "$1 is equal to $2 minus $3", nil},
	{"^ !ANYQUANT ?is|are|= ?the|my|our !((twice|half|double|(two times)|(three times)) [the|my|our] ANYQUANT) plus|and # $", "$1 is equal to $2 plus $3", nil},
	{"^ !ANYQUANT ?is|are|= ?a|one gap and a half $", "$1 is one and a half times the gap", nil},
	{"^ !ANYQUANT ?is|are|= two of the|my|our gaps $", "$1 is twice the gap", nil},
	{"^ !ANYQUANT ?is|are|= three of the|my|our gaps $", "$1 is three times the gap", nil},
	{"!(half|twice|double) ?of what the|my|our !ANYQUANT is|measures", "$1 the $2", nil},
	{"half as much|big|wide|high|tall|large !ANYQUANT again", "$1 half as much again", nil},
	{"a|one third bigger|larger|wider|higher|taller|longer|more|greater than !ANYQUANT", "4 / 3 times the $1", nil},
	{"a|one fifth bigger|larger|wider|higher|taller|longer|more|greater than !ANYQUANT", "6 / 5 times the $1", nil},
	// Smaller rails are shorter ones.
	{"cut ?all ?of !them|RAIL ?all|by # smaller|less", "cut $1 $2 shorter", nil},
	{"cut ?all ?of !them|RAIL down ?by #", "cut $1 $2 shorter", nil},
	// A limit, and what would be better.
	{"^ !ANYQUANT ?is|should|must ?be !(at least|most) # but # is|'s|(would be)|('d be) better|best|nicer|ideal|preferred $", "$1 $2 $3 , $1 about $4", nil},
}
