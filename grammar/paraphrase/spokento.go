package paraphrase

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/scan"
)

// Whoever is spoken to is named apart from what is said: "double the gap, darling", "Sarge, how many rails". Between two signs, or a sign and an end of the
// line, such a name says nothing. Without the signs it may be whose wall it is, or who says so. Plain English, no source.

// endearments may be somebody's own: "my love".
var endearments = scan.WordSet(`darling darlings dear dears dearest dearie deary love lovey luv honey hon honeybun sweet sweetheart sweetie sweetpea sugar sunshine precious pumpkin angel treasure beauty
	friend friends lad lads boy lass girl man lord lady liege`)

// spokenTo are words by which somebody may be spoken to: what people are to each other, what they do, what rank they have. Those whose word on a wall
// counts by itself ("inspector", "engineer") are not among them.
var spokenTo = scan.WordSet(`
	babe baby beautiful handsome gorgeous petal pet hen duck ducky duckie flower poppet possum cobber mate mates matey pal pals bud buddy buster chum dude bro bruh brother bruv fam sis sister cuz cousin homie
	chief fella fellas fellow fellows boss bossman partner pardner amigo amigos compadre sonny son kiddo kid kids junior champ ace slick tiger hotshot genius einstein maestro oldtimer
	laddie lassie boys girls guy guys guv guvnor gov governor squire gaffer folks gang team crew people everybody everyone y'all ladies gentlemen gents
	dad daddy papa pa pop pops father mom mum mommy mummy mama mother grandpa grandad granddad gramps grandfather grandma granny gran nan nana grandmother uncle auntie aunt nephew niece hubby wifey
	doctor doc professor prof teacher coach captain skipper sergeant sarge corporal colonel general admiral lieutenant commander deputy sheriff officer marshal
	reverend padre vicar pastor deacon bishop rabbi judge counselor counsellor senator mayor princess duchess duke chef nurse matron
	sir sirs madam ma'am maam miss missus missy mister foreman neighbor neighbour comrade stranger computer robot
`)

// kindlySaid are words that may stand before such a name in its own piece.
var kindlySaid = scan.WordSet("dear old young good sweet")

// saidFirst are words that may begin such a piece, and stay: "no love, make it three".
var saidFirst = scan.WordSet("oh hey hi hello well listen look ok okay yes yeah no nope right so now sorry please thanks ta cheers wait say")

// toldOf are words behind a name of which something is told, and which is spoken of, and not to: "Dad, who is a joiner, says two".
var toldOf = scan.WordSet("who whose whom which that says said thinks reckons wants wanted asked asks told tells is was has had will would and or 's claims insists")

// namesLater are words with which things are named: what stands behind them may be such a name.
var namesLater = scan.WordSet("save saved call called name named open load compare file")

// withoutSpokenTo leaves out who is spoken to, where the name stands apart.
func withoutSpokenTo(atoms []scan.Atom) []scan.Atom {
	if len(atoms) < 3 || !slices.ContainsFunc(atoms, isSpokenTo) || slices.ContainsFunc(atoms, func(a scan.Atom) bool { return namesLater[a.Text] }) {
		return atoms
	}
	for from := 0; from < len(atoms); {
		to := from
		for to < len(atoms) && !partsPiece(atoms, to) {
			to++
		}
		name := from
		for name < to && saidFirst[atoms[name].Text] {
			name++
		}
		if !onlySpokenTo(atoms[name:to]) || to+1 < len(atoms) && toldOf[atoms[to+1].Text] || to-name == len(atoms) {
			from = to + 1
			continue
		}
		switch {
		case name > from:
			from, atoms = name+1, scan.CutOut(atoms, name, to)
		case to < len(atoms) && (from == 0 || atoms[to].Text == ","):
			atoms = scan.CutOut(atoms, from, to+1)
		case from > 0 && atoms[from-1].Text != ".":
			from, atoms = from+1, scan.CutOut(atoms, from-1, to)
		default:
			from, atoms = from+1, scan.CutOut(atoms, from, min(to+1, len(atoms)))
		}
	}
	return atoms
}

func isSpokenTo(a scan.Atom) bool { return spokenTo[a.Text] || endearments[a.Text] }

// onlySpokenTo reports whether a piece only names who is spoken to.
func onlySpokenTo(piece []scan.Atom) bool {
	own := len(piece) > 1 && piece[0].Text == "my"
	if own {
		piece = piece[1:]
	}
	for len(piece) > 1 && kindlySaid[piece[0].Text] {
		piece = piece[1:]
	}
	return len(piece) == 1 && piece[0].Kind == scan.Word && (endearments[piece[0].Text] || !own && spokenTo[piece[0].Text])
}

// partsPiece reports whether a sign sets apart what stands before it.
func partsPiece(atoms []scan.Atom, i int) bool {
	return chunk.BreaksClause(atoms, i) && atoms[i].Text != ":" || atoms[i].Kind == scan.Sign && atoms[i].Text == "-" && !atoms[i].Glued
}
