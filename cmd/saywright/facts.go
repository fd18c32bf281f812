package main

// The facts that a command puts on its answer, for package explain to put into words. An answer to a command has
// To = {Kind: "command", Topic: the act's name}; where it changed what stands, it also carries what the answer to a
// statement carries (layout, options, because, ways, work), and Replaced tells what took whose place (New without a
// name: given up).
//
//	key            Names                                     Nums
//	taken          word as said, word it was taken for                              a mended spelling; on any answer
//	wall           the wall that the answer is about                                where there are several; on any answer
//	still blocked                                                                   a statement that changes nothing of what stands in the way, or a question that it keeps from being answered again
//	posts added                                              before, now, more       a statement that sets posts nobody spoke of
//	left open      the quantity, then the counts kept        those counts            an ask in the line of a what-if, of what was said
//	undone         normal forms of the line taken back                              undo
//	trial dropped  normal forms of the last change that stands                      undo, where something was tried and nothing has changed since
//	of the trial   normal forms of what was tried                                   why, right behind what was only tried
//	without the trial   the same                                                    ask, right behind what was only tried
//	span grown                                               before, now, more      a change that makes the wall longer and does not say how long
//	opening grown                                            before, now, more      a statement that makes the opening wider or narrower and does not speak of it
//	none comes off  what is there: "post", "bracket"                                ask, where the line tells what is there and the list has none of it
//	climbing                                                                        ask for what children can do, where the line asks of climbing
//	not so many                                              rails asked after, rails there are    why rails, of another count than there is
//	not taken in   the line before, shortened                                       ask, where that line was asked back and changed nothing
//	not as measured    key of the question, names of its fact   nums of its fact    a statement that leaves the layout other than it was measured
//	redone         normal forms of the line said again                              redo
//	started over                                             statements dropped     start over
//	forgot         normal forms that went                                           forget, forget all but
//	set aside      the limit, "guard"                                               set aside
//	kept           normal forms that stand from now on                              take that, take
//	recap          wall ("" without a name), then its forms                         recap: one fact a wall, none: nothing stands
//	saved          name                                      statements             save
//	saved before   name, name the one before is kept under                          save, where the name was taken
//	opened         name                                      statements             open
//	compared       the two names ("this" is the wall at hand)                       compare; what differs is in Change
//	verdicts       verdict of each                                                  compare
//	same as        wall, then the forms taken over                                  same as
//	drawn          path                                                             draw to
//	printed        path                                                             print to
//	help           topic ("" for all), then lines                                   help
//	step                                                     which, of how many     next: the step is in Steps
//	steps done                                               how many               next, after the last
//
// quit has none.
//
// The questions that the conversation itself asks back (Question.Key; explain writes Text):
//
//	key                Facts                                      when
//	nothing said                                                  an empty line
//	not UTF-8          At is the place                            bytes that are no text
//	too long           "most": Nums the most characters           a line too long to read
//	dropped                                                       Ctrl-C while an answer was worked out
//	nothing to undo, nothing to redo, nothing tried (take that), nothing blocked (take 2), nothing answered (show it
//	all), nothing to save, nothing to teach, no lesson (a bare figure), no steps yet (next)
//	nothing to change  "name": Names the quantity                 a relative change of nothing
//	cannot change      "why": Names the statement, the reason     a relative change that leaves what cannot be
//	not known there    "name": Names the quantity                 a value that leans on another wall's unknown
//	one wall                                                      a what-if that speaks of two walls
//	fewer ways         "ways": Nums the way asked for, ways there are
//	nothing to forget  "forget": Names the act's normal form
//	not saved          "name": Names the name; "saved": Names what there is; Choices up to five
//	cannot save, cannot open, cannot write, file in the way       "why": Names the name or path, the reason
//	nothing to draw    "why": Names the reason
//	same wall          "name": Names the wall
