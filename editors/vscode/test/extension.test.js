// The parts of the extension that need no editor: its settings, its patterns, and how it starts the program.
'use strict';
const assert = require('node:assert/strict');
const { buildSync } = require('esbuild');
const fs = require('node:fs');
const Module = require('node:module');
const os = require('node:os');
const path = require('node:path');
const { test } = require('node:test');

const folder = path.join(__dirname, '..');
const read = (name) => JSON.parse(fs.readFileSync(path.join(folder, name), 'utf8'));
const configuration = read('language-configuration.json');
const manifest = read('package.json');

test('a word is a whole name, with its hyphens', () => {
  const pattern = new RegExp(configuration.wordPattern.pattern, configuration.wordPattern.flags);
  assert.deepEqual('body glass-twill-163 0/90 m5-nut \u00e9toile-1 carbon_8 -x 12.5 mm'.match(pattern),
    ['body', 'glass-twill-163', '0', '90', 'm5-nut', '\u00e9toile-1', 'carbon_8', 'x', '12.5', 'mm']);
});

test('a block that is opened indents, a brace in a text or a comment does not', () => {
  const { increaseIndentPattern, decreaseIndentPattern } = configuration.indentationRules;
  const opens = (line) => new RegExp(increaseIndentPattern).test(line);
  for (const line of ['part a {', '  plies {   # first on the mould', 'build a no 1 on 2026-05-14 {', 'a "}" {', 'a "\\"" {']) {
    assert.ok(opens(line), line);
  }
  for (const line of ['# part a {', 'note "a {', 'note "a { b"', 'a { b }', 'a 5 # {', 'note "\\" {']) {
    assert.ok(!opens(line), line);
  }
  assert.match('  }', new RegExp(decreaseIndentPattern));
  const [between, comment] = configuration.onEnterRules;
  assert.ok(new RegExp(between.beforeText).test('part a {') && new RegExp(between.afterText).test('}'));
  assert.ok(new RegExp(comment.beforeText).test('  # one') && !new RegExp(comment.beforeText).test('a 5 # one'));
});

test('the manifest names what is there', () => {
  for (const name of [manifest.main, manifest.contributes.grammars[0].path, manifest.contributes.languages[0].configuration]) {
    assert.ok(fs.existsSync(path.join(folder, name)), `${name}: run npm run build`);
  }
  assert.equal(read('dist/recipe.tmLanguage.json').scopeName, manifest.contributes.grammars[0].scopeName);
  assert.equal(fs.readFileSync(path.join(folder, 'dist/recipe.tmLanguage.json'), 'utf8'),
    fs.readFileSync(path.join(folder, '../../grammar/textmate/recipe.tmLanguage.json'), 'utf8'));
});

test('the program that a setting names', () => {
  const out = path.join(os.tmpdir(), `program-path-${process.pid}.cjs`);
  buildSync({ entryPoints: [path.join(folder, 'src/programPath.ts')], outfile: out, bundle: true, platform: 'node', format: 'cjs' });
  const { programPath } = require(out);
  fs.rmSync(out);
  assert.equal(programPath('recipe', '/w'), 'recipe');
  assert.equal(programPath('  ', undefined), 'recipe');
  assert.equal(programPath('~/bin/recipe', undefined), `${os.homedir()}/bin/recipe`);
  assert.equal(programPath('${workspaceFolder}/out/recipe', '/w'), '/w/out/recipe');
});

test('what the commands answer is shown', async () => {
  const done = [];
  class EventEmitter { event = () => {}; fire(uri) { done.push(['changed', uri.path]); } }
  const vscode = {
    EventEmitter,
    Uri: { from: (parts) => parts, file: (path_) => ({ path: path_ }) },
    commands: { executeCommand: async (name, uri) => { done.push([name, uri.path]); } },
    window: { showInformationMessage: async (message, ...names) => { done.push([message, ...names]); return names[0]; } },
    env: { openExternal: async (uri) => { done.push(['open', uri.path]); } },
  };
  const out = path.join(os.tmpdir(), `answers-${process.pid}.cjs`);
  buildSync({ entryPoints: [path.join(folder, 'src/answers.ts')], outfile: out, bundle: true, platform: 'node', format: 'cjs', external: ['vscode'] });
  const load = Module._load;
  Module._load = (name, ...rest) => (name === 'vscode' ? vscode : load(name, ...rest));
  try {
    const { answers } = require(out);
    await answers.show('recipe.showNumbers', ['file:///a.recipe', 'lid'], ['# Lid']);
    assert.equal(answers.provideTextDocumentContent({ path: 'lid.md' }), '# Lid');
    await answers.show('recipe.compare', ['file:///a.recipe', 'lid'], ['# Changes']);
    assert.equal(answers.provideTextDocumentContent({ path: 'lid changes.md' }), '# Changes');
    await answers.show('recipe.makePapers', ['file:///a.recipe', 'lid'], ['/p/lid.takeoff.md', '/p/lid.traveller.html']);
    await answers.show('recipe.makePapers', [], null);
    assert.deepEqual(done, [['changed', 'lid.md'], ['markdown.showPreviewToSide', 'lid.md'], ['changed', 'lid changes.md'], ['markdown.showPreviewToSide', 'lid changes.md'],
      ['2 papers were written.', 'lid.traveller.html'], ['open', '/p/lid.traveller.html']]);
  } finally {
    Module._load = load;
    fs.rmSync(out);
  }
});

test('the bundle starts the program, says so when there is none, and restarts on command', async () => {
  const said = [];
  const executed = [];
  const commands = new Map();
  const nothing = () => ({ dispose() {} });
  // As much of the editor as the extension and its client touch before a document is open.
  const anything = (name) => new Proxy(function () {}, {
    get: (_, key) => (key === 'then' ? undefined : key === Symbol.toPrimitive ? () => name : anything(`${name}.${String(key)}`)),
    apply: () => anything(`${name}()`),
    construct: () => ({}),
  });
  const vscode = new Proxy({
    workspace: new Proxy({
      getConfiguration: () => ({ get: (key, value) => (key === 'path' ? '/no/such/program' : value) }),
      workspaceFolders: undefined,
      textDocuments: [],
      createFileSystemWatcher: () => ({ onDidChange: nothing, onDidCreate: nothing, onDidDelete: nothing, dispose() {} }),
    }, { get: (target, key) => target[key] ?? (key === 'workspaceFolders' ? undefined : nothing) }),
    window: new Proxy({
      showErrorMessage: async (message) => { said.push(message); },
      createOutputChannel: () => ({ append() {}, appendLine() {}, show() {}, dispose() {} }),
      visibleTextEditors: [],
      activeTextEditor: { document: { languageId: 'recipe', uri: { toString: () => 'file:///lid.recipe' } } },
      tabGroups: { all: [], onDidChangeTabs: nothing, onDidChangeTabGroups: nothing },
    }, { get: (target, key) => target[key] ?? nothing }),
    commands: { registerCommand: (name, run) => { commands.set(name, run); return nothing(); }, executeCommand: async (...command) => { executed.push(command); } },
    EventEmitter: class {
      event = nothing;
      fire() {}
      dispose() {}
    },
    version: '1.90.0',
    env: { appName: 'test', language: 'en' },
  }, { get: (target, key) => target[key] ?? anything(String(key)) });
  const load = Module._load;
  Module._load = (name, ...rest) => (name === 'vscode' ? vscode : load(name, ...rest));
  try {
    const extension = require(path.join(folder, manifest.main));
    const subscriptions = [];
    await extension.activate({ subscriptions });
    assert.ok(said.some((message) => message.includes("'/no/such/program lsp'")), JSON.stringify(said));
    assert.deepEqual([...commands.keys()], manifest.contributes.commands.map((command) => command.command));
    const before = said.length;
    await commands.get('recipe.restart')();
    assert.ok(said.length > before);
    await commands.get('recipe.openPreview')();
    assert.deepEqual(executed.at(-1), ['recipe.preview', 'file:///lid.recipe']);
    await extension.deactivate();
  } finally {
    Module._load = load;
  }
});
