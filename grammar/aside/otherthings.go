package aside

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
)

// Beside what is wanted of the wall a line may tell of things that are none of it: "the hedge is 1.8 m, the wall is 1.1 m high",
// "I paid 120 for the mixer, so what's the wall going to cost", "hand me those clamps, now the gap is two". A clause whose subject or object is such a
// thing says nothing of the wall, whatever figure it holds, as long as it names no part of the wall beside a figure, asks and judges nothing, and
// what is left says by itself all that it says, without leaning on what was left out.

// BesideWall are things of a house, a yard, a shop, a kitchen, the road and the body. What a wall, a cut or a price may be told by (saw, blade, tape, level, floor,
// drawing, clerk) is not among them.
var BesideWall = scan.WordSet(`
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

// ThingVerbs are verbs by which a clause tells what a thing is, has or does; any that ends in -s, -ed or -ing behind one is as good.
var ThingVerbs = scan.WordSet("is are was were 's 're has have had stands measures sits goes went takes took costs cost came comes got gets needs weighs runs ran hangs hung reads holds held leans fell broke will would can")

// ThingAdverbs may stand before such a verb.
var ThingAdverbs = scan.WordSet("already only just still also now about nearly almost alone always usually")

// CommandsToHand are verbs with which somebody near is told to do something with a thing.
var CommandsToHand = scan.WordSet("hand toss pass hold grab fetch bring throw watch mind help move lift carry pick feed walk wash clean answer mow water unload load close shut lock plug unplug")

// GotFor are verbs of paying and buying, of what is no lumber.
var GotFor = scan.WordSet("paid spent bought sold borrowed rented lent lost found broke fixed painted mowed fed washed cleaned burned dropped ate")

// SizeUnits are units among the turning words: the figure of a thing may have one.
var SizeUnits = scan.WordSet("inch inches foot feet yard yards cm mm meter meters metre metres millimeters centimeters")

// ThingAt finds a thing at an atom, with what stands before it: "the old hot tub". It returns where the thing and where it ends.
func ThingAt(part []scan.Atom, i int) (at, end int) {
	for i < len(part) && (lex.Owned[part[i].Text] || chunk.Noun[part[i].Text] || part[i].Text == "that" || part[i].Text == "this") {
		i++
	}
	for n := 0; n < 3 && i < len(part); n++ {
		if BesideWall[part[i].Text] || n > 0 && besideThing[part[i-1].Text] && (part[i].Text == "door" || part[i].Text == "doors" || part[i].Text == "gate") {
			at = i
			if !BesideWall[part[i].Text] {
				return at, i + 1 // "the patio door"
			}
			for i < len(part) && BesideWall[part[i].Text] {
				i++
			}
			if i < len(part) && (thingEnds[part[i].Text]) {
				i++
			}
			return at, i
		}
		w := part[i].Text
		if part[i].Kind != scan.Word || ThingVerbs[w] || !besideThing[w] && (chunk.PartAt(part, i) || !paraphrase.LeadingWords[w] && !lex.ForeignWord(w)) {
			return 0, 0
		}
		i++
	}
	return 0, 0
}

// thingEnds are the second words of things in two words: "the truck bed", "the bench seat"; besideThing are first ones that a table knows.
var (
	thingEnds   = scan.WordSet("bed seat top door doors door window post posts rod lid leg legs cover stand box house pole bar")
	besideThing = scan.WordSet("hot back front side patio deck porch kitchen house yard tool truck hall bath bed living dining wood gas power steel iron plastic wooden")
)

// LeansOnFigure reports whether what is left of a line reckons from a figure that was left out: "the wall is six higher", "twice that".
func LeansOnFigure(left []scan.Atom) bool {
	for i, a := range left {
		if (a.Text == "twice" || a.Text == "half" || a.Text == "double" || a.Text == "times") && i+1 < len(left) && (left[i+1].Text == "that" || left[i+1].Text == "it" || left[i+1].Text == "as") {
			return true
		}
		if (a.Text == "plus" || a.Text == "minus" || a.Text == "up" || a.Text == "down") && i+1 < len(left) && chunk.Numeric(left[i+1]) {
			return true
		}
		if lex.Compares[a.Text] && i > 0 && (chunk.Numeric(left[i-1]) || SizeUnits[left[i-1].Text]) && (i+1 >= len(left) || left[i+1].Text != "than") {
			return true
		}
	}
	return false
}

// LeansBack reports whether what is left of a line leans on what was left out: "wall 10 less", "the same for the wall", "make it match".
func LeansBack(left []scan.Atom) bool {
	for i, a := range left {
		switch w := a.Text; {
		case w == "same", w == "match", w == "matches", w == "matching", w == "as", w == "that", w == "those", w == "this", w == "it", w == "them", w == "they", w == "twice", w == "double", w == "ditto", w == "too", w == "also", w == "like", w == "likewise", w == "even", w == "level", w == "flush":
			return true
		case lex.Compares[w] && (i+1 >= len(left) || left[i+1].Text != "than"):
			return true
		}
	}
	return false
}
