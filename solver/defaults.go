package solver

import "saywright/solver/exact"

// NoSource marks what carpenters do without a published source.
const NoSource = "common practice, no source"

// Default is what holds of a quantity of which nothing was said.
type Default struct {
	Quantity Quantity
	Value    Value
	Kind     RuleKind
	Source   string
}

func inches(s string) Value { return Inches(exact.Must(s)) }

// Defaults are the parts and habits of the trade, from the table "Parts and what they can do" of the trade notes:
// common practice, no published source. All can be told otherwise.
var Defaults = []Default{
	{RailSize, Value{Word: "2x6"}, Practice, NoSource},
	{PostSize, Value{Word: "4x4"}, Practice, NoSource},
	{StiffenerSize, Value{Word: "1x4"}, Practice, NoSource},
	{BracketClearance, inches("2"), Part, NoSource},
	{BracketReach, inches("1/2"), Part, NoSource},
	{BracketThickness, inches("3/32"), Part, NoSource},
	{BaseHeight, inches("0"), Practice, NoSource},
	{Fit, inches("0"), Practice, NoSource},
	{Kerf, inches("1/8"), Practice, NoSource},
	{Trim, inches("0"), Practice, NoSource},
	{Spare, Value{Unit: PercentOf}, Practice, NoSource},
	{Tape, inches("1/16"), Practice, NoSource},
	{ScrewLength, inches("13/8"), Practice, NoSource},
	{FloorAtRight, inches("0"), Practice, NoSource},
}

// DefaultStock is the lumber on sale unless told otherwise, inches: common practice, no source.
func DefaultStock() []Value {
	return []Value{inches("96"), inches("120"), inches("144"), inches("192")}
}

func defaultOf(q Quantity) (Default, bool) {
	for _, d := range Defaults {
		if d.Quantity == q {
			return d, true
		}
	}
	return Default{}, false
}

func defaultValue(q Quantity) (Value, bool) {
	d, ok := defaultOf(q)
	return d.Value, ok && d.Value.Word == ""
}
