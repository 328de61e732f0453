" The colours of a crochet pattern, written from vscode/syntaxes/crochet.tmLanguage.json by go test ./editors -update.
if exists('b:current_syntax')
  finish
endif
syntax case ignore
syntax sync minlines=1

" numbers
syntax match crochetNumber #\v%(<|>)\d+%(\.\d+)?%(<|>)#
highlight default link crochetNumber Number
" the stars and brackets of repeats and groups
syntax match crochetOperator #\v[*\[\]()]#
highlight default link crochetOperator Operator
" what is done other than stitches
syntax match crochetStatement #\v%(<|>)%(rep%(eat)?s?|rpt|skip%(ped)?|sk|miss%(ed)?|turn%(ed)?|join%(ed)?|fasten%(ed)?%(\soff)?|fo|weave%(\sin)?|change|switch|place|move|pm|leave|leaving|continue|work%(ed)?|return|make|cut|break|sew|stuff|times|once|twice|more|not)%(<|>)#
highlight default link crochetStatement Statement
" a stitch: what goes before its name, its name, what goes behind it
syntax match crochetFunction #\v%(<|>)%(%(%(front|back)\spost|raised\s%(front|back)|raised|extended|ext|foundation|reverse|rev|cross%(ed)?|linked|tunisian|simple|full|short|long|plain|spike|invisible|inv|half|bp|fp|t|x)[\s-])*%(%(fp|bp|ex?|f|r|t)?%(sc|s?dc|hdc|htr|trtr|dtr|trc|tr|qtr|quadtr|quintr|ttr|htc|tc|ss|ks|ps|fs|es|rs|ess)s?%(fp|bp|f|b)?%(\dtogs?|togs?)?|[hs]\sd\sc|s\ss|[dh]\str\sc|[dh]\strc?|[dsht]\.?\s[ct]\.?|etss|t?sl\s?%(sts?|stitch%(es)?)|sl|double\slongs?%(\strebles?)?|%(crossed|cross|reverse|long|extended|simple|full|short|plain|knit|spike|crab|%(double\s)?%(loop|lp)|fur)\s%(sts?|stitch%(es)?)|%(\d|two|three|four|five|six|seven|eight|nine)\s?%(together|togs?)|ch%(ain)?\s\d\spicots?|picots?\sof\s%(\d\sch|ch\s\d)|half\s[dt]\.?\s[cr]\.?|tr\sc|t\str|quad|quint|dbl|trip|quadruple|quintuple|singles?|doubles?|triples?|trebles?|crochets?|slip\s?stitch%(es|ed)?|slip\ssts?|ss|chs?|chains?|spikes?|inc%('d|s|rease[sd]?)?|%(inv)?dec%('d|s|rease[sd]?)?|clusters?|cls?|bobbles?|bo|puffs?|popcorns?|pcs?|ps|shells?|sh|fans?|picots?|purls?|v-?sts?|v\sst%(itch)?%(s|es)?|crab|knit|fwd?p|retp|%(forward|return)\spass%(es)?)%(<|>)%([\s-]?%(%(two|three|four|five|six|seven|eight|nine|\d)\s?%(tog%(ether|s)?)|together|togs?|trc?|dc|sc|d|c|crochets?|trebles?|doubles?|triples?|singles?|%(front|back)\sposts?|posts?|front|back|fp|bp|v\ssts?|v\sstitch%(es)?|v-?sts?|inv%(isible)?\sdec%(rease)?s?|clusters?|cls?|bobbles?|bo|puffs?|popcorns?|pcs?|picots?|shells?|fans?|spikes?|dec%(rease)?s?|inc%(rease)?s?|sts?|stitch%(es)?)%(<|>))*#
highlight default link crochetFunction Function
" a stated count, in one size or in several
syntax match crochetSpecial #\v\(\d+%(\s\(\d[0-9, ]*\))?\s%(sts?|stitch%(es)?|sps?|chs?|sc|h?dc|d?tr|htr)%(<|>)[^()]*\)#
highlight default link crochetSpecial Special
" the name of a field of the header
syntax match crochetType #\v^[a-z][a-z ]*%(\s[a-z0-9])?:#
highlight default link crochetType Type
" the label of a row
syntax match crochetPreProc #\v^\s*%(%(next|set-up|setup|last|foundation|joining)\s%(rows?|rnds?|rounds?)|%(rows?|rnds?|rounds?|rds?|r)\.?\s?\d[^:.()]*)%(\([^()]*\))?\s*:#
highlight default link crochetPreProc PreProc
" a piece, where it begins
syntax match crochetTitle #\v^piece\s*:.*$#
highlight default link crochetTitle Title
" remarks of the writer's own
syntax match crochetComment #\v%(^|\s)//.*$#
highlight default link crochetComment Comment

let b:current_syntax = 'crochet'
