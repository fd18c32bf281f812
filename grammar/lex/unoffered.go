package lex

import "saywright/grammar/scan"

// unoffered are words of the tables that are written short or wrong: they are understood as they stand, but no other word is taken for one of them, nor is one ever
// offered as what may be meant. Contractions without their apostrophe are none of them: they turn a sentence.
var unoffered = scan.WordSet(`abotu abt abv addl addtl adn agian alredy amke approx apx bdgt bds becasue becuase befor betwen betwene bgap bgt bkt bkts blw bom bot brckt
	brckts brd brds brkt brkts btm btmst bttm btw btwn budg chck chk chng chpst clnc clr clrnc clrnce cmds cmp cna cncrt cntr cntrs coud coudl crctn crrctn csv ctc ctr ctrd ctrs
	cts cud dbl dcrs decr del dept dia dlt dmnsn dmnsns drg drgs drp drwn drwy drwys dstnc dwg dwgs eahc eghth enuf evry evrything exg exstng flr flrs fomr frgt frm fwst fyi giv
	grnd gud hav hdwe hdwr heigth hght hgt hgts hieght hight hlf hndrd horiz hrdwr hrzntl hte htis hts hwat hwere hwich hwo iirc ikr imo inchs incr incrs insted jst jsut knwo krf
	krfs lctn lctns lenght lft lgst lgth lgths liek lmbr lngth lngths locn locns locs lrgst lst lvl lyt maek matl matls mddl mdl ment mkae mks mnay mnm mnmm moer mrks msrd mtl mtls mtrl
	mtrls ndd nlt nmt nte oall okd opg opgs opn opne opng opngs opnng opnngs ovrl ovrll owrk peice peices pleez plese pls plz ppl prc prcs prolly pst pstn pstns psts qrtr qte qtr
	qty rght rls rly rmv rnd scosh scrws setts shoping shoud shoudl shpg shpng shppng shud slb smae smllst smlst smth som spcg spcng spn spr srry sry stf stffnr stffnrs stfnr stfnrs
	stfr stfrs stfs sth stif stiffner stiffners stk sxtnth szs taek taht tbh teh tehre tehy tgt thansk thck thckns thcknss thickn thier thign thk thkness thkns ths thsi thsoe thx tihs
	tkae ttl typ vert vrtcl waht wat wdth wdths wehn wehre whne whre wht whta wiat wich widht wiht wll wnat woud woudl wrok wud wuld xtra yuo stiffs`)

// meantBy are the words that those of the tables which are spelled wrong are meant for: what is nearest to one of them is nearest to what it means.
var meantBy = map[string]string{
	"abotu": "about", "agian": "again", "alredy": "already", "becasue": "because", "becuase": "because", "betwen": "between", "btw": "between", "betwene": "between", "evrything": "everything",
	"heigth": "height", "hieght": "height", "insted": "instead", "lenght": "length", "peice": "piece", "peices": "pieces", "shoping": "shopping", "stiffner": "stiffener",
	"stiffners": "stiffeners", "stif": "stiff", "widht": "width", "opnng": "opening", "opnngs": "openings", "stffnr": "stiffener", "stffnrs": "stiffeners",
}
