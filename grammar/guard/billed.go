package guard

import (
	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/parse"
	"saywright/solver"
)

// A sum of money may be the bill for all of a thing, not the price of one; what the lumber costs is no budget; and what somebody says of a price may be
// the price, or a claim to be checked. Where nothing tells which it is, it is asked. Everyday speech about bills, no source.

const (
	hardware   = `{rail|post|concrete|joist }?{brackets|anchors|bases|caps|screws|hangers}`
	lumberWord = `{lumber|wood|materials?|timber|boards|stuff|lot of it}`
	aSum       = `{only|just|about|around|nearly|almost|roughly|some|like|maybe }*{\$ ?}?{[0-9][0-9.,]*|Number|a hundred}`
)

// priceOfEach tells that a price is that of one.
var priceOfEach = asWay(`\b{each|apiece|a piece|a pop|per|every|one|a {bracket|anchor|board|stick|foot|box|hundred|base|cap|post|screw|pound|pack|bag}|an anchor|for {a|an}}\b`)

// billed are such lines, each with what is heard of it.
var billed = []hear.OpenWay{
	// A bill for all of them.
	{Looks: tells(solver.Price), Way: asWay(`\b{` + hardware + `|` + soldBy + `}{ have|has|had|all|alone}* {came|come|comes|add|adds|added|amount|amounts|amounted|totaled|totalled|run|ran|runs} {up|out }?to ` + aSum), Not: priceOfEach, Ask: priceOrBill},
	{Looks: tells(solver.Price), Way: asWay(`\b{in all|altogether|all together|all told|in total|for {the lot|all of them|all|the set|the bunch|the whole lot|everything}}\b`), Not: priceOfEach, Ask: priceAloneOrBill},
	{Looks: tells(solver.Price), Way: asWay(`^{Lead|well|, }*all {the|of the|my|our|of my|those|these|of those|Number|[0-9]+} ` + hardware + `\b`), Not: priceOfEach, Ask: priceOrBill},
	{Looks: tells(solver.Price), Way: asWay(`\b{paid|spent|shelled out|laid out|gave|dropped|blew}{ them|him|out}? ` + aSum + `{ Number|dollars|bucks}* {for|on} {all|all of }?{the|my|our|these|those|them|all}{ Number|[0-9]+}? {` + hardware + `|` + soldBy + `|boards|posts}`), Not: priceOfEach, Ask: priceOrBill},
	{Looks: tells(solver.Price), Way: asWay(`\b{` + hardware + `|` + soldBy + `} {have|has|had|just|already|all|only }*{cost|set|ran} {me|us}( back)? ` + aSum), Not: priceOfEach, Ask: priceOrBill},
	{Looks: tells(solver.Price), Way: asWay(`^{Lead|well|, }*` + aSum + `{ Number|dollars|bucks}* for {all|all of }?{the|my|our|these|those} {` + hardware + `}{ Stop}*$`), Not: priceOfEach, Ask: priceOrBill},
	// What the lumber costs.
	{Looks: tells(solver.Budget), Way: asWay(`^{Lead|the|my|our|all the|, }*{lumber|wood|materials?|timber}{ :|,}? ` + aSum + `{ Number|dollars|bucks}* {so far|already|now|to date|by now}{ Stop}*$`), Ask: budgetOrCost},
	{Looks: tells(solver.Budget), Way: asWay(`\b` + lumberWord + ` {is|are|'s|was|were|will be|would be|should be|might be|comes? to|came to|comes? out (to|at)|ran|runs?|cost|costs|would run|will run|would cost|will cost|totals?|adds up to}{ me|us}? ` + aSum), Not: anyWordOf(`budget|limit|most|max|maximum|cap|capped|under|over|tops`), Ask: budgetOrCost},
	{Looks: tells(solver.Budget), Way: asWay(`^{Lead|well|, }*({that|this|it|which} {leaves|gives|makes|left}|{i|we} {get|come to|came to|make it|arrive at|come up with}){ me|us|it}? ` + aSum + `{ Number|dollars|bucks}* for {the|all the|all of the|my|our }?` + lumberWord + `{ Stop}*$`), Ask: budgetOrCost},
	{Looks: tells(solver.WallHeight), Way: asWay(`\b{wall|one|it|that|this} for {under|less than|below|no more than|not more than|up to|at most|within|around|about} `), Not: anyWordOf(`inch|inches|in|feet|foot|ft|tall|high|cm|mm|meters?|metres?|m`), Ask: hear.OpenQuestion("Is that money, or how high?", "budget 280")},
	// What somebody says of a price.
	{Looks: tells(solver.Price), Way: asWay(`^{Lead|well|, }*({he|she|they|dad|mom|{my|our|the|his|her} {Kin}}( just| also)? {says?|said|claims?|claimed|tells? me|told me|thinks?|reckons?|figures?|swears?} {that }?|{the|his|her|their|my|our} {quote|receipt|estimate|invoice|bill|bid|slip|order} {says?|said|has|had|lists?|listed|shows?|showed|puts?|gives?} )`), Not: anyWordOf(`store|shop|yard|lumberyard|mill|clerk|counter|desk|tag|sign|label|merchant|each|apiece`), Ask: priceOrClaim},
	{Looks: tells(solver.CostOf), Way: asWay(`\b{{rail|post|concrete }?{brackets?|anchors?|bases?|caps?}|screws|` + soldBy + `} {are|is|cost|costs|run|runs|go for} ` + aSum), Not: asWay(`\b{total|bill|quote|estimate|sum|all} ({is|was} |{comes|came|adds} {up }?to )`), Ask: hear.OpenQuestion("Is that the price of one, or what it costs in all?", "16 ft 2x6 are 14.50")},
}

// priceOrBill asks whether a sum is the price of one.
func priceOrBill(_ act.Act, all []act.Act) solver.Question {
	return solver.Question{Text: "Is that the price of each one?", Choices: []string{parse.Normal(all)}, Example: "brackets are 3.49 each"}
}

// priceAloneOrBill asks it where nothing else was told: what is "in all" may be that.
func priceAloneOrBill(a act.Act, all []act.Act) solver.Question {
	if len(all) > 1 {
		return solver.Question{}
	}
	return priceOrBill(a, all)
}

// budgetOrCost asks whether a sum is the most that may be spent, or what somebody says that it costs.
func budgetOrCost(a act.Act, all []act.Act) solver.Question {
	q := solver.Question{Text: "Is that the budget, or what it costs?", Example: "budget 400"}
	if len(all) == 1 && len(a.Statements) == 1 && a.Kind == act.State && a.Statements[0].Op == solver.Eq {
		q.Choices = []string{parse.Normal(all), parse.Normal([]act.Act{claimsCost(a)})}
	}
	return q
}

// priceOrClaim asks whether a price that somebody told is the price, or is to be checked.
func priceOrClaim(a act.Act, all []act.Act) solver.Question {
	if len(all) > 1 || a.Kind != act.State {
		return solver.Question{}
	}
	return solver.Question{Text: "Is that the price, or shall I check it against yours?", Choices: []string{parse.Normal(all), parse.Normal([]act.Act{claims(a)})}, Example: "brackets are 3.49"}
}
