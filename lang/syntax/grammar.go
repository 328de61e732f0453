package syntax

import (
	"io"
	"sync"

	"github.com/alecthomas/participle/v2"
	"github.com/alecthomas/participle/v2/lexer"
)

// The grammar of one clause: the words between two separators, with every
// bracketed group in it standing as a single Enclosed token. It is not
// recursive, so neither nesting nor length can make the parser slow or deep.
// Which phrases mean the same is decided in read.go; the grammar only says
// what a pattern may write.
//
// Words in quotes are canonical: words.tsv lists the spellings of each.

type gClause struct {
	Pos       lexer.Position
	Ending    *gEnding    `parser:"  @@ EOF"`
	RepFrom   *gRepFrom   `parser:"| @@ EOF"`
	Rows      *gRows      `parser:"| @@ EOF"`
	Turn      *gTurn      `parser:"| @@ EOF"`
	Join      *gJoin      `parser:"| @@ EOF"`
	Branch    *gBranch    `parser:"| @@ EOF"`
	Return    *gReturn    `parser:"| @@ EOF"`
	Ring      *gRing      `parser:"| @@ EOF"`
	Skip      *gSkip      `parser:"| @@ EOF"`
	Leave     *gLeave     `parser:"| @@ EOF"`
	Multiple  *gMultiple  `parser:"| @@ EOF"`
	Chain     *gChain     `parser:"| @@ EOF"`
	Counts    *gCounts    `parser:"| @@ EOF"`
	Bracketed *gBracketed `parser:"| @@ EOF"`
	Work      *gWork      `parser:"| @@ EOF"`
	Remark    *gRemark    `parser:"| @@ EOF"`
	Total     *gTotal     `parser:"| @@ EOF"`
	Again     *gAgain     `parser:"| @@ EOF"`
	Shaping   *gShaping   `parser:"| @@ EOF"`
	Along     *gAlong     `parser:"| @@ EOF"`
	Place     *gPlace1st  `parser:"| @@ EOF"`
	Loop      *gLoop      `parser:"| @@ EOF"`
	Even      *gEven      `parser:"| @@ EOF"`
	Marker    *gMarker    `parser:"| @@ EOF"`
	Yarn      *gYarn      `parser:"| @@ EOF"`
	Side      *gSide      `parser:"| @@ EOF"`
	Finish    *gFinish    `parser:"| @@ EOF"`
}

// rep from * 5 more times; rep from * to ** once; *...* 6 times; rep around
type gRepFrom struct {
	Pos    lexer.Position
	Rep    bool    `parser:"(   @'rep'"`
	From   *gStar  `parser:"    ( ( 'from' | 'between' | 'of' )? @@"`
	To     *gStar  `parser:"      ( ( 'to' | 'and' | Hyphen | Dash ) @@ )? ( 'marks' | 's' )?"`
	Marks  bool    `parser:"    | @( 'between' 'marks' )"`
	From2  *gStar  `parser:"| ( 'from' 'beg' ) )? | 'from' @@"`
	To2    *gStar  `parser:"    ( Dash | Hyphen | 'to' ) @@ )?"`
	Tail   *gTimes `parser:"@@?"`
	StopAt *gStar  `parser:"( Comma? 'end' 'last'? 'rep'? 'at' @@ )?"`
}

type gStar struct {
	Pos  lexer.Position
	Text string `parser:"@Star"`
}

// How often: 6 times; x 6; twice more; around; across to last 3 sts.
type gTimes struct {
	Pos   lexer.Position
	Times *gTimesN `parser:"  @@"`
	To    *gExtent `parser:"| @@"`
}

type gTimesN struct {
	N     *gNum  `parser:"'for'? 'have'? 'of'? 'in'? ( ( 'x' | '×' | Star ) @@ 'times'? 'around'?"`
	More1 bool   `parser:"| ( 'until' | 'for' )? @'more'?"`
	M     *gNum  `parser:"  @@"`
	More2 bool   `parser:"( ( 'x' | '×' ) | @'more'? 'times'"`
	More3 bool   `parser:"    @'more'?"`
	All   bool   `parser:"    @( 'in' 'each' )? ) ( 'around' | 'across' )?"`
	More4 bool   `parser:"| @'more'?"`
	Once  *gOnce `parser:"  @@"`
	More5 bool   `parser:"  @'more'? ( 'around' | 'across' )? )"`
}

type gNum struct {
	Pos  lexer.Position
	Text string `parser:"@Number"`
}

type gOnce struct {
	Pos  lexer.Position
	Text string `parser:"@'once'"`
}

// How far: across; around; to last 3 sts; until 1 st remains; to marker.
type gExtent struct {
	Pos    lexer.Position
	Last   bool   `parser:"( 'across' | 'around' )* ( ( ( 'to' | 'until' | 'over' | 'except' ) 'within'? | 'within' ) ( @'last'"`
	N      *gNum  `parser:"    @@?"`
	Noun   *gNoun `parser:"    @@? ( 'of' ( 'row' | 'rnd' ) )?"`
	M      *gNum  `parser:"  | 'have'? @@"`
	MNoun  *gNoun `parser:"    @@? ( 'remaining' | 'from' 'end' | 'of' 'end' | 'at' 'end' 'remaining'? )"`
	Marker bool   `parser:"  | 'next'? @( 'marker' | 'marked' 'st' )"`
	Corner bool   `parser:"  | 'next'? @'corner'"`
	Tch    bool   `parser:"  | @'tch'"`
	Rest   bool   `parser:"| 'end' ( 'of' ( 'row' | 'rnd' ) )? | @( 'piece' | 'long enough' ) ) ) | ( ( 'across' | 'around' ) ( ?! 'other side' | 'edge' | 'rowend' | 'side' | 'foundation' | 'stem' | 'ring' | 'post' | 'next' | 'each' ) )"`
}

// A thing that can be worked into or counted.
type gNoun struct {
	Pos    lexer.Position
	Corner bool     `parser:"@( 'corner' ( ?= 'st' | 'sp' | 'ch' | 'loop' | Stitch | Number ) )?"`
	Space  *gSpace  `parser:"(   @@"`
	Stitch *gStitch `parser:"  | @@"`
	Tch    bool     `parser:"  | @'tch'"`
	Length *gNum    `parser:"    ( ( Hyphen | Dash )? @@ )?"`
	Word   string   `parser:"| @( 'st' | 'ch' | 'sp' | 'loop' | 'ring' | 'corner' | 'rowend' | 'edge' | 'foundation' | 'group' | 'marker' | 'marked' | 'base' | 'row' | 'rnd' | 'join' | 'top' | 'other side' ) ) ( 'st' | 'sp' | 'group' | 'loop' )?"`
}

// ch-2 sp; 2-ch sp; ch-5 loop; beg ch-3
type gSpace struct {
	Pos lexer.Position
	Beg bool   `parser:"@'beg'?"`
	N   *gNum  `parser:"( 'ch' ( Hyphen | Dash )? @@"`
	M   *gNum  `parser:"| @@ ( Hyphen | Dash )? 'ch' ( Hyphen | Dash )? ( ?= 'sp' | 'loop' )"`
	Sp  string `parser:"| 'ch' ( Hyphen | Dash )? ( ?= 'sp' | 'loop' ) ) ( ( Hyphen | Dash )? @( 'sp' | 'loop' | 'corner' ) )?"`
}

type gStitch struct {
	Pos  lexer.Position
	Text string `parser:"@Stitch"`
}

// Where: in next 5 sts; in each ch across; in 2nd ch from hook; around post of next dc.
type gWhere struct {
	Pos  lexer.Position
	End  lexer.Position
	Prep string  `parser:"( ?! 'to' ( 'join' | 'form' ) | 'and' ( 'join' | 'form' ) ) ( 'and' | 'or' )? @( 'in' | 'to' | 'over' | 'under' | 'between' | 'behind' | 'at' | ( 'around' | 'across' ) ( ?= 'post' | 'next' | 'each' | 'same' | 'last' | 'center' | 'any' | 'edge' | 'rowend' | 'side' | 'other side' | 'of' | 'foundation' | 'ring' | 'stem' | Stitch | Ordinal | Number ) )?"`
	Mods []*gMod `parser:"'of'? @@+"`
}

type gMod struct {
	Pos     lexer.Position
	Extent  *gExtent `parser:"  @@"`
	Of      *gOf     `parser:"| @@"`
	From    *gFrom   `parser:"| @@"`
	Below   *gBelow  `parser:"| @@"`
	As      *gAs     `parser:"| @@"`
	Noun    *gNoun   `parser:"| @@"`
	Number  *gNum    `parser:"| @@"`
	Ordinal *gOrd    `parser:"| @@"`
	Word    string   `parser:"| @( 'next' | 'same' | 'each' | 'last' | 'remaining' | 'previous' | 'any' | 'center' | 'top' | 'beg' | 'both' | 'only' | 'other' | 'side' | 'end' | 'post' | 'blo' | 'flo' | 'bothloops' | 'thirdloop' | 'back' | 'front' | 'penultimate' | 'previous' | 'marked' | 'above' | 'of' | 'evenly' | 'wise' | 'until' | 'skip' | 'it' | 'even' )"`
}

// in same st as join; in same sp as last dc
type gAs struct {
	Pos  lexer.Position
	What bool `parser:"'as' @( 'last' | 'join' | 'beg' | 'first' | Ordinal | Stitch | 'st' | 'ch' | 'tch' | 'sp' )+"`
}

type gOrd struct {
	Pos  lexer.Position
	Text string `parser:"@Ordinal"`
}

// of branch A; of next shell; of ch-6; of Row 1; of rnd
type gOf struct {
	Pos    lexer.Position
	Name   string `parser:"'of' ( ( 'branch' | 'stem' )? @Name"`
	Stem   bool   `parser:"| @'stem'"`
	RowNth *gOrd  `parser:"| @@? "`
	RowN   *gNum  `parser:"( 'row' | 'rnd' ) @@? )"`
}

// from hook; from beg of Row 1; from end
type gFrom struct {
	Pos  lexer.Position
	What string `parser:"'from' @( 'hook' | 'beg' | 'end' | 'join' )"`
	Of   *gOf   `parser:"@@?"`
}

// 2 rows below; below; of previous row
type gBelow struct {
	Pos  lexer.Position
	N    *gNum `parser:"  @@ ( 'row' | 'rnd' ) 'previous'"`
	RowN *gNum `parser:"| ( 'previous' ( 'row' | 'rnd' ) ) | 'from'? ( 'row' | 'rnd' ) @@ 'previous'?"`
}

// sc in next 5 sts; 2 dc in each of next 3 sts; 5 sc; inc x 6; sc across
type gWork struct {
	Pos      lexer.Position
	Loop1    *gLoopIn  `parser:"'work'? @@?"`
	N        *gNum     `parser:"( 'rs' | 'ws' )? ( @@ ( 'more' )? )?"`
	Once1    *gOnce    `parser:"@@?"`
	Stitch   *gStitch  `parser:"@@"`
	M        *gNum     `parser:"( 'st' ( ?! 'in' ) )? ( @@ ( ?! 'times' | 'more' | 'x' | '×' ) 'st'? )?"`
	Times    *gTimesN  `parser:"@@?"`
	Loop2    *gLoopIn  `parser:"@@?"`
	Each     bool      `parser:"@( 'each' ( ?= 'in' ) )?"`
	Where    []*gWhere `parser:"@@*"`
	Together bool      `parser:"@( 'together' | 'tog' )?"`
	Loop3    *gLoopIn  `parser:"@@?"`
	Times2   *gTimesN  `parser:"@@?"`
	ToJoin   bool      `parser:"@( ( 'to' | 'and' ) ( 'join' | 'form' ) )?"`
	Ring     bool      `parser:"@( 'ring' ) ?"`
}

// 1 in each of next 3; blo in next 6: the stitch is the one worked before
type gAgain struct {
	Pos   lexer.Position
	N     *gNum     `parser:"'work'? ( @@"`
	Loop  *gLoopIn  `parser:"  @@? | @@ )"`
	Where []*gWhere `parser:"( ?= 'in' | 'across' | 'around' ) @@+"`
}

// decreasing 6 evenly
type gShaping struct {
	Pos  lexer.Position
	Less bool  `parser:"( @( 'decreased' | 'less' ) | 'increased' | 'more' )"`
	N    *gNum `parser:"@@ 'st'? 'evenly' ( 'across' | 'around' )?"`
}

// working in row ends
type gAlong struct {
	Pos lexer.Position
	On  bool `parser:"'work'? ( 'in' | 'across' | 'around' | 'evenly' )+ @( 'rowend' | 'edge' | 'side' 'edge'? )"`
}

// in back loop only
type gLoopIn struct {
	Pos  lexer.Position
	Word string `parser:"( 'in' | 'work' | 'to' | 'remaining' )* @( 'blo' | 'flo' | 'thirdloop' | 'bothloops' ) 'only'? ( 'of' ( ?= 'each' | 'next' | 'same' | 'last' | 'remaining' | 'st' | Stitch | Number | Ordinal ) )?"`
}

// working in back loops only; in unused back loops of Rnd 2; in free loops of Rnd 2
type gLoop struct {
	Pos  lexer.Position
	Loop *gLoopIn `parser:"'work'? ( @@ ( 'of' 'each' 'st' )? ( 'across' | 'around' )?"`
	Of   *gOf     `parser:"  @@?"`
	Free *gNum    `parser:"| 'in'? 'other side' ( 'row' | 'rnd' ) @@ )"`
}

// ch 3; 3 ch; ch 3 (counts as dc); ch 12 for handle
type gChain struct {
	Pos    lexer.Position
	N      *gNum    `parser:"'work'? ( 'ch' ( Hyphen | Dash | 'of' )? @@"`
	M      *gNum    `parser:"| @@ ( Hyphen | Dash )? 'ch'"`
	Counts *gCounts `parser:"| 'ch' ) 'more'? ( 'st' | 'loop' )? @@? ( 'to' 'turn' | 'for' 'turn' )?"`
}

// counts as dc; does not count as a st; counts as dc and ch 1 here and throughout
type gCounts struct {
	Pos    lexer.Position
	End    lexer.Position
	Beg    *gBegCh  `parser:"@@?"`
	Not    bool     `parser:"( 'to' | 'of' )? @'not'?"`
	Not2   bool     `parser:"'count' @'not'? ( 'as' | 'for' | 'in' )*"`
	Parts  []*gPart `parser:"( 'first' | Ordinal )? ( @@ ( ( 'and' | Sign | Comma | 'plus' ) @@ )* )?"`
	Always bool     `parser:"( 'at' ( 'beg' | 'end' ) ( 'of' 'each'? ( 'row' | 'rnd' ) )? )? @( Name | 'in' | 'each' | 'row' | 'rnd' | 'and' | 'of' | 'always' )*"`
}

type gBegCh struct {
	Space *gSpace `parser:"( 'tch' | @@"`
	N     *gNum   `parser:"| 'ch' Hyphen? @@ | ( 'skip' Number? 'ch' | 'ch' ) ) ( 'at' 'beg' ( 'of' 'each'? ( 'row' | 'rnd' ) )? )?"`
}

type gPart struct {
	Pos  lexer.Position
	N    *gNum  `parser:"@@?"`
	Noun *gNoun `parser:"@@"`
}

// (24 sc) as the inside of a bracket; 24 sts; you have 12 dc and 4 ch-2 sps
type gTotal struct {
	Pos    lexer.Position
	Have   bool     `parser:"@( 'have' | Dash | Sign | 'made' )* ( 'of' )?"`
	Bare   *gNum    `parser:"(   @@ 'in'? 'more'? EOF"`
	Parts  []*gPart `parser:"  | @@ ( ( 'and' | Sign | Comma | Semi | 'plus' | 'with' )+ @@ )*"`
	Change bool     `parser:"    @( 'increased' | 'decreased' | 'more' | 'less' )? 'made'? 'remaining'? ( 'in' 'each' )? )"`
}

// (…) 6 times; (…) in next ch-2 sp; [...] around; (…) 4 times in next sp
type gBracketed struct {
	Pos   lexer.Position
	Lead  *gNum     `parser:"'work'? 'rep'? ( @@ ( 'x' | '×' | 'times' ) )?"`
	Group *gGroup   `parser:"@@"`
	Times *gTimesN  `parser:"Comma? 'rep'? @@?"`
	Where []*gWhere `parser:"( 'both' | 'each' ( ?= 'in' ) )? @@* 'made'?"`
}

type gGroup struct {
	Pos  lexer.Position
	Text string `parser:"@Enclosed"`
}

// in next sp work 2 dc
type gPlace1st struct {
	Pos   lexer.Position
	Where *gWhere     `parser:"@@ Comma?"`
	Chain *gChain     `parser:"'work' ( @@"`
	Group *gBracketed `parser:"| @@"`
	Work  *gWork      `parser:"| @@ )"`
}

// sk next 2 sts; skip 1; miss 2 ch
type gSkip struct {
	Pos   lexer.Position
	Where *gWhere `parser:"'skip' @@?"`
}

// leave remaining 10 sts unworked
type gLeave struct {
	Pos   lexer.Position
	Where *gWhere `parser:"'leave' @@ 'remaining'?"`
}

// turn; do not turn; rotate; along opposite side of foundation ch; do not join or turn
type gTurn struct {
	Pos    lexer.Position
	NoJoin bool `parser:"(   @( 'not' 'join' ( ( 'or' | 'and' ) 'not'? 'turn' )? )"`
	Not    bool `parser:"  | @'not'?"`
	Rotate bool `parser:"( 'turn' | @'rotate' 'work'? ( ?! 'to' | 'and' | 'across' | 'work' )"`
	Other  bool `parser:"| 'rotate'? ( 'to' | 'and' )? 'work'? ( 'in' | 'across' | 'around' | 'on' | 'to' )* @'other side' ) ) ( 'at' 'end' 'of' 'each'? ( 'row' | 'rnd' ) | 'to' 'work' | 'in' 'other' 'side' | 'of' 'branch'? Name | 'of' ( 'ch' | 'foundation' | 'row' ) | 'of' )*"`
}

// join; join with sl st in first sc; join to form ring; join B with sl st in next st
type gJoin struct {
	Pos    lexer.Position
	Yarn   *gName    `parser:"( 'rs' | 'ws' )? 'join' ( 'rnd' | 'ends' )? @@?"`
	Stitch *gStitch  `parser:"( 'with' 'work'? Number? @@ )?"`
	Yarn2  *gName    `parser:"( 'with' @@ )?"`
	Where  []*gWhere `parser:"@@*"`
	Form   bool      `parser:"@( ( 'to' | 'and' )* 'form'? ( 'in' | 'to' )? 'ring' )?"`
}

type gName struct {
	Pos   lexer.Position
	End   lexer.Position
	Words []string `parser:"'yarn'? @( Name | 'yarn' )+"`
}

// with A; change to B in last st; drop A; carry A
type gYarn struct {
	Pos    lexer.Position
	Let    string    `parser:"( @( 'drop' | 'carry' ) ( Name | Word | Dash | Hyphen )*"`
	Name   *gName    `parser:"| ( 'with' | 'change' ) ( 'to' | 'with' )* @@"`
	Where  []*gWhere `parser:"  ( 'in' 'last' ( Name | Stitch ) ( Name | Word | Number )* )? @@*"`
	Where2 []*gWhere `parser:"| 'change' 'yarn'? @@* )"`
}

// place marker in last st; move marker up to 2nd of these 3 sts; mark this st
type gMarker struct {
	Pos  lexer.Position
	Rest []*gMarkAt `parser:"'place' @@*"`
}

type gMarkAt struct {
	Pos     lexer.Position
	Ordinal *gOrd `parser:"  @@"`
	Number  *gNum `parser:"| @@"`
	Skipped bool  `parser:"| @'skip'"`
	Last    bool  `parser:"| @'last' | ( Name | Word | Stitch | Dash | Hyphen | Sign )"`
}

// the last in top of ch-2; working behind the petals: remarks on other clauses
type gRemark struct {
	Pos  lexer.Position
	Made *gStitch `parser:"( Ordinal? 'beg'? @@ 'made' | ( ( Number | 'last' | Ordinal | Stitch | Name | 'corner' | 'loop' | 'sp' | 'group' | 'ch' )+ 'made' ) | ( 'or' | 'until' )? ( 'long enough' | 'desired' ) | ( 'last' ( 'st' | Stitch )? ( 'in' | 'to' ) | 'work'? 'behind' | 'with' 'each' 'yarn' ) ( Name | Word | Number | Ordinal | Stitch | Dash | Hyphen | Sign )+ )"`
}

// 6 sc in magic ring is a gWork; this is the ring alone.
type gRing struct {
	Pos  lexer.Position
	Ring bool `parser:"( 'work' | 'beg' | 'with' )* @'ring'"`
}

// rep Row 2; rep rows 2 and 3 until piece measures 20 cm; as Row 2; rep last 2 rows 3 times
type gRows struct {
	Pos    lexer.Position
	Last   bool     `parser:"( 'work' )? ( 'rep' | 'as' | 'same' | 'previous' )+ ( 'as' | 'for' | 'of' )* ( @( 'last' | 'previous' )"`
	LastN  *gNum    `parser:"  @@? ( 'row' | 'rnd' )"`
	Row    bool     `parser:"| @( 'row' | 'rnd' )"`
	List   []*gSpan `parser:"  ( @@ ( ( Comma | 'and' | Sign )+ ( 'row' | 'rnd' )? @@ )* )?"`
	Nth    []*gOrd  `parser:"| @@ ( ( Comma | 'and' | 'to' | Dash | Hyphen )+ @@ )* ( 'row' | 'rnd' )"`
	Piece  *gPiece  `parser:"| @@"`
	Mark   string   `parser:"  ( ( 'to' | 'until' ) ( 'row' | 'rnd' | @Star )"`
	PieceN *gNum    `parser:"  @@? )? )"`
	Times  *gTimesN `parser:"@@?"`
	Until  bool     `parser:"@( 'until' | 'to' | 'for' )?"`
	Rest   []string `parser:"@( Name | Word | Number | Ordinal | Stitch | Dash | Hyphen | Sign | Enclosed | Period | Star )*"`
}

type gPiece struct {
	Pos   lexer.Position
	Words []string `parser:"@( Name | 'back' | 'front' | 'side' | 'edge' | 'stem' | Stitch )+"`
}

type gSpan struct {
	Pos  lexer.Position
	From *gNum `parser:"@@"`
	To   *gNum `parser:"( ( Dash | Hyphen | 'to' ) @@ )?"`
}

// ending with sc in last 3 sts; ending last rep at **; end to correspond
type gEnding struct {
	Pos    lexer.Position
	Last   bool    `parser:"'end' @( 'last' 'rep' | 'rep' )?"`
	At     *gStar  `parser:"(   'at' @@"`
	Chain  *gChain `parser:"  | 'with'? ( @@"`
	Work   *gWork  `parser:"    | @@ )"`
	Mirror bool    `parser:"| 'with' ( 'row' | 'rnd' ) Number | 'to' @Name )"`
}

// work even for 4 rows
type gEven struct {
	Pos    lexer.Position
	M      *gNum    `parser:"'work'? ( @@ ( 'row' | 'rnd' ) )?"`
	N      *gNum    `parser:"( 'even' | 'in' 'pattern' ) ( 'for' @@ ( 'row' | 'rnd' | 'more' )+"`
	Stitch *gStitch `parser:"| 'in' @@ )?"`
}

// branch A; branch: ch 9
type gBranch struct {
	Pos  lexer.Position
	Name *gWordName `parser:"'branch' @@?"`
}

type gWordName struct {
	Pos  lexer.Position
	Text string `parser:"@( Name | Number | Ordinal | Word | Stitch )"`
}

// return; return to A; return to stem
type gReturn struct {
	Pos lexer.Position
	To  *gWordName `parser:"'return' ( 'to' 'branch'? @@ )?"`
}

// RS facing
type gSide struct {
	Pos  lexer.Position
	Side string `parser:"'with'? @( 'rs' | 'ws' ) Name* ( 'with' | 'in' | 'yarn' )*"`
}

// fasten off, leaving a long tail
type gFinish struct {
	Pos  lexer.Position
	Verb string   `parser:"@( 'fasten' | 'weave' | 'leave' )"`
	Rest []string `parser:"@( Name | Word | Number | Ordinal | Stitch | Dash | Hyphen | Sign | Enclosed | Period | Star )*"`
}

// ch a multiple of 6 + 2
type gMultiple struct {
	Pos  lexer.Position
	N    *gNum `parser:"( 'work' | 'ch' | 'over' | 'in' | 'st' )* 'multiple' 'of' @@ ( 'st' | 'ch' )?"`
	Plus *gNum `parser:"( ( Sign | 'plus' | Star ) @@ ( 'st' | 'ch' )? )? ( Enclosed | 'for' | Name )*"`
}

// clauseParser is built on first use: a command that reads no pattern does
// not pay for it.
var clauseParser = sync.OnceValue(func() *participle.Parser[gClause] {
	return participle.MustBuild[gClause](
		participle.Lexer(symbols{}),
		// Alternatives are tried in order to the end of the clause. The
		// grammar is not recursive, so this stays linear in practice.
		participle.UseLookahead(participle.MaxLookahead),
	)
})

// Grammar is the grammar of a clause in extended Backus-Naur form, printed
// from the parser itself.
func Grammar() string { return clauseParser().String() }

// symbols is the lexer the grammar is built with. Clauses are parsed from
// tokens already cut, so it never reads text.
type symbols struct{}

func (symbols) Symbols() map[string]lexer.TokenType {
	m := map[string]lexer.TokenType{"EOF": lexer.EOF}
	for k := Word; k <= Enclosed; k++ {
		m[k.String()] = tokenType(k)
	}
	return m
}

func tokenType(k Kind) lexer.TokenType { return lexer.TokenType(k) + 1 }

func (symbols) Lex(string, io.Reader) (lexer.Lexer, error) { return &replay{}, nil }

// replay hands tokens to the parser. A token's offset is its index in the
// clause, so that what is parsed can be shared by clauses that stand at
// different places.
type replay struct {
	tokens []Token
	next   int
}

func (r *replay) Next() (lexer.Token, error) {
	for r.next < len(r.tokens) && r.tokens[r.next].Kind == Word && r.tokens[r.next].Canon == "" {
		r.next++ // a filler word
	}
	at := lexer.Position{Offset: r.next}
	if r.next >= len(r.tokens) {
		return lexer.EOFToken(at), nil
	}
	t := &r.tokens[r.next]
	r.next++
	value := t.Canon
	if t.Kind == Stitch {
		value = "" // a pattern may call a stitch by a word of the grammar
	}
	return lexer.Token{Type: tokenType(t.Kind), Value: value, Pos: at}, nil
}
