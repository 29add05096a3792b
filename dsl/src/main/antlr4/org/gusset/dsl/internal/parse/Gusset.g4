grammar Gusset;

file: EOF;

WORD: [a-z]+;
BLANK: [ \t\r\n]+ -> skip;
