package lexicon

// WordClass is a set of words that can stand for one another in the ways of the tables.
type WordClass struct{ Name, Words string }

// Classes multiply the tables: a way that speaks of a RAIL is said with every word for one.
var Classes = []WordClass{
	{"RAIL", `rail rails rl rls board boards bd bds brd brds slat slats plank planks course courses row rows member members piece pieces pc pcs
		strip strips lath laths runner runners crosspiece crosspieces crossbar crossbars crossmember crossmembers horizontal horizontals timber timbers bar bars planking`},
	{"GAP", "gap gaps gp gps space spaces daylight air slot slots room distance clearance clearances distances"},
	{"SPACE", "gap gaps space spaces spacing daylight air room clearance distance slot"},
	{"OPENING", `opening openings op ops opn opng opngs opg doorway doorways gateway gateways gate gates entry entries entrance entrances entryway entryways
		walkthrough walkthroughs walkway walkways passage passages passageway passageways passthrough portal archway doorhole door doors egress wicket wickets`},
	{"BAY", "bay bays section sections panel panels stretch stretches segment segments"},
	{"STIFF", `stiffener stiffeners stiff stiffs stf stfs stfnr stfnrs stfr stfrs stif stiffner stiffners brace braces batten battens stay stays cleat cleats strut struts
		vertical verticals`},
	{"POST", "post posts pst psts column columns pillar pillars"},
	{"UPRIGHT", "upright uprights"},
	{"BRACKET", "bracket brackets brkt brkts bkt bkts brckt brckts hanger hangers"},
	{"WALL", "wall walls halfwall screen fence partition barrier barriers balustrade"},
	{"FLOOR", "floor flr fl flrs slab concrete ground deck patio paving pavement pad terrace decking tiles tiling flagstones pavers flags flagging cobbles cobblestones setts tarmac asphalt blacktop playground schoolyard screed quayside pontoon planking floorboards"},
	{"EARTH", "ground dirt soil earth grass lawn yard garden grade land turf quay wharf pavement beach shingle riverbank creekbed"},
	{"HEIGHT", "height heights hgt hgts ht hts hight heigth"},
	{"HIGH", "high tall hi"},
	{"WIDTH", "width widths wdth"},
	{"WIDE", "wide broad"},
	{"LENGTH", "length lengths lgth lngth"},
	{"BOTTOM", "bottom btm bot lowest low lower lowermost bottommost first"},
	{"LOWEST", "bottom btm bot lowest lowermost bottommost low"},
	{"TOP", "top uppermost highest topmost"},
	{"UNDER", "under below beneath underneath"},
	{"BETWEEN", "between betwixt twixt tween btwn btw btween"},
	{"ADDED", "added new extra additional additonal add'l addl another second intermediate"},
	{"END", "end outer outside existing corner old"},
	{"LEFT", "left lh left-hand lefthand"},
	{"RIGHT", "right rh right-hand righthand"},
	{"MIDDLE", "middle center centre mid"},
	{"SIZEWORD", "size sizes lumber stock nominal dimension dimensions dims material"},
	{"SPACED", "spaced apart spacing"},
	{"PERSON", `he she they neighbor neighbour neighbors neighbours guy fellow fella chap builder contractor carpenter salesman saleswoman salesperson clerk dealer
		inspector student students kid kids apprentice helper mate boss foreman husband wife son daughter dad mom father mother brother sister friend buddy
		designer architect engineer lad girl boy man woman somebody someone partner crew yard lumberyard merchant store shop relative uncle teacher owner client customer applicant homeowner landlord tenant vendor bidder installer framer joiner supplier pupil pupils trainee learner bench
		graders grader campers scouts buyer shopper committee
		principal parent parents coach dean superintendent instructor aide manufacturer maker
		girls boys lads freshman freshmen sophomore sophomores junior juniors
		lady gentleman gent clerks staff landlady coworker colleague son-in-law brother-in-law father-in-law hubby estimator surveyor plumber mason tradesman handyman expert official salesclerk attendant cashier roommate wifey missus granddaughter nephew niece cousin grandson grandfather grandpa granddad shift clients customers owners homeowners tenants architects engineers inspectors
		pa ma papa mama pal carter sawyer drayman ironmonger chandler blacksmith wheelwright miller
		reviewer reviewers consultant consultants specialist adviser advisor examiner examiners auditor assessor
		reverend vicar preacher pastor deacon youngster youngsters rookie greenhorn intern novice journeyman laborer labourer foreperson granny nan auntie aunt
		oldtimer timer sawmill millwright bookkeeper accountant drafter draftsman drafting rep salesrep realtor dude bloke geezer gaffer surveyors builders contractors carpenters
		bursar caretaker custodian janitor warden steward treasurer secretary chairman chairwoman chairperson trustee trustees quartermaster harbormaster dockmaster lockkeeper ferryman innkeeper publican bartender barman barmaid waiter waitress
		manager managers director producer curator librarian gardener groundskeeper groundsman landscaper roofer electrician painter welder machinist glazier plasterer tiler bricklayer cabinetmaker shipwright boatbuilder farmer rancher shepherd fisherman sailor
		nurse doctor dentist lawyer attorney sheriff mayor councilman councilwoman councillor councilor alderman priest rabbi monk abbot babysitter nanny housekeeper butler chef baker butcher barber tailor postman mailman courier trucker
		cameraman actor dancer musician stagehand scoutmaster counselor counsellor lifeguard umpire referee stepfather stepmother stepson stepdaughter stepdad stepmom godfather godmother mother-in-law sister-in-law fiance girlfriend boyfriend
		housemate lodger bystander pensioner widow widower electricians painters farmers nurses`},
	{"PAPER", `catalog catalogue website listing flyer leaflet datasheet pamphlet sketch drawing drawings plan plans sheet quote bid estimate worksheet slip note notes print blueprint design proposal invoice order list page diagram
		spec specs specification schedule calculation homework manual brochure paper papers letter email offer ticket bill report handout card label
		elevation detail document documents takeoff submittal submission application permit quotation contract statement record records file memo chart table writeup receipt key
		dwg dwgs drg drgs sketches mockup rendering printout fax blueprints survey surveys checklist logbook clipboard redlines sketchbook markup brief scope text margin margins envelope napkin tag sticker scribble scrawl footnote caption legend annotation packaging wrapper instructions directions guide guidelines booklet pamphlet leaflet flyer website article`},
	{"SAYS", `says say said claims claim claimed thinks think thought figures figured reckons reckon reckoned tells told states state stated insists insist believes believe believed
		swears swear guesses guessed maintains argues writes wrote noted notes suggests suggest suggested proposes propose proposed
		estimates estimated calculates calculated reports reported assures assured`},
	{"SHOWS", `shows show showed call calls list state note require requires required contain contains mention mentions has have had draws drew drawn puts put calls called lists list listed quotes quoted assumes assume assumed makes make made gives give gave keeps keep kept
		gets get got uses use used wants specifies specify specified states reads read allows allowed sets set drawn pencilled penciled measured worked priced
		figured cut cuts wrote written indicates promises promised offers offered charges charged counts counted asks includes include included`},
	{"DRAWS", `has had have show list quote specify assume shows showed draws drew drawn puts lists list listed quotes quoted assumes assumed makes gives got specified specifies
		figured measured worked wrote written promises promised offers offered pencilled penciled counted sets`},
	{"NTH", "one two three four five six seven eight 1 2 3 4 5 6 7 8 a b c d"},
	{"PAPERKIND", `answer permit shop cut framing field working original revised final site plan job work material materials lumber county city official approved stamped written printed
		bid price cost order cutting rail post layout wall front rear inspection building signed issued latest older earlier previous current handwritten typed supplier supplier's yard yard's contractor's builder's
		neighbor's owner's architect's designer's engineer's hardware estimate estimator's carpenter's clerk's
		spec specification tech technical product installer's manufacturer's manufacturer mill packing detail pencil rough neat proposed first second third marked redlined sample reference safety instruction`},
	{"PERSONKIND", "crusty grizzled experienced retired paint hardware pro general framing site building lumber yard sales desk head lead senior old young next local other new permit county city counter store shop plan my son-in-law brother-in-law"},
	{"SUBMITS", `submits submit submitted reports report reported maintains maintain maintained asserts assert asserted contends contend contended affirms affirmed attests declares declare declared certifies certify certified
		represents represented testifies testified alleges allege alleged advises advise advised indicates indicate indicated quotes quote quoted argues argue argued holds
		specify details dimensions dimensioned drew puts gives give gave announces announced remarks mentions mention mentioned feels felt guarantees guarantee guaranteed vows promises promise recommends recommend recommended`},
	{"INSERTS", ", - -- ( )"},
	{"CAN", "can could might may would will should shall"},
	{"TELL", "shout holler rattle email forward tell give show read gimme list call name get print send hand fetch display pull provide lay spell"},
	{"ME", "me us them him her everybody everyone"},
	{"FIRST", "first 1st"},
	{"BUY", "buy purchase order acquire"},
	{"MARK", "mark marks pencil lines line marking markings holes hole"},
	{"CUT", "cut cuts cutting saw sawn sawing chop"},
	{"PRICE", "price prices cost costs costing total bill expense expenses expenditure"},
	{"PERHAPS", "maybe perhaps possibly"},
	{"MOST", "most maximum max greatest"},
	{"BIG", "big wide large broad generous roomy"},
	{"BIGGEST", "biggest widest largest broadest greatest maximum max roomiest most longest"},
	{"SNUG", "smack snug snugged jammed butted butting tucked pushed shoved crammed pressed squeezed slammed parked"},
	{"SMALL", "small tight narrow close little tiny teeny slim skinny"},
	{"SMALLEST", "tiniest slimmest skinniest smallest tightest narrowest closest least minimum min minimal littlest"},
	{"POSSIBLE", "possible can could may might will allowed manage possibly able"},
	{"FEWEST", "fewest least minimum min smallest"},
	{"CHEAP", "cheap cheaply inexpensive inexpensively economical economically affordable low"},
	{"CHEAPEST", "cheapest cheapest lowest"},
	{"WASTE", "waste scrap offcut offcuts leftovers scraps wastage"},
	{"LEAST", "least minimum min minimal little lowest smallest"},
	{"ADJ", "big large huge wide broad high tall small tiny narrow tight short long low close thick thin deep far odd strange weird uneven wee skinny slim cramped"},
	{"STORE", "save store file stash keep bank park preserve remember"},
	{"IT", "it that this they everything things thing wall layout those these"},
	{"FLIES", "work fit serve go hold do fly pass play gel jell add line hang pan square matter suit suffice function survive balance"},
	{"AGREE", "agree agrees match matches jive jives jibe jibes tally tallies square squares add adds check checks hold holds compute computes fit fits gel jell line reconcile reconciles correspond corresponds pass passes pan ring sound look seem figure"},
	{"USE", "use have do fit get go make run put manage squeeze swing wedge shoehorn cram stuff jam swallow handle afford pull accommodate support"},
	{"METRIC", "metric millimeters millimetres mm centimeters centimetres cm"},
	{"CUSTOMARY", "inches imperial customary"},
	{"PASSING", `wheelchair stroller pram mower lawnmower wheelbarrow barrow cart wagon bike bicycle scooter grill couch sofa table dog dogs walker trolley furniture fridge refrigerator dolly people kids gurney truck tractor trailer
		motorcycle motorbike moped freezer mattress recliner armchair keg canoe kayak piano ladder hose goat horse pony cow stretcher snowblower smoker cooler everyone everybody somebody someone person man woman`},
	{"TRIED", "tried tested ran did showed had considered sketched floated suggested"},
	{"THISONE", "this it that these her mine ours"},
	{"DESIGN", "design designs plan plans layout version sketch drawing proposal scheme setup arrangement idea"},
	{"WHOSE", "his her hers their theirs your my our its"},
	{"ORG", "school church club town city county village company outfit business association committee council district parish league camp troop family household owners landlord office department customer clients people boss congregation kindergarten library museum parish lodge guild charity foundation society ministry nonprofit scouts legion grange brigade troupe"},
	{"CLASH", "clash meet bump touch foul collide hit overlap interfere bind strike kiss conflict tangle rub"},
	{"EQUAL", "equal same even identical alike eq uniform matching"},
	{"SELLER", "yard store shop lumberyard merchant supplier dealer depot mill sawmill outlet counter retailer wholesaler vendor seller warehouse"},
	{"SELLS", "sell sells carry carries stock stocks offer offers supply supplies"},
	{"SUPPLIED", "sold supplied stocked carried offered delivered shipped marketed obtainable"},
	{"LUMBER", "lumber wood timber timbers boards planks material"},
	{"ONLYWORD", "only just also still always usually normally generally mostly"},
	{"BOUGHT", "bought purchased ordered"},
	{"MUSTNOT", "must should may can could shall would will do does need"},
	{"SPEND", "spend pay"},
	{"KIN", "father mother dad mom brother sister son daughter uncle aunt friend buddy neighbor neighbour relative cousin nephew niece grandfather grandpa granddad grandson grandmother grandma wife husband partner roommate coworker colleague"},
}

// Compounds are words that mean one thing together, folded before anything is looked up.
var Compounds = []struct{ Ways, Word string }{
	{"(walk|pass|step) (throughs|thrus) | walk ways | walkthrus | ways through", "walkthroughs"},
	{"(walk|pass|step) (through|thru) | walk way | walkthru | (gap|space|place|opening|spot|way|room) to (walk|pass|get|go|step) (through|thru) | way (through|in)", "walkthrough"},
	{"(half|knee|pony|low|privacy|slat|slatted|board|screen|wooden|timber|whole|entire|complete|finished) wall", "halfwall"},
	{"cross (piece|board|bar|rail|member|slat) | horizontal (board|rail|slat|plank|member|piece)", "rail"},
	{"cross (pieces|boards|bars|rails|members|slats) | horizontal (boards|rails|slats|planks|members|pieces)", "rails"},
	{"(vertical|upright|up and down) (stiffener|stiffner|brace|batten|stay|support|member|piece|board|strip|slat|cleat|strut)", "stiffener"},
	{"(vertical|upright|up and down) (stiffeners|stiffners|braces|battens|stays|supports|members|pieces|boards|strips|slats|cleats|struts)", "stiffeners"},
	{"(son|brother|father|mother|sister|daughter) in law", "relative"},
	{"(a|one|just one) single", "one"},
	{"(saw|lumber|yard|paint|fence|tile|concrete|cutting|delivery|hardware|wood) (guy|man|fellow|lady|woman|chap|bloke|girl|boy|kid)", "fellow"},
	{"(old|young) (man|gentleman|fella|lady|woman)", "father"},
	{"(chop|miter|mitre|table|circular|skil|skill|band|radial arm|track|power|panel|hand|cutoff|cut off|compound miter|sliding miter|sliding|trim|back|bench|portable|pull|push|rip|jig|coping|crosscut|tenon|dovetail|framing|bow|cordless|worm drive|saber|scroll|reciprocating|flush cut) saw", "saw"},
	{"(egress|access|pedestrian|accessible|exit|escape) (opening|passage|walkthrough|passageway|doorway|path)", "opening"},
	{"(plan|plans|permit|site|building) (reviewer|checker|examiner|inspector|official)", "inspector"},
	{"(fat|thick|thin|skinny|narrow|worn|cheap|heavy|big|small|chipped|hefty|ripping|rip|crosscut|cross cut|combination|framing|finish|finishing|carbide|thin kerf|full kerf|general purpose|plywood|fine|coarse|new|old|sharp|dull|wide|standard|ordinary|regular) blade", "blade"},
	{"half again as", "halfagain"},
	{"(gate|door|doorway|passage|passageway|walkthrough|entrance) (space|hole)", "opening"},
	{"double (stroller|pram|buggy|pushchair|gate|door|doors)", "stroller"}, {"tech (me|us|him|her|them)", "teach"},
	{"support post", "post"}, {"support posts", "posts"},
	{"right (hand|handed|most|er) | rightmost", "right"}, {"left (hand|handed|most) | leftmost", "left"},
	{"pencil (lines|line|mark|marks)", "marks"},
	{"tip top | very top", "top"},
	{"wastage", "waste"},
	{"len", "length"},
	{"lens", "lengths"},
	{"breathing (room|space)", "daylight"},
	{"dn", "down"},
	{"wether", "whether"},
	{"ttl", "total"},
	{"frm", "from"},
	{"btwn | btween | betwixt | twixt | tween", "between"},
	{"where abouts | whereabouts", "where"},
	{"(hardware|building supply|building supplies|big box) (store|shop)", "store"}, {"co - op | co op", "shop"}, {"home (center|centre) | building (center|centre)", "store"},
	{"per cent", "percent"}, {"door way", "doorway"}, {"gate way", "gateway"}, {"entry way", "entryway"}, {"half way", "halfway"},
	{"with out", "without"}, {"wall hgt | wall height | wall ht", "wallheight"},
	{"a piece", "apiece"}, {"up right", "upright"}, {"off cuts", "offcuts"}, {"left overs", "leftovers"}, {"on hand", "onhand"},
	{"o c | on (center|centre|centers|centres|ctr|ctrs)", "oc"},
	{"two by fors", "two by fours"},
	{"w / o", "without"}, {"w /", "with"},
}

// ArticleWords may stand between any two words of the tables.
const ArticleWords = `'s the a an my our your its these those each every all both any`
