package guard

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/parse"
	"saywright/solver"
)

// What is so much over, with nothing said behind it, or over a quote, is not so big: the figure is what it is off by. And what is more than somebody's
// plan has is no change of what stands, as the plan may have another figure. What clearance there is between the rails or the brackets is told by what
// is named beside it. Everyday speech, no source.

const (
	theirPaper = `{{the|their|his|her|our|my|your|that|this|any}{ old|original|first|new|shop|builder 's}? {plans?|blueprints?|prints?|paper|papers|sheet|sketch|drawings?|quote|estimate|bid|bill|receipt|list|spec|specs|invoice|price tag|tag}|plan|{planned|drawn|quoted|shown|specified|sketched}|{what }?{he|she|they|you|it|{the|my|our|his|her} {builder|carpenter|contractor|boss|neighbor|architect|designer|yard|store|framer|crew}} {have|has|had|shows?|showed|says?|said|drew|wrote|quoted?|put|lists?|listed|calls? for|called for}}`
	offUnits   = `{[0-9]|Number|cents?|dollars?|bucks?|quarters?|eighths?|sixteenths?|half|thirds?|inch|inches|in|feet|foot|ft|mm|cm|\$|"}`
)

// offBy are such lines, each with what is heard of it.
var offBy = []hear.OpenWay{
	{Looks: pricedAs, Way: asWay(`\b` + offUnits + ` over{ Stop}*$|\b` + offUnits + ` {over|under|above|below|more than|less than} {what {was on|is on|it says on} }?` + theirPaper + `\b`), Ask: hear.OpenQuestion("Is that the new price, or by how much it changed?", "brackets are 3.49")},
	{Looks: saidAsIs, Way: asWay(`\b` + offUnits + ` over{ Stop}*$|\b` + offUnits + ` {over|under|above|below} ` + theirPaper + `\b`), Ask: hear.OpenQuestion("Over by that? What is it to be?", "gap 2-1/2")},
	{Looks: changesOfWall, Way: asWay(`\bthan {in|on|at|per }?` + theirPaper + `\b`), Not: anyWordOf(`now|before|already`), Ask: hear.OpenQuestion("What is that, then? Please tell me the figure itself.", "gap 2-1/2")},
	// What somebody could put up with is no wish yet.
	{Looks: saidAsIs, Way: asWay(`\b{i|we|he|she|they} {can|could|would|might|'d|will} {just|still|also|even|probably|happily }*live with\b`), Not: asWay(`\bnot live\b|\b{wants?|wanted|put that|so make|make it|go with|let us}\b`), Ask: wantedHere},
	// The least gap of brackets is spoken of beside their other measures, and alone it may be either.
	{Looks: tells(solver.Gap), Way: asWay(`^({Lead|what if|suppose|the|a|our|my|min|minimum|is|at least|least|,|per the {sheet|tag|box|page}|{bracket }?{ear|ears|reach} (is )?[a-z0-9/ -]+[,;]?} )*clearances?( (on|of|for) (it|them|these|those))?{ is|of|at|to be|:|=|at least|minimum|exactly|just|about}* {[0-9]|Number|a|an|half|[0-9./ -]+ {in|mm|cm|inch|inches}}`), Not: asWay(`\b{between|under|below|beneath|boards?|rails?|slats?|gaps?|floor|bottom|ground|apart}\b`), Ask: gapOrBrackets},
}

// pricedAs reports whether a price is told.
func pricedAs(a act.Act) bool { return tells(solver.Price)(a) || tells(solver.AnchorSize)(a) }

// saidAsIs reports whether something is told to be of a size, or so many.
func saidAsIs(a act.Act) bool {
	return ofWallItself(a) && a.Statements[0].Op == solver.Eq && a.Statements[0].Value.Of == nil
}

// changesOfWall reports whether something of the wall becomes more or less by an amount.
func changesOfWall(a act.Act) bool {
	return ofWallItself(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return s.Op == solver.Plus || s.Op == solver.Minus })
}

// gapOrBrackets asks which of the two a clearance is, whatever is said beside it.
func gapOrBrackets(_ act.Act, all []act.Act) solver.Question {
	other := slices.Clone(all)
	for i := range other {
		other[i].Statements = slices.Clone(other[i].Statements)
		for j := range other[i].Statements {
			if s := &other[i].Statements[j]; s.Name.Quantity == solver.Gap {
				s.Name = solver.Name{Quantity: solver.BracketClearance}
			}
		}
	}
	forms := []string{parse.Normal(all), parse.Normal(other)}
	return solver.Question{Text: "The gap, or what the brackets need?", Choices: forms, Example: forms[1]}
}
