package solver

import (
	"strconv"
	"strings"

	"saywright/solver/exact"
)

// Name says which quantity of which part is meant: "gap", "bay 1", "bay 2 stiffeners", "opening 1 side",
// "rail 3 top", "price 2x6 192 in". Indexes count from 1; 0 means all, or no index.
type Name struct {
	Wall     string // "" is the wall at hand
	Quantity Quantity
	Bay      int
	Opening  int
	Rail     int
	Post     int
	At       string // "bottom" or "top" of a measurement, "opening" for the opening where only one is; "left" or "right" of an end post that leans
	Item     string // "2x6", "rails", "bracket", "post base": what is sold, had or wanted extra; stock of one size
	Long     *Value // length of that item, where it has one
	Box      int    // pieces in a box, for screws
}

// Op is the relation of a statement.
type Op string

// The relations. Set is a goal or a flag that stands by its name alone.
const (
	Eq    Op = "="
	Near  Op = "~"
	LT    Op = "<"
	LE    Op = "<="
	GT    Op = ">"
	GE    Op = ">="
	In    Op = "in"
	Plus  Op = "+="
	Minus Op = "-="
	Times Op = "*="
	Each  Op = "x" // have and extra: how many
	Set   Op = ""
)

// Unit says how a value was said, and so how its normal form is written. Lengths are inches underneath.
type Unit uint8

// The units of a value.
const (
	None       Unit = iota // a count, a plain number
	Inch                   // a length said in inches or feet
	Millimeter             // a length said in metric
	PercentOf
	Currency
)

// Value is the right side of a statement: a number, a word, a list, or a relation to another quantity.
type Value struct {
	Num  exact.Rat // lengths in inches, percents as 10 for 10%; with Of, what is added (Times × Of + Num)
	Unit Unit
	Word string     // a size "2x6", a side, a unit system; a goal's own words
	List []Value    // stock lengths, marks
	Of   *Name      // another quantity that this value leans on
	Mult *exact.Rat // factor of Of; nil is 1
}

// Inches is a length of n inches.
func Inches(n exact.Rat) Value { return Value{Num: n, Unit: Inch} }

// Number is a count or a plain number.
func Number(n int) Value { return Value{Num: exact.Int(n)} }

// Factor returns what Of is multiplied by.
func (v Value) Factor() exact.Rat {
	if v.Mult == nil {
		return exact.Int(1)
	}
	return *v.Mult
}

// Statement is one thing said of a wall, in the shape that everything is computed from.
type Statement struct {
	Name  Name
	Op    Op
	Value Value
	Upper Value // the upper end of In; the run of "falls … per" and "leans … in"
}

// Of returns the statement q op v.
func Of(q Quantity, op Op, v Value) Statement {
	return Statement{Name: Name{Quantity: q}, Op: op, Value: v}
}

// String returns the normal form of a name, its wall in front.
func (n Name) String() string {
	s := n.bare()
	if n.Wall != "" {
		s = n.Wall + ": " + s
	}
	return s
}

func (n Name) bare() string {
	q := string(n.Quantity)
	switch n.Quantity {
	case Measured:
		s := "measured"
		if n.Bay > 0 {
			s += " bay " + strconv.Itoa(n.Bay)
		}
		if n.Opening > 0 {
			s += " opening " + strconv.Itoa(n.Opening)
		}
		if n.Rail > 0 {
			s += " rail " + strconv.Itoa(n.Rail)
		}
		if n.At != "" {
			s += " " + n.At
		}
		return s
	case Short, CutOf:
		s := q
		if n.Bay > 0 {
			s += " bay " + strconv.Itoa(n.Bay)
		}
		if n.Rail > 0 {
			s += " rail " + strconv.Itoa(n.Rail)
		}
		if n.Item != "" {
			s += " " + n.Item
		}
		return s
	case FixedRail:
		return "fixed rail " + strconv.Itoa(n.Rail) + " top"
	case Price, Have, Extra, Boards:
		s := q + " " + n.Item
		if n.Long != nil {
			s += " " + n.Long.String()
		}
		if n.Box > 0 {
			s += " " + strconv.Itoa(n.Box)
		}
		return s
	case Stock:
		if n.Item != "" {
			return "stock " + n.Item
		}
	case PostLeans:
		if n.Post > 0 {
			return "post " + strconv.Itoa(n.Post) + " leans"
		}
		return n.At + " post leans"
	}
	switch {
	case n.Opening > 0:
		return "opening " + strconv.Itoa(n.Opening) + strings.TrimPrefix(q, "opening")
	case n.Rail > 0:
		return "rail " + strconv.Itoa(n.Rail) + strings.TrimPrefix(q, "rail")
	case n.Post > 0:
		return "post " + strconv.Itoa(n.Post) + strings.TrimPrefix(q, "post")
	case n.Bay > 0 && n.Quantity == Bay:
		return "bay " + strconv.Itoa(n.Bay)
	case n.Bay > 0:
		return "bay " + strconv.Itoa(n.Bay) + " " + q
	}
	return q
}

// String returns the normal form: "gap = 2-1/2 in", "equal bays", "have 2x6 144 in x 6".
func (s Statement) String() string {
	left := s.Name.String()
	switch {
	case s.Name.Quantity == Goal:
		g := s.Value.Word
		if s.Name.Wall != "" {
			return s.Name.Wall + ": " + g
		}
		return g
	case s.Name.Quantity == FloorFalls:
		return left + " " + s.Value.String() + " per " + s.Upper.String()
	case s.Name.Quantity == PostLeans:
		return left + " " + s.Value.String() + " " + s.Value.Word + " in " + s.Upper.String()
	case s.Op == In:
		return left + " in " + s.Value.String() + ".." + s.Upper.String()
	}
	return left + " " + string(s.Op) + " " + s.Value.String()
}

// String returns the normal form of a value.
func (v Value) String() string {
	switch {
	case v.Of != nil:
		s := v.Of.String()
		if f := v.Factor(); !f.Eq(exact.Int(1)) {
			s = f.String() + " * " + s
		}
		switch v.Num.Sign() {
		case 1:
			s += " + " + Value{Num: v.Num, Unit: v.Unit}.String()
		case -1:
			s += " - " + Value{Num: v.Num.Neg(), Unit: v.Unit}.String()
		}
		return s
	case v.List != nil:
		parts := make([]string, len(v.List))
		for i, e := range v.List {
			parts[i] = e.String()
		}
		return strings.Join(parts, ", ")
	case v.Unit == Inch:
		return Fraction(v.Num) + " in"
	case v.Unit == Millimeter:
		return Decimal(v.Num.Mul(PerInch)) + " mm"
	case v.Unit == PercentOf:
		return Decimal(v.Num) + "%"
	case v.Unit == Currency:
		return Cents(v.Num)
	case v.Word != "":
		return v.Word
	}
	return v.Num.String()
}

// PerInch is millimeters in an inch: 25.4 exactly (NIST SP 811, appendix B.8).
var PerInch = exact.New(254, 10)

// Fraction writes a number as a mixed fraction: 2-1/2, 3/8, 144, -1-1/2.
func Fraction(r exact.Rat) string {
	if r.IsInt() {
		return r.String()
	}
	sign := ""
	if r.Sign() < 0 {
		sign, r = "-", r.Neg()
	}
	whole := r.Floor()
	if whole.Sign() == 0 {
		return sign + r.String()
	}
	return sign + whole.String() + "-" + r.Sub(whole).String()
}

// Decimal writes a number with as many decimals as it has, and as a mixed fraction where they never end.
func Decimal(r exact.Rat) string {
	for digits, scaled := 0, r; digits <= 40; digits, scaled = digits+1, scaled.Mul(exact.Int(10)) {
		if scaled.IsInt() {
			return r.Big().FloatString(digits)
		}
	}
	return Fraction(r)
}

// Cents writes money with two decimals, half a cent up.
func Cents(r exact.Rat) string { return r.Big().FloatString(2) }
