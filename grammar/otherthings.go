package grammar

import (
	"slices"
	"strings"

	"saywright/solver"
)

// Beside what is wanted of the wall a line may tell of things that are none of it: "the hedge is 1.8 m, the wall is 1.1 m high",
// "I paid 120 for the mixer, so what's the wall going to cost", "hand me those clamps, now the gap is two". A clause whose subject or object is such a
// thing says nothing of the wall, whatever figure it holds, as long as it names no part of the wall beside a figure, asks and judges nothing, and
// what is left says by itself all that it says, without leaning on what was left out.

// besideWall are things of a house, a yard, a shop, a kitchen, the road and the body. What a wall, a cut or a price may be told by (saw, blade, tape, level, floor,
// drawing, clerk) is not among them.
var besideWall = wordSet(`
	hedge hedges bench benches grill grills barbecue table tables chair chairs couch sofa hammock planter planters flowerpot pot pots tub tubs spa sauna pool pond fountain birdbath statue
	closet closets wardrobe dresser cupboard cupboards cabinet cabinets shelf shelves bookcase bookshelf drawer drawers desk desks bed beds crib cradle fridge refrigerator freezer oven stove sink dishwasher washer dryer
	microwave toaster kettle piano guitar television tv radio stereo lamp lamps clock clocks mirror mirrors rug rugs carpet curtain curtains
	blinds sill chimney fireplace furnace boiler heater radiator faucet hydrant gutter gutters downspout downspouts roof rafters joist joists ceiling attic stairs staircase stairway steps
	ladder ladders scaffold bucket buckets wheelbarrow barrow mixer mixers shovel shovels rake rakes broom brush brushes hose hoses mower mowers trimmer clamp clamps drill drills sander sanders planer router compressor generator
	sawhorse sawhorses workbench toolbox toolbag vise anvil hammer hammers mallet chisel chisels crowbar wrench wrenches pliers screwdriver screwdrivers battery batteries charger cord cords extension lantern flashlight torch
	truck trucks trailer trailers van vans car cars tractor tractors boat boats kayak kayaks canoe canoes bike bikes bicycle bicycles scooter scooters motorcycle bus buses train trains plane planes wagon wagons cart carts stroller strollers pram
	wheelchair walker mailbox mailboxes trampoline swing swings slide sandbox seesaw goalpost flagpole trellis birdhouse doghouse kennel coop coops hutch greenhouse garage carport sidewalk
	curb alley highway bridge tree trees bush bushes shrub shrubs roses tulips vine vines ivy flower flowers tomato tomatoes 
	dog dogs cat cats horse horses pony cow cows goat goats sheep pig pigs hen hens chicken chickens rooster duck ducks goose geese rabbit rabbits squirrel squirrels raccoon raccoons bird birds bee bees wasp wasps ant ants mosquito mosquitoes
	baby babies toddler toddlers kid kids twins
	knee knees back shoulder shoulders elbow elbows arm arms leg legs foot hand hands thumb thumbs finger fingers eyes ears ear nose neck head belt boots boot shoe shoes glove gloves hat hats coat coats jacket pants shirt socks glasses
	lunch dinner supper breakfast coffee tea beer pizza sandwich sandwiches soup cake cookies donut donuts egg eggs chili bread milk water soda snack snacks
	weather rain snow ice sun wind fog storm heat cold thunder lightning forecast temperature
	phone phones computer laptop printer camera game movie song music football baseball soccer match church school meeting appointment dentist doctor bank bill bills taxes rent mortgage insurance
	delivery deliveries concrete gravel sand cement mortar paint stain primer varnish brick bricks block blocks paver pavers tile tiles stone stones boulder rebar plywood drywall insulation shingle shingles siding pipe pipes
	wire wires cable cables tarp tarps rope ropes chain chains pallet pallets crate crates barrel barrels trash garbage dumpster
`)

// thingVerbs are verbs by which a clause tells what a thing is, has or does; any that ends in -s, -ed or -ing behind one is as good.
var thingVerbs = wordSet("is are was were 's 're has have had stands measures sits goes went takes took costs cost came comes got gets needs weighs runs ran hangs hung reads holds held leans fell broke will would can")

// thingAdverbs may stand before such a verb.
var thingAdverbs = wordSet("already only just still also now about nearly almost alone always usually")

// commandsToHand are verbs with which somebody near is told to do something with a thing.
var commandsToHand = wordSet("hand toss pass hold grab fetch bring throw watch mind help move lift carry pick feed walk wash clean answer mow water unload load close shut lock plug unplug")

// gotFor are verbs of paying and buying, of what is no lumber.
var gotFor = wordSet("paid spent bought sold borrowed rented lent lost found broke fixed painted mowed fed washed cleaned burned dropped ate")

// toldBesideWall reports whether a clause tells only of a thing that is none of the wall.
func toldBesideWall(part []atom) bool {
	if slices.ContainsFunc(part, func(a atom) bool { return a.text == "?" || a.text == `"` }) {
		return false
	}
	for len(part) > 1 && (joints[part[0].text] || part[0].kind == aSign || part[0].text == "because" || part[0].text == "since") {
		part = part[1:]
	}
	for len(part) > 1 && part[len(part)-1].kind == aSign {
		part = part[:len(part)-1]
	}
	if len(part) < 3 {
		return false
	}
	figure, wall := false, false
	_, thing := thingAt(part, 0)
	for i, a := range part {
		switch w := a.text; {
		case a.kind == aDigits || a.kind == aVulgar || a.kind == aWord && (words().numberish(w) || numerals()[w] || units[w] > 0 || tens[w] > 0):
			figure = true
		case turning[w] && !sizeUnits[w] || withheld[w] || viewed[w] || asksByWord[w] && !thingVerbs[w] || wishing[w] && w != "have":
			return false
		case a.kind == aWord && i >= thing && partAt(part, i) && !besideWall[w]:
			wall = true
		}
	}
	if figure && wall {
		return false
	}
	switch first := part[0].text; {
	case thing > 0:
		for thing < len(part) && (slotDegrees[part[thing].text] || thingAdverbs[part[thing].text]) {
			thing++ // "the grill already cost us 450"
		}
		return thing < len(part) && (thingVerbs[part[thing].text] || figure && !wall && startsAmount(part, thing))
	case commandsToHand[first] && !figure:
		i := 1
		for i < len(part) && (part[i].text == "me" || part[i].text == "us" || part[i].text == "up" || part[i].text == "over") {
			i++
		}
		_, end := thingAt(part, i)
		return end > i
	case speakers[first] && gotFor[part[1].text]:
		for i := 2; i < len(part); i++ {
			if _, end := thingAt(part, i); end > i {
				return true
			}
		}
	case (first == "it" || first == "its") && figure && !wall:
		last := part[len(part)-1].text
		return strings.HasPrefix(last, "degree") || slices.ContainsFunc(part, func(a atom) bool { return a.text == "degrees" })
	}
	return false
}

// sizeUnits are units among the turning words: the figure of a thing may have one.
var sizeUnits = wordSet("inch inches foot feet yard yards cm mm meter meters metre metres millimeters centimeters")

// thingAt finds a thing at an atom, with what stands before it: "the old hot tub". It returns where the thing and where it ends.
func thingAt(part []atom, i int) (at, end int) {
	for i < len(part) && (owned[part[i].text] || noun[part[i].text] || part[i].text == "that" || part[i].text == "this") {
		i++
	}
	for n := 0; n < 3 && i < len(part); n++ {
		if besideWall[part[i].text] || n > 0 && besideThing[part[i-1].text] && (part[i].text == "door" || part[i].text == "doors" || part[i].text == "gate") {
			at = i
			if !besideWall[part[i].text] {
				return at, i + 1 // "the patio door"
			}
			for i < len(part) && besideWall[part[i].text] {
				i++
			}
			if i < len(part) && (thingEnds[part[i].text]) {
				i++
			}
			return at, i
		}
		w := part[i].text
		if part[i].kind != aWord || thingVerbs[w] || !besideThing[w] && (partAt(part, i) || !leadingWords[w] && !foreignWord(w)) {
			return 0, 0
		}
		i++
	}
	return 0, 0
}

// thingEnds are the second words of things in two words: "the truck bed", "the bench seat"; besideThing are first ones that a table knows.
var (
	thingEnds   = wordSet("bed seat top door doors door window post posts rod lid leg legs cover stand box house pole bar")
	besideThing = wordSet("hot back front side patio deck porch kitchen house yard tool truck hall bath bed living dining wood gas power steel iron plastic wooden")
)

// leansOnFigure reports whether what is left of a line reckons from a figure that was left out: "the wall is six higher", "twice that".
func leansOnFigure(left []atom) bool {
	for i, a := range left {
		if (a.text == "twice" || a.text == "half" || a.text == "double" || a.text == "times") && i+1 < len(left) && (left[i+1].text == "that" || left[i+1].text == "it" || left[i+1].text == "as") {
			return true
		}
		if (a.text == "plus" || a.text == "minus" || a.text == "up" || a.text == "down") && i+1 < len(left) && numeric(left[i+1]) {
			return true
		}
		if compares[a.text] && i > 0 && (numeric(left[i-1]) || sizeUnits[left[i-1].text]) && (i+1 >= len(left) || left[i+1].text != "than") {
			return true
		}
	}
	return false
}

// leansBack reports whether what is left of a line leans on what was left out: "wall 10 less", "the same for the wall", "make it match".
func leansBack(left []atom) bool {
	for i, a := range left {
		switch w := a.text; {
		case w == "same", w == "match", w == "matches", w == "matching", w == "as", w == "that", w == "those", w == "this", w == "it", w == "them", w == "they", w == "twice", w == "double", w == "ditto", w == "too", w == "also", w == "like", w == "likewise", w == "even", w == "level", w == "flush":
			return true
		case compares[w] && (i+1 >= len(left) || left[i+1].text != "than"):
			return true
		}
	}
	return false
}

// reckonedFromThing asks back where a change is reckoned from the figure of a thing that is none of the wall: "the table is 30 high and the
// wall is six higher".
func reckonedFromThing(r Reading, atoms []atom) Reading {
	if r.Ask != nil || !slices.ContainsFunc(r.Acts, func(a Act) bool {
		return slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
			return s.Op == solver.Plus || s.Op == solver.Minus || s.Op == solver.Times
		})
	}) || !leansOnFigure(atoms) {
		return r
	}
	cuts := append(clauseStarts(atoms), len(atoms))
	for k := 0; k+1 < len(cuts); k++ {
		part := atoms[cuts[k]:cuts[k+1]]
		if slices.ContainsFunc(part, numeric) && (tellsSize(part) || toldBesideWall(part)) {
			return askedBack(part[0].at, "How high, wide or many is it to be, then?", "wall 40 high")
		}
	}
	return r
}
