// Holds the grammar of colours to the language's own grammar, and to drafts. Run by `npm test`; the build runs it where there is node.
import assert from "node:assert/strict";
import { readFileSync, readdirSync, statSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { fileURLToPath } from "node:url";

const require = createRequire(import.meta.url);
const oniguruma = require("vscode-oniguruma");
const textmate = require("vscode-textmate");

const here = path.dirname(fileURLToPath(import.meta.url));
const root = path.resolve(here, "../../../..");
const file = path.join(here, "../syntaxes/gusset.tmLanguage.json");
const raw = JSON.parse(readFileSync(file, "utf8"));

const wasm = readFileSync(require.resolve("vscode-oniguruma/release/onig.wasm"));
await oniguruma.loadWASM(wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.byteLength));
const registry = new textmate.Registry({
  onigLib: Promise.resolve({
    createOnigScanner: (patterns) => new oniguruma.OnigScanner(patterns),
    createOnigString: (text) => new oniguruma.OnigString(text),
  }),
  loadGrammar: async () => textmate.parseRawGrammar(readFileSync(file, "utf8"), file),
});
const grammar = await registry.loadGrammar("source.gusset");

/** Every token of a text as [words, innermost scope without its ending]. */
function tokens(text) {
  let state = textmate.INITIAL;
  const found = [];
  for (const line of text.split(/\r?\n/)) {
    const read = grammar.tokenizeLine(line, state);
    state = read.ruleStack;
    for (const token of read.tokens) {
      found.push({ text: line.slice(token.startIndex, token.endIndex), scopes: token.scopes, line });
    }
  }
  return found;
}

const last = (token) => token.scopes[token.scopes.length - 1].replace(/\.gusset$/, "");

// ---- the words of the grammar of colours are those of the language

const lexer = readFileSync(path.join(root, "dsl/src/main/antlr4/org/gusset/dsl/internal/parse/GussetLexer.g4"), "utf8");
const sections = {};
let section = "";
for (const line of lexer.split("\n")) {
  const heading = /^\/\/ ---- (.*)$/.exec(line);
  const word = /^[A-Z_]+: '([a-z]+)';$/.exec(line);
  if (heading) sections[(section = heading[1])] = [];
  else if (word && section) sections[section].push(word[1]);
}
const listed = (pattern) => /\(([a-z]+(?:\|[a-z]+)+)\)/.exec(pattern)[1].split("|");
const same = (name, given, wanted) => {
  assert.ok(wanted.length > 3, `${name}: too few words were found in the language's grammar`);
  assert.deepEqual([...given].sort(), [...wanted].sort(), `${name} differ from the language's grammar`);
};
const statements = ["statement words: file level", "statement words: any level", "statement words: pieces"].flatMap((s) => sections[s]);
same("statement words", listed(raw.repository.statement.match), statements);
same("directions", listed(raw.repository.direction.match), sections["directions"]);
same(
  "connecting words",
  [...listed(raw.repository.connecting.match), ...listed(raw.repository.constant.match)],
  sections["connecting words"]
);
same("units", /\(\(\?:([a-z|]+)\)/.exec(raw.repository.amount.patterns[0].match.replace(/^\(.*?\)\(\\s\*\)/, ""))[1].split("|"), sections["units"]);
same("soft words", listed(raw.repository.soft.match), sections["soft words"]);

// ---- forms, each with the scope of some of its words

const STATEMENT = "keyword.control.statement";
const cases = [
  ['measure chest from 60 cm to 1 1/2 in "round it"', { measure: STATEMENT, chest: "variable.other.definition", from: "keyword.operator.word", cm: "keyword.other.unit", "1/2": null, in: "keyword.other.unit", "round it": "string.quoted.double" }],
  ["piece Front traced from Back {", { piece: STATEMENT, Front: "entity.name.type.piece", traced: "storage.modifier", from: "keyword.operator.word" }],
  ["rule curve neck(a length) = from a to b", { rule: STATEMENT, curve: STATEMENT, neck: "entity.name.function.rule" }],
  ["  point tip = nape right shoulder_width / 2 down 3 cm # note", { point: STATEMENT, tip: "variable.other.definition", right: "keyword.operator.direction", "/": "keyword.operator", "# note": "comment.line.number-sign" }],
  ["  change line centre = hem_fold to neck_low", { change: STATEMENT, line: STATEMENT, centre: "variable.other.definition", to: "keyword.operator.word" }],
  ["  line l = e.start to d.leg_a", { start: "variable.other.property", leg_a: "variable.other.property" }],
  ["  let x = distance(A, B) * 40% if neckline is vee else no", { distance: "support.function", "%": "keyword.other.unit", if: "keyword.operator.word", no: "constant.language" }],
  ['  say "Half of {chest / 2} and \\"more\\""', { "{": "punctuation.section.embedded.begin", "/": "keyword.operator", "}": "punctuation.section.embedded.end", '\\"': "constant.character.escape", more: "string.quoted.double" }],
  ["  cut 1 on fold centre from shell", { cut: STATEMENT, "1": "constant.numeric", fold: "storage.modifier" }],
  ['  let w = 9½ in + 3"', { "9½": "constant.numeric", "3": "constant.numeric", '"': "keyword.other.unit" }],
];
for (const [text, wanted] of cases) {
  const found = tokens(text);
  for (const [word, scope] of Object.entries(wanted)) {
    if (scope === null) continue;
    const token = found.find((t) => t.text === word);
    assert.ok(token, `no token ${JSON.stringify(word)} in ${text}: ${JSON.stringify(found.map((t) => t.text))}`);
    assert.equal(last(token), scope, `${JSON.stringify(word)} in ${text}`);
  }
}

// ---- words and indents, as an editor makes patterns of what the folder says: a pattern alone knows no \\p, one with the flag u does

const settings = JSON.parse(readFileSync(path.join(here, "../language-configuration.json"), "utf8"));
const pattern = (said) => (typeof said === "string" ? new RegExp(said) : new RegExp(said.pattern, said.flags));
const word = pattern(settings.wordPattern);
const words = (text) => [...text.matchAll(new RegExp(word.source, word.flags + "g"))].map((m) => m[0]);
assert.deepEqual(words("let tip_2 = neck_width(Back.Ärmel) / 2"), ["let", "tip_2", "neck_width", "Back", "Ärmel"]);
assert.deepEqual(words("p{L}"), ["p", "L"]);
const deeper = pattern(settings.indentationRules.increaseIndentPattern);
const back = pattern(settings.indentationRules.decreaseIndentPattern);
for (const line of ["piece Back {", '  step "Square the frame" {', '  step "Half of {chest}" { # first', 'strip Band long 3" wide 2" {']) {
  assert.ok(deeper.test(line), `indented behind ${line}`);
}
for (const line of ["piece Back { }", "# a note {", 'say "{chest} wide"', "let a = 3 cm", 'draft "lost {']) {
  assert.ok(!deeper.test(line), `not indented behind ${line}`);
}
assert.ok(back.test("  }") && !back.test("  let a = 1 cm }"));

// ---- what the folder promises is there, and every setting that the server reads can be set

const folder = JSON.parse(readFileSync(path.join(here, "../package.json"), "utf8"));
const contributes = folder.contributes;
for (const name of [folder.main, contributes.languages[0].configuration, contributes.grammars[0].path, ...folder.files]) {
  assert.ok(statSync(path.join(here, "..", name)), name);
}
assert.equal(contributes.grammars[0].scopeName, raw.scopeName);
const options = readFileSync(path.join(root, "examples/editor/server/src/main/java/org/gusset/editor/Options.java"), "utf8");
const read = [...options.matchAll(/\((?:own), "([a-z]+)"/g)].map((m) => `gusset.${m[1]}`);
assert.deepEqual(Object.keys(contributes.configuration.properties).sort(), [...new Set(read), "gusset.server"].sort());
const sent = readFileSync(path.join(here, "../extension.js"), "utf8");
for (const name of read) assert.ok(sent.includes(`"${name.slice(7)}"`), `${name} is not sent when the server starts`);

// ---- a lost quote hurts its own line alone

const broken = tokens('say "lost\npoint p = origin');
assert.equal(last(broken.find((t) => t.text === "point")), STATEMENT);

// ---- shipped drafts: reserved words are coloured as such wherever they stand as words

const drafts = [];
(function walk(folder) {
  for (const name of readdirSync(folder)) {
    const inside = path.join(folder, name);
    if (statSync(inside).isDirectory()) walk(inside);
    else if (name.endsWith(".gusset")) drafts.push(inside);
  }
})(path.join(root, "examples/drafts"));
assert.ok(drafts.length > 10);
const reserved = new Set([...statements, ...sections["directions"], ...sections["connecting words"]]);
let count = 0;
for (const draft of drafts) {
  const text = readFileSync(draft, "utf8");
  // A statement word may be a name where no statement can begin; then the language server colours it.
  const named = new Set([...text.matchAll(/^\s*(?:choose|let|fit|measure)\s+([a-z_]+)/gm)].map((m) => m[1]));
  for (const token of tokens(text)) {
    const scopes = token.scopes.join(" ");
    const asText = /comment|string/.test(scopes) && !scopes.includes("meta.embedded");
    if (asText || token.scopes.some((s) => s.startsWith("variable.other.property"))) continue;
    for (const word of token.text.match(/[\p{L}_][\p{L}\p{M}\p{N}_]*/gu) ?? []) {
      if (!reserved.has(word) || named.has(word)) continue;
      count++;
      assert.match(last(token), /^(keyword|constant\.language)/, `${word} in ${path.basename(draft)}: ${token.line}`);
    }
  }
}
assert.ok(count > 1000, `only ${count} words`);
console.log(`${cases.length} forms, ${drafts.length} drafts, ${count} reserved words`);
