package grammar

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
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

// A list of prices is read back to what it was made from, whatever its lengths, its prices and its order are said like.
func TestPriceListsRead(t *testing.T) {
	missed := map[string]int{}
	total, asked, wrong := 0, 0, 0
	for n := 2; n <= 3; n++ {
		for _, l := range priceLists(n) {
			r := Read(l.said, Context{})
			got := Normal(r.Acts)
			total++
			switch {
			case r.Ask != nil:
				asked++
				if os.Getenv("SHOW") != "" {
					fmt.Printf("ASKED %q  %s\n", l.said, r.Ask.Text)
				}
			case got != l.form:
				wrong++
				if os.Getenv("SHOW") != "" {
					fmt.Printf("WRONG %q\n   got  %s\n   want %s\n", l.said, got, l.form)
				}
			}
		}
	}
	_ = missed
	fmt.Println(total, asked, wrong)
	require.Zero(t, wrong)
}
