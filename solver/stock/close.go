package stock

import (
	"math/big"

	"saywright/solver/exact"
)

func bigInt(n int64) *big.Rat { return new(big.Rat).SetInt64(n) }

// closes asks the checker whether tables prove a bound.
func (p *problem) closes(tables []*Table, price []int64, least int64, spend *spending) bool {
	have := make([]int, len(p.boards))
	for b, d := range p.boards {
		have[b] = d.have
	}
	return noBasketUnder(tables, have, price, least, spend)
}

func missingBoards(p *problem, n int, longest exact.Rat) error {
	return &TooFew{Length: longest, Missing: n}
}
