package scan

// NeutralWords carry no meaning of their own: they are stepped over. A word that could turn a number, a relation or
// a quantity into another never stands here.
const NeutralWords = `
	i we you us me they them he she him which that this there here
	is are was were be been being am do does did doing done will would shall should must can could may might
	have has had having got get gets getting need needs needed want wants wanted like liked wish wishes prefer love
	going go goes gone went come comes came coming let please pls plz kindly simply really actually very quite exactly precisely
	ok okay k alright yes yeah yep yup uh um umm er erm ah eh hmm hm mm oh hey hi hello well now then so also too
	of at on for with by into onto use used using uses put puts putting set sets setting make makes making made keep keeps keeping kept
	leave leaves leaving place placed places placing install installed stand stands standing stood sit sits sitting sat rest rests run runs running ran
	read reads reading stacked stack stacks stacking
	try tries build built building think guess believe know see look looks today still yet already currently presently again
	ought supposed able fine sure certainly definitely likely probably clearly basically obviously honestly finally first
	altogether whole entire actual true real clear dead bang work works land lands landing turn turns turned
	wood wooden cedar existing present thing things sir maam folks guys buddy everyone thanks thank hope
	finish finishes end ends rise rises start starts begin begins beginning starting finishing ending
	giving
	give gives given take taking hold holds holding lay lays laid show shows fit
	stick sticks sticking new old one ones hers
	chose choose chosen found throw
	myself yourself itself class students student kids kid children child lad lass boy boys girl girls team crew group groups people folk customer customers client
	lads apprentices learners pupils everyone anybody anyone nobody somebody someone wife husband
	tomorrow week month later soon moment lately afterwards
	garage shed house home place backyard shop truck job jobs project projects business
	find finding decide decided figuring counting ensure seem seems appear appears expect aim aiming shoot shooting hoping planning intend
	redwood oak spruce hemlock douglas painted stained fresh planed dried sanded bolted screwed bolt
	lovely pretty handsome neat tidy simple plain easy quick quickly careful carefully nicely properly
	anyway anyhow meanwhile therefore hence indeed surely lastly secondly firstly truly honest frankly personally
	allowed allow allows alas aye righto roger cheers
	eat eats eating take takes
	become becomes becoming became
	reckon figger fixing aw heck naw gosh golly darn dang
	toddler baby babies dog dogs cat pram stroller walker wheelchair grandmother grandfather grandma grandpa
	head heads finger fingers stuck
	patience trouble bother nuisance grateful obliged thankful curious afraid worried confused tired busy
	matter matters care cares business 
	porch roof veranda sunroom shelter barn cabin bunkhouse balcony verandah loggia lanai portico galley sunporch
	pulled 
	hang hangs hanging hung ride rides riding lying laying sliding slid slide
	results result resulting apply applies
	speak spoke spoken talk talks talking discuss
	gave choose choosing prefer preferred preferring
	beautiful fancy modest comfortable comfortably
	decision idea ideas thought
	
	kindly throughout 
	squeezing slip slips easily
	following follow
	having
	made
	looking losing hug hugs hugging started took ended began lie lies paved tiled ugh gee phew argh dear divide divided split morning evening tonight afternoon
	remain remains remained stayed staying strictly belong belongs
	
	once
	mess
	copper galvanized galvanised stainless steel brass bronze vinyl plastic aluminum aluminium powdercoated
	happily
	oddball 
	fuss fussing
	everybody gang fellas teenagers freshmen seniors
	wanting myself ourselves themselves
	poke pokes poking jut juts jutting protrude protrudes protruding
	ready willing happy glad
	building builds built
	saved called named
	happen happens happened mean means meant say said says tell told ask asked call called
	comfortable nice good great lovely perfect proper properly safe kind sort way even ever
	where when and
`
