package lumber

import (
	"sort"

	"saywright/solver/exact"
)

// ps20 is the source of every customary row: minimum dressed sizes, dry at most 19 % moisture.
const ps20 = "DOC PS 20 American Softwood Lumber Standard, minimum dressed sizes, as transcribed in the NDS Supplement 2018 table 1A and public engineering tables"

// wideTimber is why nothing 5 in or thicker and 7 in or wider is listed: 6x8 is 5-1/2 by 7-1/4 in one table, by 7-1/2 in another.
const wideTimber = "published tables disagree on timbers 7 in and wider (a 6x8 is 7-1/4 or 7-1/2 on the face): measure it, and give its size in millimeters"

const itsOwnSize = "a metric size measures what it says"

// row is one nominal size: dry and green thickness and width, inches.
type row struct {
	name                   string
	thick, wide            string // nominal
	dryThick, dryWide      string
	greenThick, greenWidth string
}

var dressed = []row{
	{"1x4", "1", "4", "3/4", "7/2", "25/32", "57/16"},
	{"1x6", "1", "6", "3/4", "11/2", "25/32", "45/8"},
	{"1x8", "1", "8", "3/4", "29/4", "25/32", "15/2"},
	{"5/4x4", "5/4", "4", "1", "7/2", "33/32", "57/16"},
	{"5/4x6", "5/4", "6", "1", "11/2", "33/32", "45/8"},
	{"2x2", "2", "2", "3/2", "3/2", "25/16", "25/16"},
	{"2x3", "2", "3", "3/2", "5/2", "25/16", "41/16"},
	{"2x4", "2", "4", "3/2", "7/2", "25/16", "57/16"},
	{"2x6", "2", "6", "3/2", "11/2", "25/16", "45/8"},
	{"2x8", "2", "8", "3/2", "29/4", "25/16", "15/2"},
	{"2x10", "2", "10", "3/2", "37/4", "25/16", "19/2"},
	{"2x12", "2", "12", "3/2", "45/4", "25/16", "23/2"},
	{"4x4", "4", "4", "7/2", "7/2", "57/16", "57/16"},
	{"4x6", "4", "6", "7/2", "11/2", "57/16", "45/8"},
	{"6x6", "6", "6", "11/2", "11/2", "11/2", "11/2"},
}

func (r row) nominal(small, large exact.Rat) bool {
	return small.Eq(exact.Must(r.thick)) && large.Eq(exact.Must(r.wide))
}

func (r row) size(said string) Size {
	return Size{Name: said, Thickness: exact.Must(r.dryThick), Face: exact.Must(r.dryWide), Source: ps20,
		Green: &Green{Thickness: exact.Must(r.greenThick), Face: exact.Must(r.greenWidth)}}
}

// known is a family of metric sizes that one source lists.
type known struct {
	names      []string // as they are usually said
	keys       []string // thickness x face, sorted: how they are looked up
	source     string
	fromMemory bool
}

// listedMetric holds the metric families, the most specific first.
var listedMetric = []known{
	family("AS/NZS 1748 practice, from memory", true, "90x45", "140x45", "90x90"),
	family("EN 1313-1 softwood surfaced to CLS sizes, from memory", true, "38x89", "38x140", "38x184", "38x235"),
	family("soft conversion of customary sizes, public trade table", false, "19x89", "38x286", "89x89", "89x140"),
	family("Australian dressed hardwood sizes, hardwood specifier guide", false, dressedHardwood()...),
	family("planed target sizes after BS EN 336, building construction handbook", false, "47x97", "47x120", "47x145", "47x170", "47x195", "47x220", "97x97"),
}

func family(source string, fromMemory bool, names ...string) known {
	k := known{names: names, source: source, fromMemory: fromMemory}
	for _, n := range names {
		a, b, _ := figures(n)
		k.keys = append(k.keys, exact.Min(a, b).String()+"x"+exact.Max(a, b).String())
	}
	sort.Strings(k.keys)
	return k
}

func dressedHardwood() (names []string) {
	for _, thick := range []string{"20", "35"} {
		for _, wide := range []string{"65", "90", "140", "190", "235", "285"} {
			names = append(names, wide+"x"+thick)
		}
	}
	return append(names, "65x45", "190x45", "235x45", "285x45")
}
