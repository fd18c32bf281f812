package idiom

import "saywright/grammar/scan"

// Beggars are helping verbs that open a wish where somebody begs.
var Beggars = scan.WordSet("could can might may would will")
