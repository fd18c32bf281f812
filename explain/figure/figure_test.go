package figure

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver/exact"
)

func TestLength(t *testing.T) {
	for _, c := range []struct{ value, inches, mm string }{
		{"5/2", "2-1/2", "63.5"}, // 1 in = 25.4 mm exactly: NIST SP 811, appendix B.8
		{"48", "48", "1219.2"},
		{"17/6", "2-5/6", "71-29/30"},
		{"13/5", "2-3/5", "66.04"},
		{"237/100", "2.37", "60.198"},
		{"3/8", "3/8", "9.525"},
		{"-3/2", "-1-1/2", "-38.1"},
		{"0", "0", "0"},
		{"1/254", "1/254", "0.1"},
		{"23/14", "1-9/14", "41-51/70"},
	} {
		v := exact.Must(c.value)
		require.Equal(t, c.inches, Style{}.Length(v), c.value)
		require.Equal(t, c.mm, Style{Metric: true}.Length(v), c.value)
	}
	require.Equal(t, "11/128", Style{}.Length(exact.New(11, 128)))
	require.Equal(t, "2-117/640", Style{Metric: true}.Length(exact.New(11, 128))) // 2.1828125 has seven places
}

func TestNearAndDown(t *testing.T) {
	mm := func(s string) exact.Rat { return exact.Must(s).Div(exact.Must("25.4")) }
	for _, c := range []struct {
		style       Style
		value       exact.Rat
		near, down  string
		exactly     bool
		sayingAbout string
	}{
		{Style{}, exact.Must("53/6"), "8-13/16", "8-13/16", false, "about 8-13/16"},
		{Style{}, exact.Must("103/6"), "17-3/16", "17-1/8", false, "about 17-3/16"}, // 17-1/6 is 17-2.67/16
		{Style{}, exact.Must("5/2"), "2-1/2", "2-1/2", true, "2-1/2"},
		{Style{}, exact.Must("1/32"), "1/16", "0", false, "about 1/16"}, // halfway goes up
		{Style{}, exact.Must("-1/32"), "0", "-1/16", false, "about 0"},
		{Style{Tape: exact.New(1, 8)}, exact.Must("23/14"), "1-5/8", "1-5/8", false, "about 1-5/8"},
		{Style{Metric: true}, exact.Must("17/6"), "72", "71.9", false, "about 72"},
		{Style{Metric: true, Tape: exact.New(1, 16)}, exact.Must("17/6"), "72", "71.9", false, "about 72"},
		{Style{Metric: true, Tape: mm("1")}, mm("63.5"), "64", "63", false, "about 64"},
		{Style{Metric: true, Tape: mm("0.5")}, mm("63.5"), "63.5", "63.5", true, "63.5"},
	} {
		near, exactly := c.style.Near(c.value)
		require.Equal(t, c.near, near, c.value.String())
		require.Equal(t, c.exactly, exactly, c.value.String())
		require.Equal(t, c.down, c.style.Down(c.value), c.value.String())
		require.Equal(t, c.sayingAbout, c.style.About(c.value), c.value.String())
	}
	require.Equal(t, "in", Style{}.Unit())
	require.Equal(t, "mm", Style{Metric: true}.Unit())
}
