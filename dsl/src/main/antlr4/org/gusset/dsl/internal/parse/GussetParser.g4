/**
 * The forms of the language. Every decision looks at one token only, which a test checks; so no ambiguity can exist.
 * A shape starts from a base or a sum and takes moves; amounts are sums, so a move never hides inside the amount of another.
 */
parser grammar GussetParser;

options { tokenVocab = GussetLexer; }

// ---- the frame: blocks without a head and statements at the wrong level are taken in here and judged afterwards

file
    : version? (fileStatement | sharedStatement | pieceStatement | piece | strip | step | looseBlock | strayBrace)* EOF
    ;

version: GUSSET NUMBER;

strayBrace: RBRACE;

piece: pieceHead pieceBlock;

strip: stripHead pieceBlock;

step: stepHead stepBlock;

pieceBlock: LBRACE (sharedStatement | pieceStatement | step | looseBlock)* RBRACE;

stepBlock: LBRACE (sharedStatement | pieceStatement | looseBlock)* RBRACE;

looseBlock: LBRACE (sharedStatement | pieceStatement | step | looseBlock)* RBRACE;

pieceHead: PIECE name (traced | taken)? (IF value)?;

traced: TRACED FROM reference (MIRRORED OVER operand)?;

taken
    : TAKEN FROM reference
      ( ABOVE operand
      | BELOW operand
      | LEFT OF operand
      | RIGHT OF operand
      | WITHIN sum OF operand
      )
    ;

stripHead: STRIP name LONG sum WIDE sum FOLDED? (ON BIAS)? (IF value)?;

stepHead: STEP words;

// One statement of any level: the reader takes a file statement by statement, so that a fault ends where the next one begins.
statement: fileStatement | sharedStatement | pieceStatement;

single: statement EOF;

fileStatement
    : draft
    | measure
    | choose
    | fit
    | ruleOfThumb
    | use
    | cloth
    | seam
    | finished
    | opening
    ;

sharedStatement: let | check | unknown | solve;

pieceStatement: say | change | drop | pieceForm;

pieceForm
    : point
    | points
    | line
    | guide
    | curve
    | arc
    | join
    | outline
    | allow
    | corner
    | cut
    | grain
    | notch
    | mark
    | label
    | dart
    | slash
    | pivot
    | lengthen
    | gather
    | pleat
    | nest
    ;

// ---- file level

draft: DRAFT STRING words?;

measure: MEASURE name (ALSO otherName (COMMA otherName)*)? measureTail* words?;

measureTail: FROM range | ELSE value;

otherName: name | STRING;

choose: CHOOSE name EQUALS value (FROM range | OUT OF name (COMMA name)*)? words?;

fit: FIT name EQUALS value (FROM range)? words?;

ruleOfThumb
    : RULE
      ( name parameters EQUALS expr
      | LINE name parameters EQUALS lineBody
      | CURVE name parameters EQUALS curveBody
      | ARC name parameters EQUALS arcBody
      )
      words?
    ;

parameters: LPAREN (parameter (COMMA parameter)*)? RPAREN;

parameter: name kind;

kind: name | POINT | LINE | CURVE | ARC | PIECE;

use: USE STRING AS name (WITH setting (COMMA setting)*)?;

setting: name EQUALS value;

cloth: CLOTH name WIDE sum clothTail* words?;

clothTail
    : LONG sum
    | FOLDED (LENGTHWISE | TWICE)
    | OPEN
    | ONE WAY
    | REPEAT directed (COMMA directed)*
    | SHRINKS directed (COMMA directed)*
    | STRETCH directed (COMMA directed)*
    | MATCHING operand (COMMA operand)*
    ;

directed: sum (ALONG | ACROSS);

seam: SEAM name EQUALS pathSum TO pathSum (EASE range)? (MATCHING match (COMMA match)*)? seamTail*;

pathSum: path (PLUS path)*;

path: partOf | operand;

match: operand WITH operand (EASE range)? (NOTCHED strokes?)?;

strokes: DOUBLE | TRIPLE;

seamTail
    : MEETING (SMOOTH | SQUARE) AT operand
    | WITHIN sum
    | PRESSED (OPEN | TOWARD operand)
    ;

finished: FINISHED name EQUALS value OVER operand EASE range;

opening: OPENING name EQUALS pathSum PASSES sum (WITH FASTENING sum)? (STRETCH sum)?;

// ---- any level

let: LET name EQUALS expr;

check: CHECK value words?;

unknown: UNKNOWN name FROM range;

solve: SOLVE name (COMMA name)* SO THAT equation (COMMA equation)* (NEAREST sum)?;

equation: sum EQUALS sum;

// ---- pieces

say: SAY words;

change: CHANGE (pieceForm | let | unknown | solve);

drop: DROP (DART | NOTCH) reference;

point: POINT name EQUALS expr;

points: POINTS name EQUALS sum ON operand (BETWEEN operand AND operand)?;

line: LINE name EQUALS lineBody;

lineBody: shape (TO shape)*;

guide: GUIDE name EQUALS ((ACROSS | DOWN | UP) FROM shape | shape (TO shape)?);

curve: CURVE name EQUALS curveBody;

curveBody: FROM knot (THROUGH knot (COMMA knot)*)? TO knot (TENSION sum | hollow)? | expr;

knot: shape (HEADING way)?;

hollow: HOLLOWED side BY sum (AT sum)?;

arc: ARC name EQUALS arcBody;

arcBody: FROM shape (TO shape CENTRE shape | CENTRE shape SWUNG sum);

join: JOIN name EQUALS shape (COMMA shape)*;

outline: OUTLINE reference (COMMA reference)*;

allow: ALLOW sum (TURNED_UP | leadingAmount TURNED_UP?)? (COMMA edgeAllowance)*;

// Taken in so that a missing first amount can be told: "allow hem 4 cm".
leadingAmount: NONE | leadingProduct ((PLUS | MINUS) product)*;

leadingProduct: (amount | call) ((TIMES | DIV) unary)*;

edgeAllowance: reference (NONE | sum) TURNED_UP?;

corner: CORNER reference COMMA reference (MITRED | SQUARED TO reference | MIRRORED TO reference | BLUNT | POINTED);

cut
    : CUT sum (PAIR | PAIRS | LEFT | RIGHT | LAYERS | ON FOLD reference)? (FROM name)?
      (WITHOUT ALLOWANCE | WITH ALLOWANCE sum)?
    ;

grain: GRAIN (ALONG shape | FROM shape TO shape | BIAS);

notch: NOTCH reference place strokes?;

mark
    : MARK
      ( DRILL shape
      | BUTTON shape
      | BUTTONHOLE shape ALONG shape BY sum
      | ALONG shape
      | PLACED name AT shape (TILTED sum)?
      )
    ;

label: LABEL words;

dart
    : DART name EQUALS
      ( ON operand place INTAKE sum TO shape (CURVED side BY sum)? (PRESSED TOWARD operand)?
      | BETWEEN operand AND operand INTAKE sum AT shape
      )
    ;

slash: SLASH FROM shape TO shape (TO shape)? SPREAD sum;

pivot: PIVOT ABOUT shape CLOSING (share OF)? reference (SPREADING operand place | INTO name ON operand place);

share: NUMBER PERCENT? (DIV NUMBER)? | bracketed;

lengthen: LENGTHEN AT shape BY sum;

gather: GATHER reference (BETWEEN operand AND operand)? TO sum;

pleat: PLEAT reference (BETWEEN operand AND operand)? TO sum WITH sum (KNIFE | BOX)? PLEATS (PRESSED TOWARD operand)?;

nest: NEST AT shape;

// ---- places, sides, ways

place: HALFWAY | AT sum (FROM (START | END | operand))? | NEAREST operand;

side: direction | TOWARD operand;

direction: LEFT | RIGHT | UP | DOWN;

way: sum | wayWord;

wayWord: direction | TOWARD operand | ALONG operand | SQUARE TO operand;

range: sum TO sum;

// ---- values: expr takes bases and moves, value does not, sum is arithmetic alone

expr: branch (IF condition ELSE branch)*;

branch: (base | condition) move*;

value: condition (IF condition ELSE condition)*;

shape: (base | sum) move*;

base
    : AT LPAREN expr COMMA expr RPAREN
    | BETWEEN operand AND operand (HALFWAY | AT sum (FROM (START | END | operand))?)?
    | ON operand place
    | SWEPT sum FROM operand AND sum FROM operand NEAREST operand
    | WHERE operand MEETS operand (NEAREST operand)?
    | partOf
    ;

partOf: PART OF operand BETWEEN operand AND operand;

move
    : direction (TO operand | sum)
    | TOWARD operand (BY sum | TO operand)
    | PAST operand BY sum
    | SWEPT BY sum TO operand (NEAREST operand)?
    | ANGLED sum (BY sum | TO operand)
    | SQUARE TO operand side BY sum
    | MIRRORED OVER operand
    | TURNED sum ABOUT operand
    | PARALLEL side BY sum
    ;

condition: conjunction (OR conjunction)*;

conjunction: negation (AND negation)*;

negation: NOT* comparison;

comparison: sum (relation sum)*;

relation: LESS | AT_MOST | MORE_THAN | AT_LEAST | IS NOT?;

sum: product ((PLUS | MINUS) product)*;

product: unary ((TIMES | DIV) unary)*;

unary: MINUS* primary;

primary: amount | YES | NO | STRING | operand;

operand: call | bracketed | ORIGIN | BROKEN;

call: ALL? reference (LPAREN (argument (COMMA argument)*)? RPAREN)?;

argument: TO sum | expr;

bracketed: LPAREN inner RPAREN;

// Only brackets take a way for a value, as in "heading (up if neckline is vee else right)".
inner: innerBranch (IF condition ELSE innerBranch)*;

innerBranch: wayWord | branch;

amount: NUMBER unit? (MORE unit)*;

unit: MM | CM | M | IN | FT | YD | DEG | RAD | PERCENT;

reference: name (DOT part)*;

part: name | NUMBER | START | END;

words: STRING+;

// The expression of a hole in a string, read on its own.
hole: expr EOF;

name
    : NAME
    | ABOVE
    | ALLOWANCE
    | ALSO
    | BELOW
    | BIAS
    | BLUNT
    | BOX
    | BUTTON
    | BUTTONHOLE
    | CENTRE
    | CLOSING
    | CURVED
    | DOUBLE
    | DRILL
    | EASE
    | FASTENING
    | FOLD
    | FOLDED
    | GUSSET
    | HOLLOWED
    | INTAKE
    | INTO
    | KNIFE
    | LAYERS
    | LENGTHWISE
    | LONG
    | MATCHING
    | MEETING
    | MIRRORED
    | MITRED
    | NOTCHED
    | ONE
    | OPEN
    | OUT
    | PAIR
    | PAIRS
    | PARALLEL
    | PASSES
    | PLACED
    | PLEATS
    | POINTED
    | PRESSED
    | REPEAT
    | SHRINKS
    | SMOOTH
    | SPREAD
    | SPREADING
    | SQUARED
    | STRETCH
    | SWUNG
    | TAKEN
    | TENSION
    | TILTED
    | TRACED
    | TRIPLE
    | TURNED
    | TWICE
    | WAY
    | WIDE
    | WITHOUT
    ;
