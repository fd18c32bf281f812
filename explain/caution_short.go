package explain

// shortCautions are the cautions in a few words, for who was told them when asking before.
var shortCautions = map[string]string{
	"off the floor": "the bottom rail near the floor", "narrow opening": "the narrow opening", "squeeze": "the opening that is a squeeze",
	"barrow": "the opening that is tight for a barrow", "stiffeners far": "the stiffeners far apart", "post low": "the low post",
	"brackets touch": "the brackets that all but touch", "other brackets": "the brackets to measure", "free post": "a post held only at its foot",
	"drilling": "the dust of drilling", "guard": "the drop beyond, a guard (local code decides)", "guard set aside": "the guard's limits set aside",
	"guard opening": "the opening in a guard", "pool": "the pool (local code decides)", "long boards": "the long boards", "code": "the code (local code decides)",
	"wind": "the wind", "lumber": "treated wood and its cut ends", "tools": "eyes and ears at the saw", "utilities": "buried lines", "leans in": "the post that leans into the opening", "face off": "the boards that are wider or narrower than told",
}
