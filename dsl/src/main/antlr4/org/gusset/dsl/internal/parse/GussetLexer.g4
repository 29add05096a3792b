/** The words of the language. Reserved words follow section "Lexical rules" of the language page; soft words stay usable as names. */
lexer grammar GussetLexer;

channels { COMMENTS }

// Made by the token passes, never by the lexer: a further part of a compound length (5 ft 3 in), the words "turned up",
// and a stretch that was refused before parsing.
tokens { MORE, TURNED_UP, BROKEN }

@members {
private static final String VULGAR = "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";

/** True if the quote just read stands directly behind a number, where it means inches. */
private boolean afterNumber() {
    int before = _input.LA(-2);
    return before >= '0' && before <= '9' || before > 0 && VULGAR.indexOf(before) >= 0;
}
}

// ---- statement words: file level
DRAFT: 'draft';
MEASURE: 'measure';
CHOOSE: 'choose';
FIT: 'fit';
RULE: 'rule';
USE: 'use';
CLOTH: 'cloth';
PIECE: 'piece';
STRIP: 'strip';
SEAM: 'seam';
FINISHED: 'finished';
OPENING: 'opening';

// ---- statement words: any level
LET: 'let';
UNKNOWN: 'unknown';
SOLVE: 'solve';
CHECK: 'check';

// ---- statement words: pieces
STEP: 'step';
SAY: 'say';
POINT: 'point';
POINTS: 'points';
LINE: 'line';
GUIDE: 'guide';
CURVE: 'curve';
ARC: 'arc';
JOIN: 'join';
CHANGE: 'change';
OUTLINE: 'outline';
ALLOW: 'allow';
CORNER: 'corner';
CUT: 'cut';
GRAIN: 'grain';
NOTCH: 'notch';
MARK: 'mark';
LABEL: 'label';
DART: 'dart';
SLASH: 'slash';
PIVOT: 'pivot';
LENGTHEN: 'lengthen';
GATHER: 'gather';
PLEAT: 'pleat';
NEST: 'nest';
DROP: 'drop';

// ---- directions
LEFT: 'left';
RIGHT: 'right';
UP: 'up';
DOWN: 'down';

// ---- connecting words
FROM: 'from';
TO: 'to';
ON: 'on';
AT: 'at';
BY: 'by';
OF: 'of';
WITH: 'with';
AS: 'as';
IF: 'if';
ELSE: 'else';
AND: 'and';
OR: 'or';
NOT: 'not';
IS: 'is';
SO: 'so';
THAT: 'that';
THROUGH: 'through';
HEADING: 'heading';
TOWARD: 'toward';
PAST: 'past';
BETWEEN: 'between';
WHERE: 'where';
MEETS: 'meets';
NEAREST: 'nearest';
ALONG: 'along';
ABOUT: 'about';
OVER: 'over';
WITHIN: 'within';
SQUARE: 'square';
PART: 'part';
SWEPT: 'swept';
ALL: 'all';
ANGLED: 'angled';
HALFWAY: 'halfway';
YES: 'yes';
NO: 'no';
NONE: 'none';
ORIGIN: 'origin';
START: 'start';
END: 'end';

// ---- units
MM: 'mm';
CM: 'cm';
M: 'm';
IN: 'in';
FT: 'ft';
YD: 'yd';
DEG: 'deg';
RAD: 'rad';
PERCENT: '%';

// ---- soft words
ABOVE: 'above';
ACROSS: 'across';
ALLOWANCE: 'allowance';
ALSO: 'also';
BELOW: 'below';
BIAS: 'bias';
BLUNT: 'blunt';
BOX: 'box';
BUTTON: 'button';
BUTTONHOLE: 'buttonhole';
CENTRE: 'centre';
CLOSING: 'closing';
CURVED: 'curved';
DOUBLE: 'double';
DRILL: 'drill';
EASE: 'ease';
FASTENING: 'fastening';
FOLD: 'fold';
FOLDED: 'folded';
GUSSET: 'gusset';
HOLLOWED: 'hollowed';
INTAKE: 'intake';
INTO: 'into';
KNIFE: 'knife';
LAYERS: 'layers';
LENGTHWISE: 'lengthwise';
LONG: 'long';
MATCHING: 'matching';
MEETING: 'meeting';
MIRRORED: 'mirrored';
MITRED: 'mitred';
NOTCHED: 'notched';
ONE: 'one';
OPEN: 'open';
OUT: 'out';
PAIR: 'pair';
PAIRS: 'pairs';
PARALLEL: 'parallel';
PASSES: 'passes';
PLACED: 'placed';
PLEATS: 'pleats';
POINTED: 'pointed';
PRESSED: 'pressed';
REPEAT: 'repeat';
SHRINKS: 'shrinks';
SMOOTH: 'smooth';
SPREAD: 'spread';
SPREADING: 'spreading';
SQUARED: 'squared';
STRETCH: 'stretch';
SWUNG: 'swung';
TAKEN: 'taken';
TENSION: 'tension';
TILTED: 'tilted';
TRACED: 'traced';
TRIPLE: 'triple';
TURNED: 'turned';
TWICE: 'twice';
WAY: 'way';
WIDE: 'wide';
WITHOUT: 'without';

// ---- signs
LBRACE: '{';
RBRACE: '}';
LPAREN: '(';
RPAREN: ')';
COMMA: ',';
DOT: '.';
EQUALS: '=';
PLUS: '+';
MINUS: '-' | '\u2212';
TIMES: '*';
DIV: '/';
LESS: '<';
AT_MOST: '<=';
MORE_THAN: '>';
AT_LEAST: '>=';

NUMBER: DIGIT+ ('.' DIGIT+)? | DIGIT* [¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞];
// Letters, marks and digits beyond ASCII come as one of their kind (LexerText).
NAME: LETTER (LETTER | DIGIT | [_\u0300\u0660])*;

// The predicates stand behind the first quote, so that only strings pay for them.
STRING
    : '"' {!afterNumber()}? IN_STRING* '"'
    | '\u201C' {!afterNumber()}? IN_CURLY* [\u201D"]
    ;
UNCLOSED
    : '"' {!afterNumber()}? IN_STRING* '\\'?
    | '\u201C' {!afterNumber()}? IN_CURLY* '\\'?
    ;
INCH_MARK: ["\u201D\u2033];
FOOT_MARK: ['\u2019\u2032];
DEGREE_SIGN: '\u00B0';

COMMENT: '#' ~[\r\n]* -> channel(COMMENTS);
BLANK: [\p{White_Space}\uFEFF\u200B]+ -> skip;
STRAY: .;

fragment DIGIT: [0-9];
fragment LETTER: [A-Za-z\u00AA];
fragment IN_STRING: '\\' ~[\r\n] | ~["\\\r\n];
fragment IN_CURLY: '\\' ~[\r\n] | ~["\\\r\n\u201D];
