'use strict';
const assert = require('node:assert/strict');
const fs = require('node:fs');
const path = require('node:path');
const { before, test } = require('node:test');
const { loadGrammar, tokensOf } = require('./tokens');

const root = path.join(__dirname, '..', '..', '..');
let grammar;
before(async () => {
  grammar = await loadGrammar();
});

const recipesIn = (folder) => fs.readdirSync(path.join(root, folder)).filter((name) => name.endsWith('.recipe')).map((name) => path.join(root, folder, name));

const soundRecipes = ['samples', 'samples/mistakes', 'src/Recipe.Compiler/Book', 'src/Recipe.Compiler/Templates', 'tests/corpus/sound'].flatMap(recipesIn);

/** Each pair is a piece of the line and how its innermost scope begins; pieces between them do not matter, their order does. */
function expect(line, ...pairs) {
  const tokens = tokensOf(grammar, line);
  let at = 0;
  for (const [piece, scope] of pairs) {
    const found = tokens.findIndex((token, index) => index >= at && token.piece.trim() === piece);
    assert.notEqual(found, -1, `no token '${piece}' from place ${at} in: ${line}\n${JSON.stringify(tokens)}`);
    const innermost = tokens[found].scopes.at(-1) ?? '';
    assert.ok(innermost.startsWith(scope), `'${piece}' is '${innermost}', not '${scope}', in: ${line}`);
    at = found + 1;
  }
}

const NUMBER = 'constant.numeric.recipe';
const UNIT = 'keyword.other.unit';
const TEXT = 'string.quoted.double';
const NAME = 'variable.other.name';
const LINE = 'support.type.property-name';
const BLOCK = 'keyword.other.block';
const CLAUSE = 'keyword.other.clause';
const CHOICE = 'support.constant';

// Around a line, so that it stands inside a block.
const inside = (line) => `part a {\n${line}\n}`;

test('a declaration names something and may copy something', () => {
  expect('resin my-epoxy like slow-laminating-epoxy {', ['resin', 'storage.type'], ['my-epoxy', 'entity.name.type'], ['like', CLAUSE],
    ['slow-laminating-epoxy', 'entity.other.inherited-class'], ['{', 'punctuation.section.block.begin']);
  expect('variant lid-2 of lid {', ['variant', 'storage.type'], ['lid-2', 'entity.name.type'], ['of', CLAUSE], ['lid', 'entity.other']);
  expect('\ufeffpart lid {', ['part', 'storage.type'], ['lid', 'entity.name.type']);
});

test('other top-level lines', () => {
  expect('language 1', ['language', 'keyword.control'], ['1', NUMBER]);
  expect('use "shop.recipe"', ['use', 'keyword.control'], ['shop.recipe', TEXT]);
  expect('let lap = (2 * overlap + 15 mm)', ['let', 'storage.type.let'], ['lap', 'variable.other.constant'], ['=', 'keyword.operator.assignment'],
    ['2', NUMBER], ['*', 'keyword.operator.arithmetic'], ['overlap', 'variable.other.constant'], ['+', 'keyword.operator.arithmetic'], ['15', NUMBER], ['mm', UNIT]);
});

test('the same word is a declaration at the top and a line inside a block', () => {
  expect('resin a { mix 100:30 by weight }', ['resin', 'storage.type'], ['mix', 'keyword.other.block']);
  expect(inside('resin slow-epoxy with fast'), ['resin', LINE], ['slow-epoxy', NAME], ['with', CLAUSE], ['fast', NAME]);
  expect(inside('plies { body glass-twill-163 }'), ['plies', BLOCK], ['body', NAME], ['glass-twill-163', NAME]);
});

test('comments run to the end of the line, and not inside texts', () => {
  expect('# let a = 5 mm', ['#', 'punctuation.definition.comment'], ['let a = 5 mm', 'comment.line.number-sign']);
  expect(inside('room 20 degC # { "x'), ['degC', UNIT], ['#', 'punctuation.definition.comment'], ['{ "x', 'comment.line']);
  expect(inside('note "no # comment" # one'), ['no # comment', TEXT], ['#', 'punctuation.definition.comment']);
  // Braces and quotes in a comment change nothing for the lines below.
  expect('part a { # } "\ntitle "b"\n}\nmould c {', ['title', LINE], ['}', 'punctuation.section.block.end'], ['mould', 'storage.type']);
});

test('texts with escapes', () => {
  expect(inside('note "a \\"b\\" \\\\ c"'), ['"', 'punctuation.definition.string.begin'], ['\\"', 'constant.character.escape'], ['b', TEXT],
    ['\\"', 'constant.character.escape'], ['\\\\', 'constant.character.escape'], ['c', TEXT], ['"', 'punctuation.definition.string.end']);
  expect(inside('note "a\\n"'), ['\\', 'invalid.deprecated.escape'], ['n', TEXT], ['"', 'punctuation.definition.string.end']);
  expect(inside('note "ends in \\\\" source "b"'), ['"', 'punctuation.definition.string.begin'], ['"', 'punctuation.definition.string.end'], ['source', CLAUSE]);
});

test('a text that is not closed ends with its line', () => {
  expect(inside('note "dry spot\nroom 20 degC'), ['"', 'invalid.illegal.unclosed-text'], ['dry spot', TEXT], ['room', LINE], ['20', NUMBER]);
  expect(inside('note "a\\"\nroom 20 degC'), ['a\\"', TEXT], ['room', LINE]);
});

test('numbers with units', () => {
  for (const [line, ...units] of [
    ['areal-weight 163 g/m2', 'g/m2'], ['width 100cm', 'cm'], ['heat-limit 120 °C', '°C'], ['viscosity 600 mPa.s at 25 degC', 'mPa.s', 'degC'],
    ['price 6.40 EUR/kg on 2026-04-01', 'EUR/kg'], ['spare 10 %', '%'], ['time 1 h 30 min', 'h', 'min'], ['tolerance 5 degC-diff', 'degC-diff'],
    ['pace 4 min/m2', 'min/m2'], ['expansion 5 ppm/K', 'ppm/K'], ['permeability 1e-10 m2', 'm2'], ['room 20 \u2103', '\u2103'],
  ]) {
    const found = tokensOf(grammar, inside(line)).filter((token) => token.scopes.at(-1).startsWith(UNIT)).map((token) => token.piece.trim());
    assert.deepEqual(found, units, line);
  }
});

test('a unit stands only behind a number or a parenthesis, and ends a word', () => {
  const units = (line) => tokensOf(grammar, inside(line)).filter((token) => token.scopes.at(-1).startsWith(UNIT)).map((token) => token.piece.trim());
  assert.deepEqual(units('body m 0/90'), []);
  assert.deepEqual(units('body 5 mmx'), []);
  assert.deepEqual(units('body 5 m-long'), []);
  assert.deepEqual(units('size (2 * lap) mm'), ['mm']);
  assert.deepEqual(units('size (300 mm\n + 5) mm'), ['mm', 'mm']);
  assert.deepEqual(units('abrade 80 grit'), []);
  assert.deepEqual(units('coats 5\nm 3'), []);
});

test('a line may end inside parentheses', () => {
  expect(inside('size (lap\n  + room) mm\nroom 20 degC'), ['lap', 'variable.other.constant'], ['room', 'variable.other.constant'], [')', 'punctuation.section.parens.end'], ['mm', UNIT], ['room', LINE]);
});

test('ranges, tolerances, angles, ratios and counts', () => {
  expect(inside('room 18 to 25 degC'), ['18', NUMBER], ['to', 'keyword.operator.range'], ['25', NUMBER], ['degC', UNIT]);
  expect(inside('target mass 140 g +/- 10 g'), ['mass', CLAUSE], ['140', NUMBER], ['g', UNIT], ['+/-', 'keyword.operator.tolerance'], ['10', NUMBER], ['g', UNIT]);
  expect(inside('plies { body glass-twill-163 +/-45 x2 }'), ['+/-', 'keyword.operator.tolerance'], ['45', NUMBER], ['x2', 'constant.numeric.count']);
  expect(inside('plies { body glass-twill-163 \u00b145 }'), ['\u00b1', 'keyword.operator.tolerance'], ['45', NUMBER]);
  expect(inside('plies { body carbon_8 0/90 }'), ['carbon_8', NAME], ['0', NUMBER], ['/', 'keyword.operator'], ['90', NUMBER]);
  expect(inside('plies { body carbon-8 45/-45 random }'), ['45', NUMBER], ['/', 'keyword.operator'], ['-', 'keyword.operator'], ['45', NUMBER], ['random', CHOICE]);
  expect('resin a { mix 100:30 by weight }', ['100', NUMBER], [':', 'keyword.operator.ratio'], ['30', NUMBER], ['by', CLAUSE], ['weight', CLAUSE]);
  expect(inside('wet-out { start 09:00 }'), ['start', LINE], ['09', NUMBER], [':', 'keyword.operator.ratio'], ['00', NUMBER]);
  expect('mould a { surface flat 300 mm x 200 mm }', ['surface', LINE], ['flat', CHOICE], ['mm', UNIT], ['x', 'keyword.operator.times'], ['200', NUMBER]);
  expect('mould a { surface flat 300 mm \u00d7 200 mm }', ['\u00d7', 'keyword.operator.times']);
});

test('dates are one token, and what only looks like one is not', () => {
  expect('build lid no 3 on 2026-05-14 {', ['build', 'storage.type'], ['lid', 'entity.name.type'], ['3', NUMBER], ['on', CLAUSE], ['2026-05-14', 'constant.other.date']);
  expect(inside('note 2026-05-14a'), ['2026', NUMBER]);
});

test('names with hyphens, digits, accents and letters of any script are whole', () => {
  for (const name of ['glass-twill-163', 'carbon_8', 'm5-nut', '_x', 'stoff-\u00e9toile', 'e\u0301-1', '\u0416\u5c42', 'with-fast', 'to-and-fro', 'x2-tape', 'yes-man', 'source-1']) {
    expect(inside(`resin ${name} with fast`), ['resin', LINE], [name, NAME], ['with', CLAUSE]);
    expect(inside(`${name} 5 mm`), [name, NAME], ['5', NUMBER]);
  }
});

test('a word of the language inside a longer name is not that word', () => {
  expect(inside('title-page "a"'), ['title-page', NAME]);
  expect(inside('cure-all "a"'), ['cure-all', NAME]);
});

test('semicolons and braces begin a line', () => {
  expect('mould a { release { carnauba-wax coats 5; pva-film coats 1 } }', ['release', BLOCK], ['carnauba-wax', NAME], ['coats', CLAUSE], [';', 'punctuation.terminator'], ['pva-film', NAME], ['coats', CLAUSE]);
  expect('part a { plies { } cure {', ['plies', BLOCK], ['cure', BLOCK]);
});

test('what cannot be read is marked', () => {
  expect(inside('trim 1,5 mm'), ['1,5', 'invalid.illegal.number']);
  expect(inside('trim 1.234,5 mm'), ['1.234,5', 'invalid.illegal.number']);
  expect(inside('trim .5 mm'), ['.5', 'invalid.deprecated.number']);
  expect(inside('trim 5 mm !'), ['!', 'invalid.illegal.character']);
  expect('}\npart a {', ['}', 'invalid.illegal.stray'], ['part', 'storage.type']);
});

test('a choice and a clause', () => {
  expect(inside('process bagged'), ['process', LINE], ['bagged', CHOICE]);
  expect(inside('outdoors yes'), ['yes', 'constant.language.boolean']);
  expect(inside('accept RC6004 because "a" until 2027-01-01'), ['accept', LINE], ['RC6004', NAME], ['because', CLAUSE], ['until', CLAUSE]);
  expect('fibre a { modulus 72 GPa source assumed "b" }', ['modulus', LINE], ['source', CLAUSE], ['assumed', CLAUSE], ['b', TEXT]);
});

test('nothing in a recipe that can be read is marked as wrong, and every character has a scope or is a blank', () => {
  assert.ok(soundRecipes.length >= 30, `${soundRecipes.length} recipes`);
  for (const file of soundRecipes) {
    for (const { piece, scopes, line } of tokensOf(grammar, fs.readFileSync(file, 'utf8'))) {
      assert.ok(scopes.length > 0, `${file}:${line + 1}: '${piece}' has no scope`);
      assert.ok(!scopes.some((scope) => scope.includes('invalid')), `${file}:${line + 1}: '${piece}' is ${scopes}`);
    }
  }
});

test('blocks nest and end: the last brace of each recipe ends a block and leaves none open', () => {
  for (const file of soundRecipes) {
    const tokens = tokensOf(grammar, fs.readFileSync(file, 'utf8') + '\nlanguage 1');
    const end = tokens.filter((token) => token.piece.trim() === 'language').at(-1);
    assert.equal(end.scopes.at(-1), 'keyword.control.recipe', file);
  }
});
