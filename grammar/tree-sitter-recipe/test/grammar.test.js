// Runs the program named in TREE_SITTER over a copy of this grammar, so that nothing is written beside the sources.
'use strict';
const assert = require('node:assert/strict');
const { spawnSync } = require('node:child_process');
const fs = require('node:fs');
const os = require('node:os');
const path = require('node:path');
const { after, before, test } = require('node:test');

const grammar = path.join(__dirname, '..');
const root = path.join(grammar, '..', '..');
const scratch = fs.mkdtempSync(path.join(os.tmpdir(), 'tree-sitter-recipe-'));
const copy = path.join(scratch, 'tree-sitter-recipe');

function treeSitter(...args) {
  // Caches and settings stay in the scratch folder.
  const env = { ...process.env, HOME: scratch, XDG_CACHE_HOME: path.join(scratch, 'cache'), XDG_CONFIG_HOME: path.join(scratch, 'config'), NO_COLOR: '1' };
  return spawnSync(process.env.TREE_SITTER, args, { cwd: copy, env, encoding: 'utf8', maxBuffer: 1 << 28 });
}

const recipesIn = (folder) => fs.readdirSync(path.join(root, folder)).filter((name) => name.endsWith('.recipe')).map((name) => path.join(root, folder, name));

before(() => {
  fs.cpSync(grammar, copy, { recursive: true });
});

after(() => fs.rmSync(scratch, { recursive: true, force: true }));

test('the parser that is kept is that of the grammar', () => {
  const generated = treeSitter('generate', '--abi', '14', '--no-bindings');
  assert.equal(generated.status, 0, generated.stderr);
  const rules = (folder) => {
    const { rules: all, extras, word } = JSON.parse(fs.readFileSync(path.join(folder, 'src/grammar.json'), 'utf8'));
    return { all, extras, word };
  };
  assert.deepEqual(rules(copy), rules(grammar), 'run: grammar/generate.sh');
  const tables = (folder) => fs.readFileSync(path.join(folder, 'src/parser.c'), 'utf8');
  if (treeSitter('--version').stdout.startsWith('tree-sitter 0.22.6')) {
    assert.equal(tables(copy), tables(grammar), 'run: grammar/generate.sh');
  }
});

test('trees and highlights are as kept', () => {
  const tested = treeSitter('test');
  assert.equal(tested.status, 0, tested.stdout + tested.stderr);
  assert.match(tested.stdout, /lines\.recipe.*\d\d assertions/, tested.stdout);
});

test('every recipe that the compiler reads is read without an error', () => {
  const files = [
    ...['samples', 'samples/mistakes', 'src/Recipe.Compiler/Book', 'src/Recipe.Compiler/Templates', 'tests/corpus/sound'].flatMap(recipesIn),
    ...['hatch-lid', 'resin', 'values', 'crlf-lines', 'empty'].map((name) => path.join(root, 'tests/Recipe.Syntax.Tests/cases', name, 'input.recipe')),
  ];
  assert.ok(files.length >= 35, `${files.length} recipes`);
  const parsed = treeSitter('parse', '--quiet', ...files);
  assert.equal(parsed.status, 0, parsed.stdout + parsed.stderr);
});

test('a text that cannot be read is an error', () => {
  const broken = path.join(scratch, 'broken.recipe');
  for (const text of ['part a {\n', '}\n', 'a (5\n', 'a "open\n', 'a 5 +\n', 'let a 5\n', '5 a\n', 'a = 5\n', 'a b: c\n', 'a !\n']) {
    fs.writeFileSync(broken, text);
    assert.equal(treeSitter('parse', '--quiet', broken).status, 1, `no error in ${JSON.stringify(text)}`);
  }
});

test('an error stays on its line', () => {
  const broken = path.join(scratch, 'broken.recipe');
  fs.writeFileSync(broken, 'part a {\n  trim ) 5 mm\n  note "open\n  room 20 degC\n}\nmould b { flange 5 mm }\n');
  const { stdout } = treeSitter('parse', broken);
  assert.match(stdout, /\(entry \[3, 2\] - \[3, 14\]\s+head: \(word/, stdout);
  assert.match(stdout, /\(entry \[5, 0\] - \[5, 23\]/, stdout);
});

for (const name of fs.readdirSync(path.join(grammar, 'queries'))) {
  test(`the query ${name} finds something in a recipe`, () => {
    const found = treeSitter('query', `queries/${name}`, path.join(root, 'samples/hatch-lid.recipe'));
    assert.equal(found.status, 0, found.stderr);
    assert.match(found.stdout, /pattern: /, found.stdout);
  });
}

test('no two patterns of the highlights fit the same word, and every word has one', () => {
  const files = recipesIn('samples');
  for (const file of files) {
    const found = new Map();
    for (const [, name, place] of treeSitter('query', '--captures', 'queries/highlights.scm', file).stdout.matchAll(/capture: \d+ - ([a-z.]+), (start: \(\d+, \d+\), end: \(\d+, \d+\))/g)) {
      assert.equal(found.get(place) ?? name, name, `${file} ${place}`);
      found.set(place, name);
    }
    assert.ok(found.size > 50, `${file}: ${found.size}`);
    const leaves = treeSitter('parse', file).stdout.matchAll(/\((?:word|name|number|unit|date) \[(\d+), (\d+)\] - \[(\d+), (\d+)\]\)/g);
    for (const [leaf, line, column, endLine, endColumn] of leaves) {
      assert.ok(found.has(`start: (${line}, ${column}), end: (${endLine}, ${endColumn})`), `${file}: nothing for ${leaf}`);
    }
  }
});

test('folds are the blocks, and definitions the names', () => {
  const file = path.join(scratch, 'names.recipe');
  fs.writeFileSync(file, 'let lap = 5 mm\npart lid {\n  plies { body cloth }\n}\n');
  const folds = treeSitter('query', '--captures', 'queries/folds.scm', file).stdout;
  assert.equal(folds.match(/capture: /g).length, 2, folds);
  const locals = treeSitter('query', '--captures', 'queries/locals.scm', file).stdout;
  const defined = [...locals.matchAll(/local\.definition, .*text: `([^`]*)`/g)].map((match) => match[1]);
  assert.deepEqual(defined, ['lap', 'lid'], locals);
});
