package lexicon

// saids are still more ways to hear back what was said, to ask for help, and to get something out in a file.
var saids = []Entry{
	{Kind: Cmd, Key: "recap", Loose: true, Ways: `
		(rundown|list|overview|review|readback|run down|summary|recital|account) of [(everything|all|what)] (i|we) [(have)] (told|given|gave|said|entered|asked|set) [(you)] [(so far)]
		(give|read|show|tell|let) [ME] [(have)] (a|the) (rundown|overview|summary|recap|readback|run down) [of [(everything|all|what)] (i|we) [(have)] (told|given|gave|said|entered|set) [(you)] [(so far)]]
		what (i|we) have (entered|told you|said|given you|given|put in|set|asked for|typed) [(so far|up to now|until now)]
		what did (i|we) (ask for|specify|order|wish for|say i wanted)
		what have (i|we) (entered|told you|said|given you|given|put in|set|asked for|typed) [(so far|up to now|until now)]
		(repeat|read|say|play|give|tell) back [(to ME)] [(all|everything)] [(of)] (my|our|the) (numbers|figures|measurements|settings|entries|values|inputs|wishes|words)
		(repeat|read|say|give|tell) [ME] [(all|everything)] (my|our) (numbers|figures|measurements|settings|entries|values|inputs|wishes) back [(to ME)]
		what (you|do you|have you|you have) [(got|have)] [(down|written|noted|recorded|heard|taken down)] from (me|us) [(so far|up to now|until now)]
		what (you|do you|have you) (got|have) from (me|us) [(so far|up to now|until now)]
		what (you|do you|have you) [(got|have)] [(down|written down|noted down|recorded|on file|on record)] [(for|about|on)] (me|us|my wall|so far)
		what you (have|have got|got) down
		(i|we) (lost track|lost count|have lost track) [of (what|everything|it all|all of it) [(i|we)] [(have)] [(told|said|given|entered|set|gave)] [you]]
		(i|we) (forgot|forget|can not remember|do not remember|do not recall|have forgotten) (what|everything|all|half of what) [(i|we)] [(have)] [(told|said|given|entered|set|gave)] [you]`},
	{Kind: Cmd, Key: "undo", Loose: true, Ways: "(one|a) step (back|backward|backwards)"},
	{Kind: Cmd, Key: "quit", Loose: true, Ways: "that is me (done|finished|through|off|sorted|all set)\n(that is|that 's) (it|all|everything) for me [(today|now|for today|for now)]\n(settled|sorted) [(,)] (goodbye|bye)"},
	{Kind: Cmd, Key: "save", Ways: "(stash|stow|archive|park|bank|record|tuck|put|keep|save|store|file) [(this|it|that|these|all of this|all this|the lot|mine|ours|what (i|we) have [(so far|now|here|got)]|everything [(i|we)] [(have)] [(so far|said)])] [(one|plan|design|wall|version|layout|lot)] [(away|by|aside)] (as|under [the] [name] [of])"},
	{Kind: Cmd, Key: "compare", Ways: "(put|hold|set|stack|lay|place|stand) (this|the) (plan|wall|design|layout|version) (next to|against|beside|alongside|up against|side by side with)"},
	{Kind: Cmd, Key: "help", Loose: true, Ways: `
		what are [(all|some of)] [(the)] (things|commands|words|phrases|questions|sentences|sorts of things|kinds of things) [(that)] (i|we|you) (can|could|may|might|am allowed to) (say|ask|tell|use|type|do|say to|ask of|understand) [(to)] [(you)]
		(which|what) (commands|words|phrases|questions|sentences|things) [(are|can|do|does)] [(there|i|we|you|it)] [(say|use|know|understand|take|type|have|give|answer)]
		(i|we) could use [(some|a little|a bit of)] help [(here|with this)]`},
	{Kind: Cmd, Key: "help with", Loose: true, Ways: `
		what [(all|else|kind of stuff|kind of things|sort of things|sorts of things|kinds of things|things|stuff|all kinds of things|more|words)] [(can|may|could|do|should|am|are)] (i|we|one) [(able|allowed)] [(to)] (say|ask|tell you|talk|type|tell|ask you|say to you) (about|regarding|concerning)
		how (do|can|should|would|could|does|to) (i|we|one) (tell you|say|say something|tell you something|say anything|give you|let you know|specify|enter|put in|phrase|word|express|set|describe|state|define|talk) [(about|of|for)]
		(anything|something|what) [(in particular)] [(that)] (i|we) (can|could|may|am able to|are able to) (say|ask|tell you) about
		(show|give|tell) ME [(some)] (examples|an example) (of|for|about)
		(i|we) need help (with|on)`},
	{Kind: Cmd, Key: "show it all", Loose: true, Ways: `
		(see|show ME|let ME see|hear|give ME|walk ME through|take ME through|run through|go through|run ME through) [(all|all of|every bit of|every step of|every line of|every last bit of|each step of|each line of|the whole of)] (the|your) (arithmetic|math|maths|sums|sum|calculation|calculations|workings|working|proof|derivation) [(for ME|with ME)] [, do not skip (any|anything|a step|a line|any of it)] [, (not just) (where it ends up|the answer|the result)]
		(every|each) (bit|step|line|piece|scrap|detail) of (the|your) (arithmetic|math|maths|sums|sum|calculation|calculations|workings|proof|derivation)
		all the (arithmetic|math|maths|sums|workings|calculations) [for ME] [, do not skip (any|anything|a step|any of it)]
		whole (sum|calculation|derivation) , not just (where it ends up|the answer|the result|the end)`},
	{Kind: Cmd, Key: "draw to", Ways: `
		[(make|do|get|give ME|let ME have|want|like|need|save|put|send|export|write|output)] [(a|the|my|that|this)] (drawing|picture|sketch|elevation|dwg|diagram|image|svg|draw) [file] [(is|to be|be|goes|go|should go|should be|gets|can go)] [(saved|stored|written|put|exported|sent|named|called|filed|out|over)] (to|in|into|as|onto|- >|->|named|called|under)
		[(make|do|get|give ME|let ME have|want|like|need|save|put|send|export|write|output)] [(a|the|my|that|this)] (drawing|picture|sketch|elevation|dwg|diagram|image|svg) [file] [(,|and)] (name|call|save|file) it [as]`},
	{Kind: Cmd, Key: "print to", Ways: `
		[(make|do|get|give ME|let ME have|want|like|need|save|put|send|export|write|output|print)] [(a|the|my|that|this)] (printout|print out|print-out|printable|printable sheet|printable page|printable version|printable copy|job sheet|sheet|page|hard copy|paper copy|html|handout|report|paperwork|web page|webpage|print|job) [file] [(is|to be|be|goes|go|should go|should be|gets|can go)] [(saved|stored|written|put|exported|sent|named|called|filed|out|over)] (to|in|into|as|onto|- >|->|named|called|under)
		[(make|do|get|give ME|let ME have|want|like|need|save|put|send|export|write|output|print)] [(a|the|my|that|this)] (printout|print out|print-out|printable|printable sheet|printable page|printable version|printable copy|job sheet|sheet|page|hard copy|paper copy|html|handout|report|paperwork|web page|webpage|print) [file] [(,|and)] (name|call|save|file) it [as]`},
	{Kind: Fill, Key: "fill", Ways: `
		as for
		(put|write|jot|note) down [(as|for|at)]
		(i|we) [would] [(really|very much|so)] appreciate
		(i|we) would be (grateful|glad|thankful|obliged|much obliged) for
		(i am|we are) (after|looking for)
		a list of [all]
		(screwing|nailing|fastening|attaching|bolting|mounting) [(on|up|in|down)]
		(with regard|in regard|as) to
		(may|might|can|could) (i|we) [(also|just)] (ask|bother you for|trouble you for|ask you for|get you to tell ME)
		(any|is there any|is there a) (chance|way|hope) [(that)] (you could|you can|of getting|of hearing|of seeing|you would)
		[be] so (kind|good|nice) as to [(list|tell ME|give ME|show ME|read ME)]
		[be] (kind|good|nice) enough to
		(forget|ignore|disregard|leave aside|set aside) [about] (his|her|their) (drawing|sketch|plan|quote|numbers|layout|figures|sheet|bid|estimate|paper)
		regarding
		concerning
		(when|if) it comes to
		speaking of
		(mind|is it ok|is it okay|is it all right|would it be ok|would it be okay) if (i|we) (could|can|may|)
		(before|when|once|until|after|as soon as) (i|we) (drive|go|head|get|run|am driving|am going|am heading) (to|into|in to|over to|down to|out to|up to|off to) (town|the yard|the store|the lumber yard|the lumberyard|the shop|work|the mill|the hardware store)
		(i am|we are|i will be) (ordering|buying|picking up|getting|fetching|collecting|drilling|digging|pouring|cutting|marking|painting|sanding) [(the|my|our)] (bases|anchors|brackets|screws|hardware|caps|slab|concrete|footings|holes|post bases) [(today|tomorrow|now|this (morning|afternoon|week)|tonight|next)] [,]
		(saw is|saw 's) (set up|ready|plugged in|running|warm|on|out) [,]
		i do not mean to (question|doubt|second guess|bother|pester|nag|argue with) you [(but|,)]`},
	{Kind: Csv, Key: "csv", Loose: true, Ways: "[(as|in|to|into)] [(a|an)] (csv|spreadsheet|excel|comma separated values) [(file|format|form|sheet)] [(of)]\n, (csv|spreadsheet|excel) [(format|file|form)]\nexport [(the|my|our)]\nsave\n(put|get|export) (in|into|to) [(a|an)] (csv|spreadsheet|excel)"},
}
