package lex

import (
	"saywright/grammar/act"
	"saywright/grammar/scan"
)

// Outsiders are those who and what goes through, over or past a wall, and the weather on it.
var Outsiders = scan.WordSet(`
	cat cats dog dogs spaniel terrier poodle beagle dachshund labrador hound hounds tortoise pup puppy puppies kitten kittens pet pets chicken chickens hen hens rabbit rabbits bunny raccoon raccoons squirrel squirrels mouse mice possum goat goats critter critters animal animals
	bird birds varmint varmints deer horse cow cows
	baby babies toddler toddlers kid kids kiddo child children boy boys girl girls son sons daughter daughters grandkid grandkids grandchild grandchildren granddaughter grandson
	wife husband mom mum mother dad father grandma grandmother grandpa grandfather sister brother aunt uncle family parents helper guests visitors folks people everybody everyone somebody someone anybody nobody
	stroller strollers twin twins pram prams pushchair pushchairs buggy walker tricycle tricycles wheelchair chair chairs wheelbarrow wheelbarrows barrow mower lawnmower cart carts wagon trolley bike bikes bicycle scooter trike grill barbecue bbq smoker table tables couch
	sofa bench hammock hose broom brush shovel rake vacuum leaf leaves blower hand hands nose noses snout snouts paw paws neck necks tail tails muzzle beak arm arms fist knee knees leg legs eye eyes eyesight hip hips elbow shoulder shoulders finger fingers toes ball balls toy toys
	snow ice rain water runoff puddles puddle wind breeze sun sunlight light shade dirt mud dust slush hail view lake street road traffic windowsill sill window windows cushion cushions planter planters
	walker walkers carriage fridge refrigerator dresser dolly tractor snowblower tiller cooler cot stretcher rollator bin bins flowerpot pots pot plants plant bushes hedge crew truck trailer van money cash budget digging sawing sweeping mowing painting sanding cleaning
`)

// Speakers are the words for who speaks.
var Speakers = map[string]bool{"i": true, "we": true}

// OtherOnes are words for others than who speaks, and for nobody in particular.
var OtherOnes = map[string]bool{"he": true, "she": true, "they": true, "there": true, "everybody": true, "everyone": true, "somebody": true, "someone": true, "nobody": true, "people": true, "folks": true, "you": true}

// Pointing are words that point at a thing.
var Pointing = map[string]bool{"it": true, "that": true, "this": true}

// Owned are words that tell whose something is.
var Owned = map[string]bool{"my": true, "our": true, "his": true, "her": true, "their": true, "your": true}

// Auxiliary are verbs that help another, and their forms.
var Auxiliary = map[string]bool{"is": true, "are": true, "was": true, "were": true, "has": true, "have": true, "had": true, "will": true, "would": true, "can": true, "could": true, "do": true, "does": true, "did": true, "might": true, "may": true, "should": true, "must": true, "needs": true, "wants": true, "likes": true, "loves": true, "gets": true, "got": true, "goes": true, "came": true, "comes": true, "keeps": true, "kept": true}

// Helping are the verbs that open a question, with what the question does: it holds a claim against the rest, or tries.
var Helping = map[string]act.Kind{"is": act.Check, "are": act.Check, "was": act.Check, "were": act.Check, "do": act.Check, "does": act.Check, "did": act.Check, "has": act.Check, "have": act.Check, "had": act.Check,
	"should": act.WhatIf, "shall": act.WhatIf, "must": act.WhatIf, "might": act.WhatIf, "may": act.WhatIf, "ought": act.WhatIf, "would": act.WhatIf, "will": act.WhatIf, "could": act.WhatIf, "can": act.WhatIf}

// LeadIns are words that come before what a sentence says, and do not change whether it asks or states: "so could the gap be 3".
var LeadIns = scan.WordSet(`so oh hey hi hello um uh umm er ah eh hmm hm well now then ok okay alright yes yeah yep yup and but also listen look thanks please plz pls anyway
	actually honestly see say alas gee right just really maybe perhaps again still ,`)

// Household are those who live with the wall, and those who pay for it.
var Household = scan.WordSet("wife husband mother father mom dad son daughter kids partner client customer boss owner missus hubby spouse grandma grandpa grandmother grandfather sister brother")

// Denials are words that take a value out: "seven, not six", "seven instead of six".
var Denials = map[string]bool{"not": true, "instead of": true, "rather than": true, "as opposed to": true}

// ToBe are forms of "to be".
var ToBe = scan.WordSet("is was are were be been 's")
