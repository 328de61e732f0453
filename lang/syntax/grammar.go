package syntax

import (
	"sync"

	"github.com/alecthomas/participle/v2/lexer"

	"stitchproof/lang/grammar"
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
	RepAll    *gRepAll    `parser:"| @@ EOF"`
	RepUntil  *gRepUntil  `parser:"| @@ EOF"`
	Until     *gUntil     `parser:"| @@ EOF"`
	Alternate *gAlternate `parser:"| @@ EOF"`
	Rows      *gRows      `parser:"| @@ EOF"`
	Turn      *gTurn      `parser:"| @@ EOF"`
	Join      *gJoin      `parser:"| @@ EOF"`
	Branch    *gBranch    `parser:"| @@ EOF"`
	RepBranch *gRepBranch `parser:"| @@ EOF"`
	Pass      *gPass      `parser:"| @@ EOF"`
	Return    *gReturn    `parser:"| @@ EOF"`
	Ring      *gRing      `parser:"| @@ EOF"`
	Skip      *gSkip      `parser:"| @@ EOF"`
	Leave     *gLeave     `parser:"| @@ EOF"`
	Multiple  *gMultiple  `parser:"| @@ EOF"`
	Chain     *gChain     `parser:"| @@ EOF"`
	Counts    *gCounts    `parser:"| @@ EOF"`
	NoStitch  *gNoStitch  `parser:"| @@ EOF"`
	Bracketed *gBracketed `parser:"| @@ EOF"`
	Shared    *gShared    `parser:"| @@ EOF"`
	Shaping   *gShaping   `parser:"| @@ EOF"`
	Back      *gBack      `parser:"| @@ EOF"`
	Even      *gEven      `parser:"| @@ EOF"`
	Work      *gWork      `parser:"| @@ EOF"`
	Remark    *gRemark    `parser:"| @@ EOF"`
	Loop      *gLoop      `parser:"| @@ EOF"`
	Striped   *gStriped   `parser:"| @@ EOF"`
	Total     *gTotal     `parser:"| @@ EOF"`
	Again     *gAgain     `parser:"| @@ EOF"`
	Along     *gAlong     `parser:"| @@ EOF"`
	Place     *gPlace1st  `parser:"| @@ EOF"`
	Marker    *gMarker    `parser:"| @@ EOF"`
	Yarn      *gYarn      `parser:"| @@ EOF"`
	Side      *gSide      `parser:"| @@ EOF"`
	Finish    *gFinish    `parser:"| @@ EOF"`
	GoBack    *gGoBack    `parser:"| @@ EOF"`
	Spacing   *gSpacing   `parser:"| @@ EOF"`
	For       *gFor       `parser:"| @@ EOF"`
	HeldBack  *gHeldBack  `parser:"| @@ EOF"`
	Comment   *gComment   `parser:"| @@ EOF"`
	Long      *gLong      `parser:"| @@ EOF"`
	Start     *gStart     `parser:"| @@ EOF"`
	Likewise  *gLikewise  `parser:"| @@ EOF"`
	Motion    *gMotion    `parser:"| @@ EOF"`
	YarnAt    *gYarnAt    `parser:"| @@ EOF"`
	Into      *gInto      `parser:"| @@ EOF"`
	At        *gWorkAt    `parser:"| @@ EOF"`
}

// rep from * 5 more times; rep from * to ** once; *...* 6 times; *...*, do this 6 times; rep
// around
type gRepFrom struct {
	Pos     lexer.Position
	Pattern bool    `parser:"( ?! 'likewise' ) (   ( 'rep' | 'continue' ) @'pattern' ( ?= 'to' | 'until' | 'across' | 'around' )"`
	Rep     bool    `parser:"|   @'rep'"`
	From    *gStar  `parser:"    ( ( 'from' | 'between' | 'of' )? ( Ordinal | 'last' )? @@"`
	To      *gStar  `parser:"      ( ( 'to' | 'and' | Hyphen | Dash ) @@ )? ( 'marks' | 's' )?"`
	Marks   bool    `parser:"    | @( ( 'between' | 'from' )? 'marks' ) | 'from' 'beg' ( 'of'? ( 'row' | 'rnd' ) )? )?"`
	From2   *gStar  `parser:"| 'work' ( ?= Number ( 'times' | 'x' ) ) | 'work'? 'from' @@"`
	To2     *gStar  `parser:"    ( ( Dash | Hyphen | 'to' ) @@ )? )?"`
	Tail    *gTimes `parser:"( ( 'around' | 'across' ) ( ?= Number ) )? @@? ( 'likewise' | 'for' Name+ )?"`
}

// and so on to the end
type gRepAll struct {
	Pos lexer.Position
	End bool `parser:"'likewise' @( 'around' | 'across' )"`
}

// alternate sc and dc across; rep sc and dc to end; dc alternately across; keep
// alternating to end: stitches by turns
type gAlternate struct {
	Pos   lexer.Position
	First *gTurnWork   `parser:"( ( 'work'? ( 'alternate' | 'alternating' ) 'between'? | 'rep' ) @@"`
	Then  []*gTurnWork `parser:"    ( ( 'and' | Comma )+ @@ )+"`
	Last  *gTurnWork   `parser:"| @@ 'alternating'"`
	All   *gGroup      `parser:"| @@ 'alternating'"`
	Times *gTimesN     `parser:"| ( 'continue' | 'likewise' )* ( 'alternate' | 'alternating' ) ( ?= 'in' | 'to' | 'until' | 'across' | 'around' ) ) ( @@"`
	Where []*gWhere    `parser:"| @@+ )?"`
}

type gTurnWork struct {
	Pos    lexer.Position
	N      *gNum    `parser:"'work'? @@?"`
	Stitch *gStitch `parser:"@@"`
	Next   bool     `parser:"@( 'in' 'next' 'st' )?"`
}

// until you come to the last one; until there are 144 sts
type gUntil struct {
	Pos  lexer.Position
	Have *gNum `parser:"(   'until' 'have' @@ ( 'st' | Stitch )? 'around'? ( ?= EOF ) |"`
	Rest bool  `parser:"  'until' @( Name | Word | Number | Ordinal | Stitch | Hyphen | Dash )+ )"`
}

// from the second; starting in 2nd ch from hook: where the first stitch goes
type gStart struct {
	Pos    lexer.Position
	At     *gOrd `parser:"( 'from' | 'work'? 'beg' ( 'in' | 'at' | 'from' | 'with' ) ) ( @@"`
	Stitch bool  `parser:"  ( 'ch' | @'st' )?"`
	Hook   bool  `parser:"  @( 'from' 'hook' )?"`
	Same   bool  `parser:"| @( ( 'same' 'st' | 'it' ) ( 'as' ( 'join' | Stitch ) )? | 'join' 'st' ) )"`
}

// for 2 rows: what stands before it is worked in each
type gLong struct {
	Pos  lexer.Position
	Rows *gNum `parser:"'for' 'next'? @@ 'more'? ( 'row' | 'rnd' )"`
}

// rep from * until there are 8 loops; rep from * across neck edge
type gRepUntil struct {
	Pos  lexer.Position
	From *gStar `parser:"( 'rep' | 'work' ( ?= 'marks' ) ) 'same'? ( 'from' ( ( Ordinal | 'last' )? @@ | 'beg' | 'marks' ) | 'marks' | Star Star )?"`
	To   *gStar `parser:"( 'to' @@ )?"`
	End  bool   `parser:"@( ( 'until' | 'to' | 'up' | 'around' | 'across' | 'likewise' ) ( Name | Word | Number | Ordinal | Stitch | Hyphen | Dash )* )"`
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
	Total *gNum  `parser:"'around'? 'for' 'have' 'of' @@ ( 'group' | 'times' | 'in' | Name | Stitch )*"`
	N     *gNum  `parser:"| 'for'? 'have'? 'of'? 'in'? ( ( 'x' | '×' | Star ) @@ 'times'? 'around'?"`
	More1 bool   `parser:"| ( 'until' | 'for' )? @'more'?"`
	M     *gNum  `parser:"  @@"`
	More2 bool   `parser:"( ( 'x' | '×' ) | @'more'? 'times' ( 'over' ( ?= EOF ) )?"`
	More3 bool   `parser:"    @'more'?"`
	All   bool   `parser:"    @( 'in' 'each' | ( 'have' | 'each' ) ( ?= EOF ) )? ) ( 'around' | 'across' )?"`
	More4 bool   `parser:"| @'more'?"`
	Once  *gOnce `parser:"  @@"`
	More5 bool   `parser:"  @'more'?"`
	All2  bool   `parser:"  @( 'in' 'each' )? ( 'around' | 'across' )? ) ( 'instead' 'of' ( Number 'times' | 'once' ) )?"`
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
	Except bool    `parser:"( 'across' | 'around' )* ( ( ( 'to' | 'until' | 'over' | @( 'except' | 'but' ) ) 'within'? 'reach'? | 'within' )"`
	Last   bool    `parser:"( ( 'only' ( ?= ( 'last' | 'tch' ) ) )? ( @'last'"`
	N      *gNum   `parser:"    @@?"`
	Noun   *gNoun  `parser:"    @@? ( 'of' ( 'row' | 'rnd' ) | 'remaining' )?"`
	M      *gNum   `parser:"  | ( 'have' | 'only' )* @@"`
	MNoun  *gNoun  `parser:"    @@? ( 'remaining'+ | ( 'from' | 'of' | 'before' ) 'end' | 'at' 'end' 'remaining'? )"`
	Short  *gNum   `parser:"  | ( @@ 'st' ( 'of' | 'from' ) ( ?= ( 'next' | 'other' )? ( 'marker' | 'marked' ) ) )?"`
	Marker bool    `parser:"    ( 'next' | 'other' )? @( 'marker' | 'marked' 'st' )"`
	Middle bool    `parser:"  | @( 'center' ( Stitch | 'st' ) 'of' 'next'? 'corner' )"`
	Corner bool    `parser:"  | 'next'? @( 'corner' | 'center' ) ( ?! Number | 'ch' | 'sp' | 'st' | 'loop' | 'group' | Stitch )"`
	Space  *gSpace `parser:"  | ( 'next' | 'center' | 'corner' )* @@ ( ?= EOF )"`
	Tch    bool    `parser:"  | @'tch' 'remaining'? )"`
	Rest   bool    `parser:"| 'end' ( 'of' ( 'row' | 'rnd' ) )? | ( 'stem' | 'base' ) ( ?= EOF ) | @( 'piece' | 'long enough' ) ) ) | ( 'across' | 'around' ) 'stem' 'only'? ( ?= EOF ) | ( ( 'across' | 'around' ) ( ?! 'other side' | 'edge' | 'rowend' | 'side' | 'foundation' | 'stem' | 'ring' | 'post' | 'next' | 'each' | Name+ 'edge'? ( ?= EOF ) ) ( 'of' ( 'branch'? Name | 'stem' ) )? )"`
}

// A thing that can be worked into or counted.
type gNoun struct {
	Pos    lexer.Position
	Corner bool     `parser:"@( 'corner' ( ?= 'st' | 'sp' | 'ch' | 'loop' | Stitch | Number ) )?"`
	Space  *gSpace  `parser:"(   @@"`
	Of     *gNum    `parser:"  | ( @@ Hyphen ( ?= Stitch ) )?"`
	Stitch *gStitch `parser:"    ( Name ( ?= Stitch ) )? @@ ( Hyphen ( ?= 'group' ) )?"`
	Named  []string `parser:"  | @Name @Name? ( ?= 'st' )"`
	Tch    bool     `parser:"  | @'tch'"`
	Length *gNum    `parser:"    ( ( Hyphen | Dash )? @@ )?"`
	Colour *gColour `parser:"| @@?"`
	Word   string   `parser:"  ( ?! 'rnd' Name ) ( Name ( ?= 'ch' 'from' 'step' ) )? @( 'st' | 'ch' | 'sp' | 'loop' | 'ring' | 'corner' | 'rowend' | 'edge' | 'foundation' | 'group' | 'marker' | 'marked' | 'base' | 'row' | 'rnd' | 'join' | 'top' | 'other side' ) )"`
	Tail   string   `parser:"( @( 'st' | 'sp' | 'group' | 'loop' ) | @'ch' ( ?! Number | Hyphen ) )?"`
}

// in next Pink loop
type gColour struct {
	Pos  lexer.Position
	Name string `parser:"@Name ( ?= 'loop' | 'sp' )"`
}

// ch-2 sp; 2-ch sp; ch-5 loop; beg ch-3
type gSpace struct {
	Pos  lexer.Position
	Beg  bool   `parser:"@'beg'?"`
	N    *gNum  `parser:"( 'ch' ( Hyphen | Dash )? @@"`
	M    *gNum  `parser:"| @@ ( ( Hyphen | Dash )? 'ch' ( Hyphen | Dash )? ( ?= 'sp' | 'loop' ) | Hyphen 'ch' )"`
	Sp   string `parser:"| 'ch' ( Hyphen | Dash )? ( ?= 'sp' | 'loop' ) ) ( ( Hyphen | Dash )? @( 'sp' | 'loop' | 'corner' ) )?"`
	Made bool   `parser:"@( 'first' 'made' )?"`
}

type gStitch struct {
	Pos  lexer.Position
	Text string `parser:"@Stitch"`
}

// Where: in next 5 sts; in each ch across; in 2nd ch from hook; around post of next dc.
type gWhere struct {
	Pos  lexer.Position
	End  lexer.Position
	Prep string  `parser:"( ?! ( 'to' | 'and' ) ( 'join' | 'form' | 'work' 'ring' ) | 'made' ) ( 'and' | 'or' )? @( 'in' | 'to' | 'on' | 'over' | 'under' | 'between' | 'behind' | 'at' | ( 'around' | 'across' ) ( ?= 'post' | 'next' | 'each' | 'same' | 'last' | 'center' | 'any' | 'edge' | 'rowend' | 'side' | 'other side' | 'of' | 'foundation' | 'ring' | 'stem' | Stitch | Ordinal | Number ) )?"`
	Mods []*gMod `parser:"'of'? @@+"`
}

type gMod struct {
	Pos     lexer.Position
	Extent  *gExtent  `parser:"  @@"`
	Of      *gOf      `parser:"| @@"`
	From    *gFrom    `parser:"| @@"`
	Below   *gBelow   `parser:"| @@"`
	As      *gAs      `parser:"| @@"`
	On      *gOn      `parser:"| @@"`
	OfStem  bool      `parser:"| @( 'stem' ( ?= 'st' | 'ch' | Stitch ) )"`
	Piece   *gPieceOf `parser:"| 'of'? @@"`
	By      *gStitch  `parser:"| 'by' @@"`
	Beside  *gNoun    `parser:"| 'to' ( 'right' | 'remaining' ) 'of' @@"`
	After   *gNoun    `parser:"| 'after' ( 'any' | 'next' )? @@"`
	AndNext *gNoun    `parser:"| @@ 'and' 'next' 'group'? ( ?= EOF )"`
	Noun    *gNoun    `parser:"| @@"`
	Number  *gNum     `parser:"| @@"`
	Aside   bool      `parser:"| @( ( 'under' | 'above' | 'beside' ) Name+ ( ?= EOF ) )"`
	Pair    *gPair    `parser:"| @@"`
	Ordinal *gOrd     `parser:"| @@"`
	Word    string    `parser:"| @( 'next' | 'same' | 'each' | 'last' | 'remaining' | 'previous' | 'any' | 'center' | 'top' | 'beg' | 'both' | 'only' | 'other' | 'side' | 'end' | 'post' | 'blo' | 'flo' | 'bothloops' | 'thirdloop' | 'back' | 'front' | 'penultimate' | 'previous' | 'marked' | 'above' | 'of' | 'evenly' | 'wise' | 'before' | 'skip' | 'it' | 'even' | 'odd' | 'down the chain' | 'corresponding' | 'successive' | 'already' | 'made' ( 'on' 'stem' )? | 'between' ( ?= EOF | 'at' ) | 'after' ( ?= EOF ) )"`
}

// in same st as join; in same sp as last dc; in sc that the spray grew from
type gAs struct {
	Pos   lexer.Position
	What  bool `parser:"( ( 'as' | 'with' ( ?= 'last' | 'previous' | 'tch' | Ordinal ) ) @( 'last' | 'previous' | 'join' | 'beg' | 'first' | Ordinal | Stitch | 'st' | 'ch' | 'tch' | 'sp' | 'work' | 'made' | Number | Hyphen )+"`
	Place bool `parser:"| @'placeof' ( Ordinal | Number | Stitch | 'st' | 'join' | 'tch' )+"`
	Grown bool `parser:"| @( ( Name | Stitch )+ 'grown' | 'departed' )"`
	Where bool `parser:"| @( 'where' ) ( 'last' | 'next' | 'previous' | 'join' | 'beg' | Ordinal | Stitch | 'st' | 'ch' | 'work' | 'made' | Name | Number | Hyphen )+ )"`
}

// the first leg; the other sleeve: a piece that the round joins
type gPieceOf struct {
	Pos  lexer.Position
	Name string `parser:"( Ordinal | 'other' | 'both' ) @( 'post' | Name ) ( ?! 'st' | 'sp' | 'loop' | Stitch ) | 'both' @'side'"`
}

// on next Daisy; on Band: another piece
type gOn struct {
	Pos  lexer.Position
	Name string `parser:"'on' ( Ordinal | 'next' | 'other' | 'same' )? @Name"`
}

// between 3rd and 4th dc of next group
type gPair struct {
	Pos  lexer.Position
	From *gOrd `parser:"@@ 'and'"`
	To   *gOrd `parser:"@@"`
}

type gOrd struct {
	Pos  lexer.Position
	Text string `parser:"@Ordinal"`
}

// of branch A; of next shell; of ch-6; of Row 1; of rnd; of the branch; of Step 3; from step c
type gOf struct {
	Pos    lexer.Position
	Name   string `parser:"( 'of' | 'from' ( ?= 'step' ) ) ( ( 'branch' | 'stem' )? @Name"`
	Stem   bool   `parser:"| @'stem'"`
	Here   bool   `parser:"| @( 'branch' | 'step' ( Number Name? | Name ) )"`
	RowNth *gOrd  `parser:"| @@? "`
	RowN   *gNum  `parser:"( 'row' | 'rnd' ) @@? )"`
}

// from hook; from beg of Row 1; from end
type gFrom struct {
	Pos  lexer.Position
	What string `parser:"'from' ( @( 'hook' | 'beg' | 'end' | 'join' )"`
	Of   *gOf   `parser:"  @@?"`
	Row  *gNum  `parser:"| 'rowend' @@ )"`
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
	Loop1    *gLoopIn   `parser:"( ?! Stitch Stitch 'made' ) ( 'continue' 'to'? | 'beg' 'with'? ( ?= Number Stitch ) | 'place' ( ?= Number? Stitch 'in' ) )? 'work'? @@?"`
	In       bool       `parser:"@( 'in' ( ?= Stitch ) )?"`
	N        *gNum      `parser:"( 'rs' | 'ws' )? ( @@ ( 'more' )? | 'more' | Ordinal ( ?= Stitch ) )?"`
	Once1    *gOnce     `parser:"@@?"`
	Coloured *gInColour `parser:"@@?"`
	Stitch   *gStitch   `parser:"( ( 'st' 'of' ( ?= Stitch ) )? ( ?! Stitch 'loop' 'st' ) @@"`
	Of       *gStitchOf `parser:"  @@?"`
	Named    *gNamed    `parser:"| @@ )"`
	M        *gNum      `parser:"( 'st' ( ?! 'in' ) )? ( @@ ( ?! 'times' | 'more' | 'x' | '×' ) 'st'? )?"`
	Times    *gTimesN   `parser:"@@?"`
	Loop2    *gLoopIn   `parser:"@@?"`
	Yarn     *gName     `parser:"( 'with' @@ ( ?= 'in' | 'to' | 'on' ) )?"`
	Spacing  *gSpacing  `parser:"@@?"`
	Each     bool       `parser:"( 'back' ( ?= 'in' | 'on' ) )? @( 'each' ( ?= 'in' ) )?"`
	Where    []*gWhere  `parser:"@@* ( 'with' Stitch ( ?= EOF ) )?"`
	Along    bool       `parser:"@( ( 'around' | 'across' | 'rnd' ) Name+ 'edge'? ( ?= EOF ) )?"`
	Spacing2 *gSpacing  `parser:"@@?"`
	Together bool       `parser:"@( 'together' | 'tog' )?"`
	Using    bool       `parser:"@( 'with' 'next' Number ( Stitch | 'st' | 'ch' ) )?"`
	HeldBack *gHeldBack `parser:"@@?"`
	Until    bool       `parser:"'likewise'? @( 'until' ( Name | Word | Number | Ordinal | Stitch | Sign | Period )+ )?"`
	Loop3    *gLoopIn   `parser:"@@?"`
	Times2   *gTimesN   `parser:"@@?"`
	For      *gFor      `parser:"@@?"`
	ToJoin   bool       `parser:"( 'to' 'weave' )? @( ( 'to' | 'and' ) ( 'join' | 'form' | 'work' ( ?= 'ring' ) ) )?"`
	Ring     bool       `parser:"( ( 'in' | 'to' )? @'ring' )?"`
}

// work back along the chain with sl st: with the stitch after it
type gBack struct {
	Pos    lexer.Position
	N      *gNum    `parser:"'work' 'back' 'across'? ( @@? 'ch' | 'down the chain' ) ( 'with' | 'in' )"`
	Stitch *gStitch `parser:"@@ 'across'?"`
}

// shell of 5 dc: what one is made of
type gStitchOf struct {
	Pos    lexer.Position
	N      *gNum    `parser:"'of' @@"`
	Stitch *gStitch `parser:"@@"`
}

// 3 White dc; 5 A sc: in that yarn
type gInColour struct {
	Pos  lexer.Position
	Name string `parser:"@Name ( ?= Stitch )"`
}

// for picot; for a corner
type gFor struct {
	Pos    lexer.Position
	What   *gStitch `parser:"( 'for' ( 'corner'? @@"`
	Corner bool     `parser:"| @'corner'"`
	Shape  *gStitch `parser:"| 'last'? ( 'sp' | 'loop' ) | 'group' | 'beg' | 'edge' | 'back' | 'front' | Name+ ) | 'to'? 'form' ( ?! 'ring' | 'in' ) ( @@ | 'last' | 'corner' | 'group' | 'loop' | 'sp' | 'of' | Number | Name )+ )"`
}

// rice st; corner: a stitch or a step that no dictionary has
type gNamed struct {
	Pos   lexer.Position
	End   lexer.Position
	Loop  bool     `parser:"( @( ( Stitch | Name )? 'loop' ( ?= 'st' ) )"`
	Names []string `parser:"| @Name @Name? ( ?= 'st' | 'sp' )"`
	Step  string   `parser:"| @( 'corner' | 'edge' ) ) ( 'st' | 'sp' )?"`
}

// with ch 2 between; with 1 chain between each st
type gSpacing struct {
	Pos  lexer.Position
	N    *gNum `parser:"'with'? ( 'ch' ( Hyphen | Dash )? @@"`
	M    *gNum `parser:"| @@ ( Hyphen | Dash )? 'ch' ) ( 'st' )?"`
	Each bool  `parser:"'between' ( 'each' @'st' | 'each' Stitch? | 'st' | Stitch | 'group' | 'them' )? ( 'and' Stitch )?"`
}

// holding back on hook the last loop of each tr
type gHeldBack struct {
	Pos lexer.Position
	On  bool `parser:"@( 'hold' | 'leave' ) ( 'on' 'hook' )? 'last' 'loop' 'of' 'each'? ( 'st' | Stitch )? ( 'on' 'hook' )?"`
}

// yo, insert hook in next st, draw up a loop; 3 times over hook
type gMotion struct {
	Pos lexer.Position
	On  bool `parser:"@( 'motion' | Number 'times' 'over' ( 'hook' | Name ) | ( 'to' | 'in' )? ( 'last' | 'remaining' | 'both' | Number | 'each' )* 'loop' 'on' 'hook' | 'to' Number ( ?= EOF ) | 'to' 'each' Number? ( ?= EOF ) ) ( Name | Word | Number | Ordinal | Stitch | Hyphen | Dash | Sign )*"`
}

// in next sp: what is worked there comes after
type gInto struct {
	Pos   lexer.Position
	Where []*gWhere `parser:"'work'? ( ?= 'in' | 'over' | 'around' ( 'post' | 'next' 'post' | 'each' 'post' ) ) @@+ 'work'? ( ( 'x' | '×' ) Number )?"`
}

// 5 sc in shoulder seam; sl st in tip of leaf: a place that no row made, named
// by what a garment or a motif consists of
type gWorkAt struct {
	Pos    lexer.Position
	N      *gNum    `parser:"'work'? @@?"`
	Stitch *gStitch `parser:"@@ 'st'? 'back'?"`
	In     string   `parser:"@( 'in' | 'to' | 'over' | 'on' | 'under' | 'at' | 'around' | 'across' | 'up' | 'behind' | 'between' )"`
	Rest   []string `parser:"@( Name | Word | Number | Ordinal | Stitch | Hyphen )+"`
}

// A clause of any shape is one of these, too, by a word in it: see loose.

// continue in this manner; complete other side to correspond; work 3 more
// squares in same manner; work in pattern to end of row: what is done stands
// elsewhere in the pattern, and how often or how many is not said
type gLikewise struct {
	Pos lexer.Position
	// continue so; complete row; work across 9 loops; work 2 rows of sc
	Goes bool `parser:"(   'continue' | 'made' | 'beg' ( 'on' | 'over' | 'in' | ( ?= EOF ) ) | 'even' ( ?! 'in' Stitch )"`
	// 10 Red blocks; 4 more motifs around 1st one
	Made bool `parser:"    | 'work'? Number 'more'? Name* 'group' ( ?= EOF | 'in' | 'for' | 'around' | 'on' | 'across' )"`
	// 4 solid over 4 open; sp over next block
	Mesh bool `parser:"    | 'work'? Number? 'more'? ( 'sp' | 'group' | 'blo' ) 'over' ( ?= Number | 'next' | 'sp' | 'group' | 'blo' ) | Number 'more'? ( 'weave' ( 'group' | 'sp' )? | 'sp' ) ( ?= EOF )"`
	Over bool `parser:"    | 'with' Number 'more' ( 'st' | 'ch' | 'sp' | 'loop' | 'group' | Stitch ) | Number Stitch 'more' ( 'at' | 'in' | 'on' ) | 'increased' Number? Stitch ( 'at' | 'in' | 'on' ) | 'work' 'even'? ( 'across' | 'over' | 'on' | 'until' | 'in' Stitch ( 'until' | 'for' ) ) ( ?! 'other side' | 'edge' )"`
	Some bool `parser:"    | 'work' ( 'same' | Ordinal | Number Hyphen 'ch' Number? ( 'loop' | 'sp' ) | Number? 'more'? ( ( 'row' | 'rnd' ) ( 'of' | 'in' | Stitch ) | ( Number Hyphen 'ch' | 'ch' Hyphen Number )? Number? ( 'loop' | 'sp' | 'group' ) ) | 'more' )"`
	// sl st in next 2-3 sts; 4 or 5 sc in next sp: the maker chooses
	Free bool `parser:"    | Stitch 'in' 'next'? Number ( 'to' | 'or' | Hyphen ) Number ( ?= 'st' | 'ch' | 'sp' | 'loop' | Stitch ) | Number ( 'to' | 'or' | Hyphen ) Number Stitch"`
	// and the side once more
	Side bool `parser:"    | 'side' 'once'"`
	// rep on other side; rep from * of Row 2; rep 2nd block
	Rep   bool `parser:"    | 'rep' ( 'on' | 'at' | 'in' | 'for' | 'with' | 'step' | Ordinal 'group' | ( 'edge' | Name )* 'to' Star )"`
	From  bool `parser:"    | 'rep' 'from' Star ( 'of' ( 'row' | 'rnd' ) | ( 'to' | 'and' | Dash | Hyphen ) Star ( 'in' | 'on' ) )"`
	Extra bool `parser:"    | 'with' Enclosed ) @( Name | Word | Number | Ordinal | Stitch | Hyphen | Dash | Star | Sign | Enclosed | Period )*"`
}

// 1 in each of next 3; blo in next 6: the stitch is the one worked before
type gAgain struct {
	Pos    lexer.Position
	More   *gNum     `parser:"(   'with' @@ 'more'"`
	Last2  bool      `parser:"| 'work' ( 'next' | @'last' )?"`
	Tog    *gNum     `parser:"  @@ ( 'st' | Stitch )? ( 'together' | 'tog' )"`
	Closed *gStitch  `parser:"| 'work' 'last' @@ ( ?= EOF )"`
	Final  bool      `parser:"| @'last'"`
	Last   *gNum     `parser:"  @@? 'st' ( 'under' ( Name | Word )+ )? ( ?= EOF )"`
	Twice  *gOnce    `parser:"| 'work'? ( @@ ( ?= 'in' )"`
	N      *gNum     `parser:"  | @@ ( 'st' ( ?= 'in' ) )?"`
	Loop   *gLoopIn  `parser:"  @@? | @@ )"`
	Where  []*gWhere `parser:"( ?= 'in' | 'across' | 'around' ) @@+ ( ( 'around' | 'across' | 'rnd' ) Name+ ( ?= EOF ) )? )"`
}

// decreasing 6 evenly
type gShaping struct {
	Pos   lexer.Position
	Kind  *gStitch `parser:"(   @@"`
	Times *gNum    `parser:"    @@ ( 'x' | '×' )"`
	Each  *gNum    `parser:"    @@ ( 'st' | Stitch )"`
	Both  bool     `parser:"    ( ( 'in' | 'at' | 'on' ) @( 'each' | 'both' ) ( 'end' | 'side' | 'edge' ) )? ( 'for' ( Name | 'edge' | 'side' )+ )? Comma? ( ( 'in' | 'on' ) ( 'each' | 'alternate' | Name | Ordinal | 'other' )* ( 'row' | 'rnd' ) )?"`
	Less  bool     `parser:"| ( @( 'decreased' | 'less' ) | 'increased' | 'more' )"`
	N     *gNum    `parser:"@@ ( 'st' | Stitch )? ( 'evenly' | 'across' | 'around' | 'over' 'last' Number ( 'st' | Stitch ) ) ( 'across' | 'around' | 'evenly' | 'in' 'each'? ( 'row' | 'rnd' ) )? )"`
}

// working in row ends
type gAlong struct {
	Pos lexer.Position
	On  bool `parser:"'work'? ( ( 'across' | 'around' ) @Name ( ?= EOF ) | ( 'in' | 'across' | 'around' | 'evenly' | 'up' )* ( 'front' | 'back' | 'other' )* @( 'rowend' | 'edge' | 'side' ( 'edge' | 'of' ( 'work' | 'piece' | 'next'? 'group' ) )? ) )"`
}

// in back loop only
type gLoopIn struct {
	Pos  lexer.Position
	Word string `parser:"( 'in' | 'work' | 'to' | 'on' | 'remaining' )* @( 'blo' | 'flo' | 'thirdloop' | 'bothloops' ) 'only'? ( 'of' ( ?= 'each' | 'next' | 'same' | 'last' | 'remaining' | 'st' | Stitch | Number | Ordinal ) )?"`
}

// working in back loops only; in unused back loops of Rnd 2; in free loops of Rnd 2
type gLoop struct {
	Pos  lexer.Position
	Loop *gLoopIn `parser:"( 'continue' | 'work' | 'always' | 'change' | 'only' )* ( @@ ( 'of' ( ?! Ordinal | 'row' | 'rnd' ) | 'form' | 'ridge' | 'each' Stitch? | 'all' | 'st' | 'only' | 'across' | 'around' | 'always' | 'to' )*"`
	Of   *gOf     `parser:"  @@?"`
	Free *gNum    `parser:"| 'in'? 'other side' 'of'? ( 'row' | 'rnd' ) @@ )"`
}

// back in the stitches of Row 8; working into the sts of Rnd 2
type gGoBack struct {
	Pos lexer.Position
	Row *gNum `parser:"( 'work' | 'back' | 'return' | 'continue' )+ ( 'in' | 'to' | 'across' )+ 'st' ( 'of' | 'in' ) ( 'row' | 'rnd' ) @@"`
}

// ch 3; 3 ch; ch 3 (counts as dc); ch 12 for handle; ch 29 plus 2
type gChain struct {
	Pos    lexer.Position
	N      *gNum     `parser:"'always'? 'work'? ( ( 'ch' 'of' @@ 'ch' | 'ch' ( Hyphen | Dash | 'of' )? @@ )"`
	Out    *gOut     `parser:"  @@?"`
	M      *gNum     `parser:"| 'more'? @@ ( Hyphen | Dash | 'more' )? 'ch'"`
	Out2   *gOut     `parser:"  @@?"`
	For    *gStitch  `parser:"| 'ch' ) 'more'? ( 'st' | 'loop' )? ( 'once' ( ?= EOF ) )? ( 'for' Ordinal? @@ )?"`
	Plus   *gNum     `parser:"( ( Sign | 'plus' ) @@ 'ch'? ( 'for' ( Name | 'tch' | 'turn' | 'foundation' | 'beg' )+ )? )?"`
	On     *gPieceOf `parser:"( ( 'on' | 'from' | 'to' ) @@ )?"`
	Counts *gCounts  `parser:"( 'at' ( 'end' 'of' ( 'each' | 'last' | 'next' )? ( 'row' | 'rnd' ) | 'rowend' ) Number? )? @@? ( ( 'to' | 'for' ) 'turn' ( 'at' | 'end' | 'in' | 'of' | 'each' | 'last' | 'next' | 'row' | 'rnd' | 'rep' | 'work' | Number | Stitch )* )?"`
}

// out from the stem; outward: where a chain goes
type gOut struct {
	Pos lexer.Position
	Way bool `parser:"@( ( 'out' | 'outward' | 'outwards' | 'away' ) ( 'from' ( 'stem' | 'branch' | 'row' | 'rnd' | 'edge' | Name ) Name? )? )"`
}

// counts as dc; does not count as a st; counts as dc and ch 1 here and throughout
type gCounts struct {
	Pos    lexer.Position
	End    lexer.Position
	Beg    *gBegCh  `parser:"@@?"`
	Not    bool     `parser:"( 'to' | 'of' )? @'not'?"`
	Not2   bool     `parser:"( 'count' @'not'? ( 'as' | 'for' | 'in' | 'to' )* | 'as' ( ?= ( Ordinal | Number ) Stitch ) )"`
	Parts  []*gPart `parser:"( 'first' | Ordinal )? ( @@ ( ( 'and' | Sign | Comma | 'plus' ) @@ )* ( 'of' 'next' ( 'row' | 'rnd' ) | 'of' ( 'row' | 'rnd' ) Number )? | Number ( ?= EOF ) )?"`
	Always bool     `parser:"Comma? ( 'at' ( 'beg' | 'end' ) ( 'of' 'each'? ( 'row' | 'rnd' ) )? )? @( Name | 'in' | 'each' | 'row' | 'rnd' | 'and' | 'of' | 'always' | 'previous' )*"`
}

// it isn't a stitch; ignore the ch
type gNoStitch struct {
	Pos lexer.Position
	On  bool `parser:"@( 'it'? 'not' 'st' | 'ignore' ( 'ch' | 'tch' ) )"`
}

type gBegCh struct {
	Space *gSpace `parser:"'each'? ( 'tch' ( Hyphen? Number )? | @@"`
	N     *gNum   `parser:"| 'ch' Hyphen? @@ | Ordinal? ( ( 'skip' | 'remaining' ) Number? 'ch' | Number ( 'skip' | 'remaining' )? 'ch' | 'ch' ) ( 'skip' | 'remaining' )? ) ( 'at' 'beg' ( 'of' 'each'? ( 'row' | 'rnd' ) )? )?"`
}

type gPart struct {
	Pos  lexer.Position
	Bare *gNum  `parser:"(   @@ ( ?= 'on' | 'in' 'each' | 'altogether' | 'remaining' | Semi Number ( 'in' 'each' | 'altogether' ) )"`
	N    *gNum  `parser:"  | @@? ( Name ( ?= 'sp' | 'loop' | 'group' ) )?"`
	Noun *gNoun `parser:"    @@ ( 'of' 'ch' Number )? )"`
	Some bool   `parser:"@( ( 'at' | 'on' ) 'each' ( 'end' | 'side' | 'edge' ) | 'between' ( ?= EOF | Comma | Semi | 'and' ) )?"`
	On   string `parser:"( ( 'on' | 'of' ( ?= 'stem' | 'branch' ) ) ( 'each' 'of'? Number? )? @( Name | 'stem' | 'branch' ) ( ?= EOF | 'remaining' | Comma | Semi | Sign | 'and' | 'plus' | 'with' ) )?"`
	All  bool   `parser:"@( ( 'in' 'each' | 'altogether' ) ( ?= EOF | Comma | Semi ) )?"`
}

// 2 rows of White; next 4 rounds each of A: a stripe
type gStriped struct {
	Pos  lexer.Position
	Name bool `parser:"'work'? 'next'? Number 'more'? 'made'? ( 'row' | 'rnd' ) ( 'each' | 'of' | 'in' | 'with' )* @Name ( Name | 'and' )*"`
}

// (24 sc) as the inside of a bracket; 24 sts; you have 12 dc and 4 ch-2 sps
type gTotal struct {
	Pos    lexer.Position
	Have   bool     `parser:"( 'for' ( ?= 'have' ) )? @( 'have' | Dash | Hyphen | Sign | 'made' ( ?= Number ) )* ( 'of' )?"`
	Shaped *gStitch `parser:"(   @@"`
	By     *gNum    `parser:"    @@ 'st' EOF"`
	Grown  *gNum    `parser:"  | @@"`
	How    string   `parser:"    @( 'more' | 'less' ) 'st' Name ( 'in' | 'at' | 'on' )? ( 'before' | 'previous' | 'last' | 'row' | 'rnd' | 'below' )+ EOF"`
	Bare   *gNum    `parser:"  | @@ ( 'in' 'have' | 'have' | 'altogether' )?"`
	Than   string   `parser:"    @( 'more' | 'less' )? EOF"`
	Parts  []*gPart `parser:"  | ( ?= Number ) @@ ( ( 'and' | Sign | Comma | Semi | 'plus' | 'with' )+ @@ )*"`
	Of     bool     `parser:"    @( ( 'of' | 'on' | 'between' | 'in' ( ?= 'row' | 'rnd' ) ) ( Name | Word | Ordinal | Stitch | Number )+ )?"`
	Change string   `parser:"    ( @( 'increased' | 'decreased' | 'more' | 'less' ) ( Name ( 'in' | 'at' | 'on' )? ( 'before' | 'previous' | 'last' | 'row' | 'rnd' | 'below' )+ )? )? 'made'?"`
	Left   bool     `parser:"    ( @'remaining' 'remaining'? )? 'have'? ( 'in'? 'each' ( 'row' | 'rnd' )? | 'at' 'end' )? )"`
}

// (…) 6 times; (…) in next ch-2 sp; [...] around; (…) 4 times in next sp
type gBracketed struct {
	Pos   lexer.Position
	Lead  *gNum     `parser:"'work'? 'rep'? ( @@ ( 'x' | '×' | 'times' ) )?"`
	Group *gGroup   `parser:"@@"`
	Times *gTimesN  `parser:"Comma? 'rep'? @@?"`
	Where []*gWhere `parser:"( 'both' | 'each' ( ?= 'in' ) )? ( ( ?! 'ch' | 'tch' | Number | Stitch ) @@ )* 'made'?"`
	For   *gFor     `parser:"@@?"`
}

// dc in and FPdc around next st
type gShared struct {
	Pos   lexer.Position
	In    *gStitch `parser:"@@ 'in' 'and'"`
	Post  *gStitch `parser:"@@"`
	Where *gWhere  `parser:"( ?= 'around' ) @@"`
}

type gGroup struct {
	Pos  lexer.Position
	Text string `parser:"@Enclosed"`
}

// in next sp work 2 dc
type gPlace1st struct {
	Pos   lexer.Position
	Where []*gWhere   `parser:"@@+ Comma?"`
	Chain *gChain     `parser:"( ?= 'work' | Enclosed ) 'work'? ( @@"`
	Group *gBracketed `parser:"| @@"`
	Work  *gWork      `parser:"| @@ )"`
}

// sk next 2 sts; skip 1; miss 2 ch
type gSkip struct {
	Pos   lexer.Position
	Near  bool    `parser:"'always'? 'skip' @( 'nearest' ( 'ch' | 'st' | Number )? | 'ch' ( 'nearest' | 'beside' ) 'hook' )?"`
	Where *gWhere `parser:"@@? ( 'between' 'marker' )?"`
	For   *gFor   `parser:"( 'under' ( 'it' | Name )? | 'behind' 'it'? | 'in' ( Name | 'center' ) )? @@?"`
}

// leave remaining 10 sts unworked; leave the 6 quill ch unworked
type gLeave struct {
	Pos    lexer.Position
	Called *gNum   `parser:"  'leave' @@ Name+ ( 'ch' | 'st' | Stitch ) 'remaining'"`
	Where  *gWhere `parser:"| 'leave' @@ 'remaining'?"`
	For    *gFor   `parser:"  @@?"`
}

// turn; do not turn; rotate; along opposite side of foundation ch; do not join or turn
type gTurn struct {
	Pos    lexer.Position
	Spiral bool `parser:"(   @( ( 'work' | 'continue' )* 'in' 'spiral' ( 'not' 'join' )? )"`
	NoJoin bool `parser:"|   @( 'not' ( 'join' ( ( 'or' | 'and' ) 'not'? 'turn' )? | 'turn' ( 'or' | 'and' ) 'not'? 'join' ) ) ( 'each' | 'any' | 'at' | 'end' | 'of' | 'or' | 'next' | 'rnd' | 'row' | 'likewise' | 'unless' | 'otherwise' )*"`
	Over   bool `parser:"  | @( ( 'turn' | 'rotate' ) Name? ( 'remaining' 'loop' | 'other side' ) ( Name | 'of' | 'ch' | 'tch' | 'foundation' )* 'on' 'top' | 'turn' ( 'to' 'other side' | ( 'ch' | 'foundation' ) Name+ ) ( ?= EOF | 'of' | 'to' ) )"`
	Not    bool `parser:"  | @'not'?"`
	Rotate bool `parser:"( @( 'turn' Number ( 'degrees' | Sign ) Name* ) | 'turn' ( 'back' | 'over' ( ?= EOF ) )? | @'rotate' 'work'? ( ?! 'to' | 'and' | 'across' | 'work' ) ( ( Name | Number | Sign | 'ch' | 'foundation' | 'base' | 'on' )+ ( 'of' ( 'ch' | 'foundation' ) )? ( Name 'on' ( 'top' | Name ) )? )?"`
	Other  bool `parser:"| ( Name+ ( ?= 'on' | 'in' | 'across' ) )? ( 'rotate' | 'continue' )? ( 'to' | 'and' )? 'work'? 'back'? ( 'in' | 'across' | 'around' | 'on' | 'to' )* ( Number? 'remaining' 'loop' ( 'on' | 'of' | 'across' )+ )? @'other side'"`
	Base   bool `parser:"| 'work'? ( 'across' | 'on' | 'around' )+ @'foundation' ) )"`
	Start  bool `parser:"@( 'of' ( 'tch' | 'foundation' ) )? ( 'at' 'end' 'of' 'each'? ( 'row' | 'rnd' ) | 'to' 'work' | 'in' 'other' 'side' | 'of' 'branch'? Name | 'of'? 'same'? ( 'ch' ( ?! Number ) | 'foundation' | 'row' ) | 'of' )*"`
}

// join; join with sl st in first sc; join to form ring; join B with sl st in next st
type gJoin struct {
	Pos    lexer.Position
	Ring   bool      `parser:"( 'rs' | 'ws' )? ( 'join' | @( 'form' 'in'? 'ring' ( ?= 'with' ) ) )"`
	Last   *gNoun    `parser:"( 'rnd' | 'ends' | 'last' @@ )?"`
	Yarn   *gName    `parser:"@@?"`
	Stitch *gStitch  `parser:"( 'with' 'work'? Number? @@ )?"`
	Yarn2  *gName    `parser:"( 'with' @@ )?"`
	Where  []*gWhere `parser:"@@*"`
	After  *gStitch  `parser:"( 'with' Number? @@ )?"`
	Form   bool      `parser:"@( ( 'to' | 'and' )* ( 'form' | 'work' )? ( 'in' | 'to' )? 'ring' )? ( 'weave'+ 'ch'? )?"`
}

type gName struct {
	Pos   lexer.Position
	End   lexer.Position
	N     *gNum    `parser:"( 'yarn' @@ ( ?= EOF )"`
	Words []string `parser:"| ( 'next' | 'any' | 'more' )? @( Name | 'yarn' )+ ( ( 'or' | 'and' ) @Name+ )* ) ( 'of' 'yarn' )?"`
}

// with A; change to B in last st; drop A; carry A
type gYarn struct {
	Pos    lexer.Position
	Let    string    `parser:"( @( 'drop' | 'carry' ) ( Name | Word | Dash | Hyphen )*"`
	Where2 []*gWhere `parser:"| 'change' 'yarn'? ( ?= EOF | 'each' | 'in' | 'at' | Name ( 'row' | 'rnd' ) ) ( Name ( 'row' | 'rnd' ) Number | @@ )*"`
	Name   *gName    `parser:"| ( 'with' | 'change' ) ( 'to' | 'with' )* @@"`
	Where  []*gWhere `parser:"  ( 'in' 'last' ( Name | Stitch | 'motion' ) ( Name | Word | Number )* )? ( ( ?= 'in' | 'to' | 'at' | 'on' | 'before' | 'around' | 'across' | 'each' ) @@ )* )"`
}

// attach yarn at lower corner of right front: a place that no row made
type gYarnAt struct {
	Pos  lexer.Position
	Name *gName `parser:"'join' @@? ( 'with' Stitch )?"`
	Rest bool   `parser:"@( 'in' | 'to' | 'at' | 'on' ) ( Name | Word | Number | Ordinal | Stitch | Hyphen )+"`
}

// place marker in last st; move marker up to 2nd of these 3 sts; mark this st
type gMarker struct {
	Pos  lexer.Position
	Rest []*gMarkAt `parser:"(   'place' @@*"`
	Bare bool       `parser:"  | @'marker' ( ?= EOF ) )"`
}

type gMarkAt struct {
	Pos     lexer.Position
	Ordinal *gOrd `parser:"  @@"`
	Number  *gNum `parser:"| @@"`
	Skipped bool  `parser:"| @'skip'"`
	Last    bool  `parser:"| @'last' | ( Name | Word | Stitch | Dash | Hyphen | Sign )"`
}

// the last in top of ch-2; the last sc going in top of ch-1; working behind the petals; work along the chain: remarks on
// other clauses
type gRemark struct {
	Pos    lexer.Position
	Made   *gStitch `parser:"( 'have' Number Name+ ( ?= EOF ) | Ordinal? 'beg'? @@ 'made'"`
	Corner bool     `parser:"| @'corner' 'made'"`
	Rest   bool     `parser:"| ( ( Number | 'last' | Ordinal | Stitch | Name | 'corner' | 'loop' | 'sp' | 'group' | 'ch' | 'st' | Hyphen | 'more' )+ 'made' ) | ( 'or' | 'until' )? ( 'long enough' | 'desired' ) | 'work'? 'behind' ( ?= EOF ) | 'continue'? 'work'? 'back'? 'across' 'foundation'? 'ch' ( ?= EOF ) | ( 'row' | 'rnd' ) Number 'of' ( Name | Stitch )+ ( ?= EOF ) | Number 'skip' ( ?= EOF ) | ( 'with'? 'last' ( 'st' | Stitch | Number )? ( Name? 'work'? ( ?= 'in' | 'to' | 'on' ) ) ( 'in' | 'to' | 'on' ) | 'work'? 'behind' | 'work'? 'back' ( 'across' | 'on' ) | 'with' 'each' 'yarn' ) ( Name | Word | Number | Ordinal | Stitch | Dash | Hyphen | Sign )+ )"`
}

// work firmly; with hook 4 mm; brings thread in position for next row
type gComment struct {
	Pos lexer.Position
	// including the ch 3
	Counted bool `parser:"(   'including'"`
	// counting each ch as a st
	Chains bool `parser:"| @( 'count' 'each' 'ch' 'as' 'st' ( ?= EOF ) )"`
	// hold B along the top; do not fasten off; starting at center; 2 inches; 6 months
	Lead bool `parser:"| ( 'work' | 'evenly' ) ( ?= EOF ) | 'to' ( Stitch ( ?= EOF ) | 'beg' ) | 'hold' ( ?! 'last' | 'on' 'hook' 'last' ) | 'not' ( 'fasten' | 'place' | 'weave' ) | 'loop' 'on' 'hook' Name? 'not' 'count' | 'beg' 'at' ( ?! Ordinal ) | ( 'return' | 'back' ) ( 'across' | 'on' | 'in' )* 'it' ( ?= EOF )"`
	Size bool `parser:"| Number Sign? 'inch' | Number 'size' ( ?= EOF ) | 'about' Number 'ch'? | 'increased' Name ( ?= EOF ) | ( 'in' | 'on' )? 'each' ( Ordinal | 'other' | 'alternate' )? ( 'row' | 'rnd' ) ( ?= EOF ) | Number 'at' ( 'each' | 'both' ) ( 'end' | 'side' ) | 'for'? ( 'both' | 'each' ) 'size' | ( 'work' | 'piece' | 'each' | Name )+ 'measures'"`
	// with hook 4 mm; using 3 strands; (with RS facing,) MC and smaller hook
	Tool bool `parser:"| ( 'with' | 'change' 'to'? ) ( Name | Number | 'yarn' | 'loop' | 'on' | 'and' | 'size' | 'even' )* ( 'hook' | 'strand' ) | ( Name | Number | 'and' )+ 'hook' ( 'and' Name+ )? ( ?= EOF ) )"`
	Rest bool `parser:"( Name | Word | Number | Ordinal | Stitch | Hyphen | Dash | Sign )*"`
}

// 6 sc in magic ring is a gWork; this is the ring alone: magic ring; make a ring of 5 ch.
type gRing struct {
	Pos  lexer.Position
	Ring bool  `parser:"( 'work' | 'form' | 'beg' | 'with' )* @'ring'"`
	N    *gNum `parser:"( ( 'of' | 'with' ) @@ 'ch' )?"`
}

// rep Row 2; rep rows 2 and 3 until piece measures 20 cm; as Row 2; rep last 2 rows 3 times; go
// on with Rows 2 and 3, 8 more times each
type gRows struct {
	Pos    lexer.Position
	GoOn   bool     `parser:"( 'work' ( ?= ( 'last' Number ( 'row' | 'rnd' ) | ( 'row' | 'rnd' ) Number ( ( Comma | 'and' | 'to' | Dash | Hyphen )+ Number )* ) ( Number 'more'? 'times' | 'more' Number 'times' | 'once' | 'of' Name ) ) | 'work'? ( 'even' ( ?= 'as' ) )? ( @( 'continue' 'with' ( ?= 'row' | 'rnd' ) ) | ( 'rep' | 'as' | 'same' | 'previous' )+ ) )"`
	Last   bool     `parser:"( 'as' | 'for' | 'of' | 'from' )* ( @( 'last' | 'previous' | 'these' ( ?= Number? ( 'row' | 'rnd' ) ) )"`
	LastN  *gNum    `parser:"  @@? ( 'row' | 'rnd' )"`
	Part   *gPiece  `parser:"| ( ( ?! Stitch ) @@ ( ?= ( 'row' | 'rnd' ) Number ( ?! 'more' | 'times' ) ) )?"`
	Row    bool     `parser:"  @( 'row' | 'rnd' | 'r' | 'step' )"`
	List   []*gSpan `parser:"  ( @@ ( ( Comma | 'and' | Sign )+ ( 'row' | 'rnd' | 'r' | 'step' )? ( ?! Number ( 'times' | 'more' ( ?! Number ) | 'row' | 'rnd' ) ) @@ )* ( 'in' 'turn' )? Comma? )?"`
	Of     *gPiece  `parser:"  ( 'of' @@ )?"`
	Nth    []*gNths `parser:"| @@ ( ( Comma | 'and' | Sign )+ @@ )* ( 'row' | 'rnd' | ( ?= EOF ) )"`
	Called *gCalled `parser:"| @@"`
	Piece  *gPiece  `parser:"| @@"`
	Mark   string   `parser:"  ( ( ( 'to' | 'until' ) ( ( 'end' 'of' )? ( 'row' | 'rnd' | 'rowend' ) | @Star ) | 'across' ( 'of' ( 'row' | 'rnd' ) )? ( ?= Number ) )"`
	PieceN *gNum    `parser:"  @@? )? )"`
	Long   *gNum    `parser:"( 'for' 'next'? ( @@ 'more'? ( 'row' | 'rnd' ) 'more'?"`
	AllN   *gNum    `parser:"  | 'have' 'of'? @@ ( 'row' | 'rnd' ) ) 'have'? ( ?= EOF )"`
	UntilN *gNum    `parser:"| ( 'until' | 'to' ) ( ( 'have' | 'work' )* @@ ( 'row' | 'rnd' ) ( 'have' | 'work' | 'made' | 'in' | 'each' | Name )* | ( 'end' 'of' )? ( 'row' | 'rnd' | 'rowend' ) @@ Name? 'made'? ) ( ?= EOF ) | 'across' @@ ( ?= EOF ) )?"`
	Times  *gTimesN `parser:"@@?"`
	Until  bool     `parser:"@( 'until' | 'to' | 'for' | 'across' ( ?= 'of' ) )?"`
	Rest   []string `parser:"@( Name | Word | Number | Ordinal | Stitch | Dash | Hyphen | Sign | Enclosed | Period | Star )*"`
}

type gPiece struct {
	Pos   lexer.Position
	Words []string `parser:"@( Ordinal ( ?= Name | 'group' ) )? @( Name | 'group' | 'back' | 'front' | 'side' | 'edge' | 'stem' | 'top' | 'base' | 'tail' | Stitch )+ @( Number ( ?! 'times' | 'more' | 'row' | 'rnd' | Stitch ) )?"`
}

// rep dec row 3 more times: a row by its name
type gCalled struct {
	Pos   lexer.Position
	Words []string `parser:"@( Name | Stitch )+ ( 'row' | 'rnd' | 'around' ) ( ?= EOF | Number ( 'more' | 'times' ) | 'once' | 'more' )"`
}

type gNths struct {
	From *gOrd `parser:"@@"`
	To   *gOrd `parser:"( ( 'row' | 'rnd' )? ( 'to' | Dash | Hyphen ) @@ )?"`
}

type gSpan struct {
	Pos  lexer.Position
	From *gNum `parser:"@@"`
	Each bool  `parser:"( ( Dash | Hyphen | 'to' ) @( 'row' | 'rnd' | 'r' | 'step' )?"`
	To   *gNum `parser:"  @@ )?"`
}

// ending with sc in last 3 sts; ending last rep at **; end row to correspond; with the last sc in top of ch 3
type gEnding struct {
	Pos    lexer.Position
	OmitCh *gChain     `parser:"( 'omit' 'last' @@ ( ( 'at' | 'on' | 'in' ) ( 'end' | 'of' | 'last' 'rep' | 'last' 'row' | 'last' 'rnd' )+ )? ( ?= EOF )"`
	Omit   *gWhere     `parser:"| 'omit' @@ ( ( 'at' | 'on' | 'in' ) ( 'end' | 'of' | 'last' 'rep' | 'last' 'row' | 'last' 'rnd' )+ )? ( ?= EOF )"`
	Joined bool        `parser:"| @( 'last' ( 'st' | Stitch ) Name ) 'join' ( ?= EOF )"`
	Falls  *gWhere     `parser:"| ( 'with' | 'work' | Name )* 'last' ( 'st' | Stitch ) ( Name | 'work' | 'made' )* ( ?= 'in' ) @@ ( ?= EOF )"`
	Last   bool        `parser:"| ( 'end' | 'ending' | 'with' ( ?= 'only' ) ) ( @( 'last' 'rep' | 'rep' ) | ( 'each' | 'last' | Ordinal )? ( 'row' | 'rnd' ) )?"`
	At     *gStar      `parser:"(   'at' @@"`
	Chain  *gChain     `parser:"  | ( 'with' | 'by' )? 'only'? ( @@"`
	Skip   *gSkip      `parser:"    | @@"`
	Group  *gBracketed `parser:"    | @@"`
	Rest   *gNum       `parser:"    | @@ ( 'st' | 'ch' ) 'remaining'?"`
	Work   *gWork      `parser:"    | @@ )"`
	Where  *gWhere     `parser:"| ( ?= 'in' ) @@"`
	Mirror bool        `parser:"| ( 'with' | 'on' ) ( ( 'row' | 'rnd' ) Number | 'same' ( 'row' | 'rnd' ) | Ordinal ( 'row' | 'rnd' ) | ( 'rs' | 'ws' ) ( 'row' | 'rnd' | 'of' | 'work' | Name )* ) | 'at' ( Name | 'edge' | 'back' | 'front' | 'side' )+ | @( 'correspond' | 'in'? 'likewise' | 'in' 'pattern' 'likewise'? ) ) )"`
}

// work even for 4 rows; work without increasing or decreasing
type gEven struct {
	Pos    lexer.Position
	Rows   *gNum      `parser:"(   'work' @@ 'more'? ( 'row' | 'rnd' ) ( 'of' | 'in' | 'with' ) ( 'even' | Number )?"`
	Of     *gStitch   `parser:"    @@ ( 'in' 'each' ( 'st' | Stitch ) )? ( 'around' | 'across' )? ( ?= EOF )"`
	Not    []*gShaper `parser:"| 'work'? 'with'? ( 'no' | 'not' ) 'any'? 'more'? @@ ( ( 'or' | 'and' ) 'no'? @@ )?"`
	M      *gNum      `parser:"| ( 'continue' | 'work' )* ( Number Sign? 'inch' ( ?= 'in' 'pattern' | 'even' ) | @@ 'more'? ( 'row' | 'rnd' ) )?"`
	N      *gNum      `parser:"( 'even' | 'in' 'pattern' | 'even' 'in' 'pattern' | 'in' 'pattern' 'even' ) ( ( 'for' | 'over' | 'on' ) @@ ( 'row' | 'rnd' | 'more' | 'st' )+"`
	Stitch *gStitch   `parser:"| 'in' @@ ( 'across' | 'around' )? )? )"`
}

// increase; decreasing; shaping
type gShaper struct {
	Pos    lexer.Position
	Stitch *gStitch `parser:"@@ | 'increased' | 'decreased' | 'shaping'"`
}

// branch A; branch: ch 9
type gBranch struct {
	Pos  lexer.Position
	Name *gWordName `parser:"'branch' ( ( ?! 'to' ) @@ )?"`
}

// rep branch A 3 times
type gRepBranch struct {
	Pos   lexer.Position
	Name  string   `parser:"'rep' 'branch' @Name"`
	Times *gTimesN `parser:"@@?"`
}

// skip branch A; leave branches unworked
type gPass struct {
	Pos  lexer.Position
	Name string `parser:"( 'skip' | 'leave' ) ( 'all' | 'each' )? 'branch' @Name? 'remaining'?"`
}

type gWordName struct {
	Pos  lexer.Position
	Text string `parser:"@( Name | Number | Ordinal | Word | Stitch )"`
}

// return; return to A; return to stem
type gReturn struct {
	Pos lexer.Position
	To  *gWordName `parser:"'return' ( 'to' ( 'branch' ( ?! EOF ) )? @@ )?"`
}

// RS facing
type gSide struct {
	Pos  lexer.Position
	Side string `parser:"( 'with' @( 'rs' | 'ws' ) ( Name | Word | Ordinal | Stitch | Number )* | @( 'rs' | 'ws' ) Name* ( 'with' | 'in' | 'yarn' )* )"`
}

// fasten off, leaving a long tail
type gFinish struct {
	Pos  lexer.Position
	Verb string   `parser:"( @( 'fasten' | 'weave' | 'leave' ) | 'work' Number? ( Name | Ordinal | 'more' )* @'trim' )"`
	Yarn *gName   `parser:"@@?"`
	Rest []string `parser:"@( Name | Word | Number | Ordinal | Stitch | Dash | Hyphen | Sign | Enclosed | Period | Star )*"`
}

// ch a multiple of 6 + 2; ch to measure 16 inches; ch 12 to 16: as many as the
// maker likes
type gMultiple struct {
	Pos  lexer.Position
	Long bool  `parser:"(   'ch' @( 'to' 'measures' | 'for' Number Sign? 'inch' | 'long enough' | 'until' | 'as' 'work'? Name | Number ( 'to' | 'or' | Hyphen ) Number ) ( Name | Word | Number | Ordinal | Sign )* |"`
	Ch   bool  `parser:"'work'? ( @'ch' | 'over' | 'in' | 'st' )* 'multiple' 'of'"`
	N    *gNum `parser:"@@"`
	Of   bool  `parser:"( 'st' | @'ch' )?"`
	Plus *gNum `parser:"( ( Sign | Comma? 'plus' | Star ) @@"`
	Of2  bool  `parser:"( 'st' | @'ch' )? )? ( Enclosed | 'for' | Name )* )"`
}

// clauseGrammar is read on first use: a command that reads no pattern does not pay for
// it.
var clauseGrammar = sync.OnceValue(func() *grammar.Grammar[gClause] {
	kinds := map[string]int{"EOF": endKind}
	for k := Word; k <= Enclosed; k++ {
		kinds[k.String()] = int(k)
	}
	return grammar.Of[gClause](kinds)
})

// endKind is the kind of what comes after the last token.
const endKind = int(Enclosed) + 1

// symbols are tokens as the grammar sees them: without fillers, and with the end. A
// symbol stands at the index of its token in the clause, so that what is made of them
// can be shared by clauses that stand at different places.
func symbols(tokens []Token) []grammar.Symbol {
	out := make([]grammar.Symbol, 0, len(tokens)+1)
	for i := range tokens {
		if t := &tokens[i]; t.Kind != Word || t.Canon != "" {
			out = append(out, grammar.Symbol{Kind: int(t.Kind), Word: t.inGrammar(), At: i})
		}
	}
	return append(out, grammar.Symbol{Kind: endKind, At: len(tokens)})
}

// inGrammar is the word of a token as far as the grammar may tell it from another of
// its kind. One number is like the other; and a pattern may call a stitch by a word
// of the grammar.
func (t *Token) inGrammar() string {
	if t.Kind == Number || t.Kind == Stitch {
		return ""
	}
	return t.Canon
}
