package paraphrase

import (
	"saywright/grammar/idiom"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

var (
	// RunOnOrders begin an order where what it is about stands behind them.
	RunOnOrders = scan.WordSet("make drop raise lower widen narrow forget scratch keep set save")
	// RunOnLeads are words behind which no order or question begins anew.
	RunOnLeads = scan.WordSet("to you i we can could will would should must may might do does did please not just and or then so but that which let us about know see tell me ask of for with at on in by from is are the a an my our who it")
	// RunOnTurns are words that may reach over the place where another sentence begins.
	RunOnTurns = scan.WordSet("not no never nor neither without if unless suppose supposing or than too but though although instead rather except maybe perhaps almost nearly he she they says said claims thinks reckons told cannot none nobody nothing until till because why whether while")
)

// OrderClasses are the classes of words that whole orders are written with.
var OrderClasses = append(TakingClasses, []lexicon.WordClass{
	{Name: "UNDID", Words: "undid undone took taken reversed reverted withdrew withdrawn cancelled canceled removed scratched dropped struck retracted revoked erased deleted"},
	{Name: "TRIED", Words: "tried tested ran did showed had considered sketched floated worked came figured looked gave suggested proposed found played got reckoned made"},
	{Name: "OWNS", Words: "my our the his her their"},
}...)

// MuchSo are words that stand before "too".
var MuchSo = scan.WordSet("way far a bit little touch tad still just really kind of kinda sort much somewhat rather lot right now all")

// Judges are the verbs of a judgment, and BesideJudged what may end it.
var (
	Judges       = scan.WordSet("is are 's 're was were looks look seems seem feels feel")
	BesideJudged = scan.WordSet("for me us my our taste her him them liking this now still really here there yet already together apart up in out")
)

// Creatures are those who are kept from slipping through gaps.
var Creatures = scan.WordSet("cat cats dog dogs puppy puppies kid kids child children toddler toddlers baby babies rabbit rabbits deer raccoon raccoons critter critters animal animals pet pets hen hens chicken chickens grandkids")

// Courtesy are words that may stand round an order and change nothing.
var Courtesy = scan.WordSet("please kindly ok okay well now just also actually sorry thanks hmm um uh oh no yes yeah hey then")

// ofPosts sets what is said of posts and bays to the plain words.
func ofPosts(atoms []scan.Atom) []scan.Atom {
	return outcomeOnly(addToBay(idiom.PostPhrasings().SetIn(atoms)))
}
