package idiom

import "saywright/grammar/phrase"

// afterwards is what people say once they have an answer: whether another size would be cheaper, and what is to be as it was. Common ways of speech, no source.
var afterwards = []phrase.Placed{
	{"^ ?so|and|but would|will|is|are|does|do !(## RAIL|STIFF) ?be|come|work|turn|get ?out ?any|much|(a bit) cheaper|dearer ?then|instead|overall $$", "would it be cheaper with $1", nil},
	{"^ ?so|and|but would|will|is|are|does|do !(@ RAIL|POST|STIFF) ?be|come|work|turn|get ?out ?any|much|(a bit) cheaper|dearer ?then|instead|overall $$", "would it be cheaper with $1", nil},
	{"^ ?so|and|but would|will|is !# high|tall ?WALL ?be|come|work|turn|get ?out ?any|much|(a bit) cheaper|dearer ?then|instead|overall $$", "would it be cheaper if the wall were $1 high", nil},
	{"^ ?so|and|but would|will|is !# ?high|tall WALL ?be|come|work|turn|get ?out ?any|much|(a bit) cheaper|dearer ?then|instead|overall $$", "would it be cheaper if the wall were $1 high", nil},
	{"^ ?so|and|but would|will|is WALL ?of|at !# ?high|tall ?be|come|work|turn|get ?out ?any|much|(a bit) cheaper|dearer ?then|instead|overall $$", "would it be cheaper if the wall were $1 high", nil},
	{"^ ?so|and|but would|will|is it ?be|come|work|turn|get ?out ?any|much|(a bit) cheaper|dearer at|if !# high|tall ?then|instead|overall $$", "would it be cheaper if the wall were $1 high", nil},
	{"drop|dropping|dropped height|(wall height) ?right ?down ?back to #", "lower the height to $1", nil},
	{"^ how many !POST ?(do i|we need) ?, and where ?(exactly) $$", "how many $1 and where do they go", nil},
	{"^ how many !STIFF ?(do i|we need) ?, ?and where ?exactly ?(do they go|do they sit|do they stand|should they go|are they) $$", "how many $1 , and what is the $1 spacing", nil},
	{"^ ?(hmm|hm|oh|um|well ?,) ?no ?, put|move|shift|set|have !it|that|OPENING back on|to|at|against !left|right ?hand ?side|end $$", "put $1 on the $2", nil},
	{"^ ?i ?have changed my mind ?,|;|. ?and ?go|going|let|(let us) ?go back to ## !RAIL|STIFF $$", "$1 $2", nil},
	{"^ ?ok|so|and|no|well|right ?, ?let|(let us) ?go back to ## !RAIL|STIFF ?then|again|please $$", "go back to $1 $2", nil},
}
