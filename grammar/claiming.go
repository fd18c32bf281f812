package grammar

// claims are more ways in which somebody's figures are reported, beside the plain ones of heads.
var claims = []entry{}
