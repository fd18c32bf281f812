package grammar

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// saidAs is something as it is said, and as a normal form has it.
type saidAs struct{ said, form string }

// sizesSaid are sizes of lumber as clerks write and people say them.
var sizesSaid = []saidAs{{"2x6", "2x6"}, {"two by six", "2x6"}, {"1 x 4", "1x4"}, {"4x4", "4x4"}}

// lengthsSaid are ways to say how long a board is: three lengths in each, the shortest first, as they stand before or behind a size.
var lengthsSaid = []struct {
	way  string
	adj  bool // they stand before a size, too: "ten foot 2x6"
	each [3]saidAs
}{
	{"feet sign", true, [3]saidAs{{"8'", "96 in"}, {"10'", "120 in"}, {"12'", "144 in"}}},
	{"ft", true, [3]saidAs{{"10 ft", "120 in"}, {"12 ft", "144 in"}, {"16 ft", "192 in"}}},
	{"ft glued", true, [3]saidAs{{"8ft", "96 in"}, {"12ft", "144 in"}, {"20ft", "240 in"}}},
	{"foot", true, [3]saidAs{{"ten foot", "120 in"}, {"fourteen foot", "168 in"}, {"sixteen foot", "192 in"}}},
	{"hyphen", true, [3]saidAs{{"8-foot", "96 in"}, {"10-foot", "120 in"}, {"14-foot", "168 in"}}},
	{"footers", false, [3]saidAs{{"8 footers", "96 in"}, {"twelve footers", "144 in"}, {"16-footers", "192 in"}}},
	{"by number", false, [3]saidAs{{"eights", "96 in"}, {"twelves", "144 in"}, {"sixteens", "192 in"}}},
	{"figures and s", false, [3]saidAs{{"8s", "96 in"}, {"10s", "120 in"}, {"14s", "168 in"}}},
	{"meters", true, [3]saidAs{{"2.4 m", "2400 mm"}, {"3.6 m", "3600 mm"}, {"4.8 m", "4800 mm"}}},
	{"millimeters", true, [3]saidAs{{"2400 mm", "2400 mm"}, {"3000 mm", "3000 mm"}, {"4800 mm", "4800 mm"}}},
}

// pricesSaid are ways to say what a board costs: three prices in each. Sure tells that they are money wherever they stand.
var pricesSaid = []struct {
	way  string
	sure bool
	each [3]saidAs
}{
	{"cents", true, [3]saidAs{{"8.95", "8.95"}, {"10.60", "10.60"}, {"14.49", "14.49"}}},
	{"sign", true, [3]saidAs{{"$8.95", "8.95"}, {"$10.60", "10.60"}, {"$14.49", "14.49"}}},
	{"sign, whole", true, [3]saidAs{{"$6", "6.00"}, {"$9", "9.00"}, {"$14", "14.00"}}},
	{"dollars", true, [3]saidAs{{"6 dollars", "6.00"}, {"9 dollars", "9.00"}, {"14 dollars", "14.00"}}},
	{"bucks", true, [3]saidAs{{"six bucks", "6.00"}, {"nine bucks", "9.00"}, {"eleven bucks", "11.00"}}},
	{"dollars and cents", true, [3]saidAs{{"six dollars and ten cents", "6.10"}, {"eight dollars fifty", "8.50"}, {"12 dollars and 25 cents", "12.25"}}},
	{"spoken", true, [3]saidAs{{"eight ninety five", "8.95"}, {"eleven forty", "11.40"}, {"seventeen sixty", "17.60"}}},
	{"first in dollars", true, [3]saidAs{{"6 dollars", "6.00"}, {"9", "9.00"}, {"14", "14.00"}}},
	{"first in dollars, spoken", true, [3]saidAs{{"six dollars", "6.00"}, {"nine", "9.00"}, {"eleven", "11.00"}}},
	{"whole", false, [3]saidAs{{"6", "6.00"}, {"9", "9.00"}, {"11", "11.00"}}},
	{"whole, spoken", false, [3]saidAs{{"six", "6.00"}, {"nine", "9.00"}, {"eleven", "11.00"}}},
}

// listShapes are orders in which prices of lumber are told: the first entry, a later one, and whether a length stands before a size in
// it, whether the price is joined to its length by a word or a sign, and whether each entry tells its size.
var listShapes = []struct {
	first, more           string
	adj, joined, eachSize bool
}{
	{"S L P", "L P", false, false, false},
	{"S L P each", "L P each", false, false, false},
	{"L S P ea", "L P ea", true, false, false},
	{"L S P", "L P", true, false, false},
	{"S: L P", "L P", false, false, false},
	{"S, L P", "L P", false, false, false},
	{"S - L P", "L P", false, false, false},
	{"S L is P", "L is P", false, true, false},
	{"S L are P", "L P", false, true, false},
	{"S L are P", "L are P", false, true, false},
	{"S L = P", "L = P", false, true, false},
	{"S L: P", "L: P", false, true, false},
	{"S L - P", "L - P", false, true, false},
	{"S L @ P", "L @ P", false, true, false},
	{"S L at P", "L at P", false, true, false},
	{"S L for P", "L for P", false, true, false},
	{"S L run P", "L run P", false, true, false},
	{"S L cost P", "L cost P", false, true, false},
	{"S L go for P", "L go for P", false, true, false},
	{"S in L is P", "in L is P", false, true, false},
	{"L S are P", "L are P", true, true, false},
	{"L S is P", "L S is P", true, true, true},
	{"L S runs P", "L P", true, true, false},
	{"P for L S", "P for L", true, true, false},
	{"P for S L", "P for L", false, true, false},
	{"P for a L S", "P for a L S", true, true, true},
	{"S L P", "S L P", false, false, true},
	{"the yard wants P for L S", "P for L", true, true, false},
	{"the L S is P", "the L is P", true, true, false},
	{"S L went for P", "L for P", false, true, false},
}

// listJoints stand between two entries, and between the last two.
var listJoints = [][2]string{{", ", ", "}, {", ", " and "}, {"; ", "; "}, {", ", ", and "}, {" / ", " / "}}

// priceLists are lists of prices of a number of lengths, and what each comes to.
func priceLists(n int) (out []saidAs) {
	for s, shape := range listShapes {
		for l, long := range lengthsSaid {
			if shape.adj && !long.adj {
				continue
			}
			for p, price := range pricesSaid {
				if !price.sure && !shape.joined {
					continue
				}
				size, joint := sizesSaid[(s+l+p)%len(sizesSaid)], listJoints[(s+2*l+p)%len(listJoints)]
				var line strings.Builder
				var forms []string
				for i := range n {
					entry := shape.more
					switch {
					case i == 0:
						entry = shape.first
					case i == n-1:
						line.WriteString(joint[1])
					default:
						line.WriteString(joint[0])
					}
					var words []string
					for _, w := range strings.Fields(entry) {
						bare := strings.TrimRight(w, ":,")
						switch bare {
						case "S":
							w = size.said + w[1:]
						case "L":
							w = long.each[i].said + w[1:]
						case "P":
							w = price.each[i].said
						}
						words = append(words, w)
					}
					line.WriteString(strings.Join(words, " "))
					forms = append(forms, fmt.Sprintf("price %s %s = %s", size.form, long.each[i].form, price.each[i].form))
				}
				out = append(out, saidAs{line.String(), strings.Join(forms, "; ")})
			}
		}
	}
	return out
}

// readsBack reports how many lines are read as they want, and fails on each that is read otherwise; what is asked back is let pass where
// a line may be asked.
func readsBack(t *testing.T, lines []saidAs, mayAsk func(said string) bool) {
	t.Helper()
	for _, l := range lines {
		r := Read(l.said, act.Context{})
		if r.Ask != nil && mayAsk != nil && mayAsk(l.said) {
			continue
		}
		got := parse.Normal(r.Acts)
		if r.Ask != nil {
			got = "? " + r.Ask.Text
		}
		assert.Equal(t, l.form, got, l.said)
	}
}

// signJoined is a length joined by a sign to a whole number, which may as well be a count.
var signJoined = regexp.MustCompile(`(?: =|:| -) (?:6|six)(?:,|;|$| (?:/|and))`)

// A list of prices is read back to what it was made from, whatever its lengths, its prices and its order are said like. Only whole numbers
// behind a sign ("8s: 6, 10s: 9") may be counts, and are asked back.
func TestPriceListsRead(t *testing.T) {
	lines := slices.Concat(priceLists(2), priceLists(3))
	if testing.Short() {
		t.Skip("many lines")
	}
	var some []saidAs
	for i := 0; i < len(lines); i += 3 { // every shape with every way to say lengths, and most prices
		some = append(some, lines[i])
	}
	readsBack(t, some, signJoined.MatchString)
}

// lengthListsSaid are lists of lengths where the last alone tells the unit or what they are lengths of.
var lengthListsSaid = []saidAs{
	{"8 and 10 foot boards", "96 in, 120 in"}, {"8, 10 and 12 foot boards", "96 in, 120 in, 144 in"}, {"eight and ten footers", "96 in, 120 in"},
	{"8 and 10-foot lengths", "96 in, 120 in"}, {"twelve, fourteen and sixteen foot lumber", "144 in, 168 in, 192 in"}, {"10 & 12 ft boards", "120 in, 144 in"},
	{"8s and 10s", "96 in, 120 in"}, {"8' and 10' boards", "96 in, 120 in"}, {"10 and 16 foot planks", "120 in, 192 in"},
}

// lengthListFrames are what may be said of them: %s is the list; the form takes the list, or one length at a time.
var lengthListFrames = []struct{ said, form string }{
	{"they sell %s", "stock = %s"}, {"they only have %s", "stock = %s"}, {"the yard carries %s", "stock = %s"}, {"you can get %s", "stock = %s"},
	{"what if they only sold %s", "what if stock = %s"}, {"what if I only bought %s", "what if stock = %s"}, {"what would it cost if they only had %s", "what if stock = %s; ask cost"},
	{"drop the %s", "stock -= each"}, {"they're out of %s", "stock -= each"}, {"the yard no longer carries %s", "stock -= each"},
	{"what if they were out of %s", "what if stock -= each"},
}

func TestLengthListsRead(t *testing.T) {
	var lines []saidAs
	for _, f := range lengthListFrames {
		for _, l := range lengthListsSaid {
			form := strings.Replace(f.form, "%s", l.form, 1)
			if before, found := strings.CutSuffix(f.form, "stock -= each"); found {
				joint := "; "
				if before != "" {
					joint = ", "
				}
				form = before + "stock -= " + strings.ReplaceAll(l.form, ", ", joint+"stock -= ")
			}
			lines = append(lines, saidAs{fmt.Sprintf(f.said, l.said), form})
		}
	}
	readsBack(t, lines, nil)
}

func TestPieceListsRead(t *testing.T) {
	const both = "have 2x6 120 in x 6; have 2x6 144 in x 4"
	var lines []saidAs
	for _, list := range []string{
		"six 2x6 tens and four twelves", "six ten foot and four twelve foot two by sixes", "6 2x6x10, 4 2x6x12", "six 2x6 ten footers and four twelve footers",
		"6 2x6 10', 4 2x6 12'", "six ten and four twelve foot two by sixes", "6 tens and 4 twelves, all 2x6", "six tens and four twelves in 2x6", "2x6 tens x 6, twelves x 4", "2x6: 6 tens, 4 twelves",
	} {
		for _, frame := range []string{"I have %s", "we have %s", "I've got %s", "%s on hand", "I own %s", "there's %s behind the forge", "we have %s lying under the pergola"} {
			if strings.HasPrefix(frame, "%s") && !strings.HasPrefix(list, "six 2x6") {
				continue
			}
			lines = append(lines, saidAs{fmt.Sprintf(frame, list), both})
		}
	}
	readsBack(t, lines, nil)
}

// What lies somewhere is had, whatever the place is called; what is told of a place that keeps no boards is no place.
func TestBoardsLieAnywhere(t *testing.T) {
	readsBack(t, []saidAs{
		{"there's nine ten foot two by sixes lying behind the forge already, mine and paid for", "have 2x6 120 in x 9"},
		{"nine ten foot 2x6s are lying beneath the old windmill", "have 2x6 120 in x 9"},
		{"I have three 4x4 eights beside the smithy and two 2x6 twelves in the granary", "have 4x4 96 in x 3; have 2x6 144 in x 2"},
		{"sixteen foot two by sixes went for seventeen sixty at the yard this morning", "price 2x6 192 in = 17.60"},
		{"3.9 m lengths are in at the merchant as well", "stock += 3900 mm"},
		{"2x6x10 is 11.40, 16 is 19.75", "price 2x6 120 in = 11.40; price 2x6 192 in = 19.75"},
		{"eights are 6, tens are 8, twelves 11", "price rails 96 in = 6.00; price rails 120 in = 8.00; price rails 144 in = 11.00"},
		{"2x6 tens and twelves are 8.95", "price 2x6 120 in = 8.95; price 2x6 144 in = 8.95"},
		{"uh they want five courses of two by eight going up", "rails = 5; rail size = 2x8"},
	}, nil)
}

// What could be two things, and what only sounds like a price, is asked back.
func TestListsAsked(t *testing.T) {
	for _, line := range []string{
		"2x6 12 16", "8s: 6, 10s: 8", "2x6 8s: 6, 10s: 8", "eights are 6, tens are 8", "the eights are 6 years old, the tens are 8", "my boys are 6, 8 and 11",
		"2x6 tens come at 8, twelves at 11", "the tens come at 8, the twelves at 11", "the 2x6 tens come in at 8.30 tomorrow", "call 555-1234 about the 2x6 tens", "2x6 10' - 8, 12' - 10",
		"2x6 tens are 8, twelves are 9 left", "2x6 tens are 9, twelves are 6", "2x6 8' 6, 10' 8", "ten foot 2x6s went for 9 dollars last spring", "2x6 8 foot 3 and a half is 9.20",
		"ten foot 2x6 8.95 each, 4x4 8 foot 12.30, 1x4 8 foot 3", "they have six tens and four twelves", "we have six tens and four twelves", "the eights are 6 and the tens are 8 people",
		"2x6 tens are 8, twelves are 10 o'clock", "six guys for the eights, nine for the tens", "if there were six 2x6 tens lying behind the kiln", "2x6: 10 for 8.95, 12 for 10.60",
	} {
		r := Read(line, act.Context{})
		assert.NotNil(t, r.Ask, "%q is read as %s", line, parse.Normal(r.Acts))
	}
}
