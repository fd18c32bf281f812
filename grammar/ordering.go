package grammar

// orders are more ways to tell the program what to do, beside the plain ones of commands.
var orders = []entry{}
