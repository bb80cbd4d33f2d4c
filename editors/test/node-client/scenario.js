// Usage: node scenario.js COMMAND [ARGUMENT...]    for example: node scenario.js recipe lsp
// Opens a copy of a sample, breaks it, mends it with a quick fix, and asks for everything an editor asks for. Ends with 1 when an
// answer is not what it must be.
'use strict';
const assert = require('node:assert/strict');
const fs = require('node:fs');
const os = require('node:os');
const path = require('node:path');
const { pathToFileURL } = require('node:url');
const { Session, within } = require('./session');
const { applyEdits, editsOf, offsetAt, rangeOf, textIn } = require('./text');

const command = process.argv.slice(2);
if (command.length === 0) {
  console.error('Usage: node scenario.js COMMAND [ARGUMENT...]');
  process.exit(2);
}

const ERROR = 1;
const samples = path.join(__dirname, '..', '..', '..', 'samples');
const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'recipe-client-'));
for (const name of ['shop.recipe', 'hatch-lid.recipe']) {
  fs.copyFileSync(path.join(samples, name), path.join(folder, name));
}
const file = path.join(folder, 'hatch-lid.recipe');
const uri = pathToFileURL(file).href;
const textDocument = { uri };
const original = fs.readFileSync(file, 'utf8').replaceAll('\r\n', '\n');
const session = new Session(command);
let text = original;
let version = 1;
let capabilities;

const errorsOf = (diagnostics) => diagnostics.filter((one) => one.severity === ERROR || one.severity === undefined);

/** Replaces one stretch, as typing does. */
async function edit(range, newText) {
  text = applyEdits(text, [{ range, newText }]);
  version++;
  const sync = capabilities.textDocumentSync;
  const isIncremental = (typeof sync === 'number' ? sync : sync.change) === 2;
  await session.tell('textDocument/didChange', {
    textDocument: { uri, version },
    contentChanges: [isIncremental ? { range, text: newText } : { text }],
  });
}

const whole = () => ({ start: { line: 0, character: 0 }, end: { line: text.split('\n').length, character: 0 } });
const labels = (hints) => hints.map((hint) => (typeof hint.label === 'string' ? hint.label : hint.label.map((part) => part.value).join('')));

const steps = {
  async initialize() {
    const result = await session.ask('initialize', {
      processId: process.pid,
      clientInfo: { name: 'node-client' },
      rootUri: pathToFileURL(folder).href,
      workspaceFolders: [{ uri: pathToFileURL(folder).href, name: 'recipes' }],
      initializationOptions: {},
      capabilities: {
        general: { positionEncodings: ['utf-16'] },
        textDocument: {
          synchronization: { didSave: true },
          publishDiagnostics: { relatedInformation: true, versionSupport: true },
          hover: { contentFormat: ['markdown', 'plaintext'] },
          completion: { completionItem: { snippetSupport: false } },
          rename: { prepareSupport: true },
          codeAction: {
            codeActionLiteralSupport: { codeActionKind: { valueSet: ['', 'quickfix', 'refactor', 'source'] } },
            resolveSupport: { properties: ['edit'] },
            dataSupport: true,
          },
          semanticTokens: { requests: { full: true, range: true }, tokenTypes: [], tokenModifiers: [], formats: ['relative'] },
          inlayHint: {},
          documentSymbol: { hierarchicalDocumentSymbolSupport: true },
        },
        workspace: { configuration: true, didChangeConfiguration: {}, workspaceFolders: true, workspaceEdit: { documentChanges: true } },
      },
    });
    capabilities = result.capabilities;
    for (const one of ['textDocumentSync', 'hoverProvider', 'completionProvider', 'renameProvider', 'documentFormattingProvider', 'codeActionProvider',
      'semanticTokensProvider', 'inlayHintProvider']) {
      assert.ok(capabilities[one], `${one} is missing in ${JSON.stringify(capabilities)}`);
    }
    assert.ok([undefined, 'utf-16'].includes(capabilities.positionEncoding), 'only utf-16 was offered');
    await session.tell('initialized', {});
  },

  async 'open: a sound recipe has no error'() {
    await session.tell('textDocument/didOpen', { textDocument: { uri, languageId: 'recipe', version, text } });
    const diagnostics = await session.diagnosed(uri, version, () => true, 'of the recipe that was opened');
    assert.deepEqual(errorsOf(diagnostics), []);
  },

  async 'break: the finding stands at the word'() {
    await edit(rangeOf(text, 'bagged'), 'baged');
    const broken = rangeOf(text, 'baged');
    const diagnostics = await session.diagnosed(uri, version, (all) => errorsOf(all).length > 0, 'of the broken recipe');
    const one = errorsOf(diagnostics).find((diagnostic) => diagnostic.range.start.line === broken.start.line);
    assert.ok(one, JSON.stringify(diagnostics));
    assert.equal(textIn(text, one.range), 'baged');
    assert.match(String(one.code), /^RC\d{4}$/);
    assert.ok(one.message.length > 10);
  },

  async 'code action: the fix gives back the text'() {
    const range = rangeOf(text, 'baged');
    const here = session.diagnostics.get(uri).diagnostics.filter((one) => one.range.start.line === range.start.line);
    const actions = await session.ask('textDocument/codeAction', { textDocument, range, context: { diagnostics: here, only: ['quickfix'] } });
    const fixes = [];
    for (const action of actions ?? []) {
      const full = action.edit || !capabilities.codeActionProvider.resolveProvider ? action : await session.ask('codeAction/resolve', action);
      if (full.edit) {
        fixes.push(full);
      }
    }
    const fix = fixes.find((one) => applyEdits(text, editsOf(one.edit, uri)) === original);
    assert.ok(fix, `no fix mends it: ${JSON.stringify(actions)}`);
    assert.match(fix.kind ?? 'quickfix', /^quickfix/);
  },

  async 'fix: the error goes'() {
    await edit(rangeOf(text, 'baged'), 'bagged');
    assert.equal(text, original);
    const diagnostics = await session.diagnosed(uri, version, (all) => errorsOf(all).length === 0, 'of the mended recipe');
    assert.deepEqual(errorsOf(diagnostics), []);
  },

  async 'positions are counted in UTF-16'() {
    const end = rangeOf(text, 'language 1').end;
    await edit({ start: end, end }, '\nuse "\u{1F6F6}.recipe" \u00a7\u00a7');
    const bad = rangeOf(text, '\u00a7\u00a7');
    const diagnostics = await session.diagnosed(uri, version, (all) => all.some((one) => one.range.start.line === bad.start.line), 'of the bad characters');
    assert.ok(diagnostics.some((one) => textIn(text, one.range) === '\u00a7\u00a7'), JSON.stringify(diagnostics.filter((one) => one.range.start.line === 1)));
    await edit({ start: end, end: bad.end }, '');
    await session.diagnosed(uri, version, (all) => errorsOf(all).length === 0, 'of the mended recipe');
  },

  async 'hover: a material says what it is'() {
    const hover = await session.ask('textDocument/hover', { textDocument, position: rangeOf(text, 'slow-laminating-epoxy').start });
    assert.ok(hover, 'there is no hover');
    const shown = typeof hover.contents === 'string' ? hover.contents : hover.contents.value ?? hover.contents.map((part) => part.value ?? part).join('\n');
    assert.match(shown, /epoxy/i);
    if (hover.range) {
      assert.equal(textIn(text, hover.range), 'slow-laminating-epoxy');
    }
    const nothing = await session.ask('textDocument/hover', { textDocument, position: { line: 3, character: 0 } });
    assert.equal(nothing, null);
  },

  async 'complete: the words that fit'() {
    const at = rangeOf(text, 'bagged').start;
    const answer = await session.ask('textDocument/completion', { textDocument, position: at });
    const words = (answer.items ?? answer).map((item) => item.label);
    for (const word of ['hand', 'bagged', 'infused', 'prepreg']) {
      assert.ok(words.includes(word), `'${word}' is not among ${words.slice(0, 40)}`);
    }
    assert.ok(!words.includes('cosmetic'), 'words of another line are offered');
  },

  async 'rename: every use and nothing else'() {
    const position = rangeOf(text, 'hatch-lid-mould').start;
    if (capabilities.renameProvider.prepareProvider) {
      const prepared = await session.ask('textDocument/prepareRename', { textDocument, position });
      assert.equal(textIn(text, prepared.range ?? prepared), 'hatch-lid-mould');
    }
    const changes = await session.ask('textDocument/rename', { textDocument, position, newName: 'lid-shell' });
    const renamed = applyEdits(text, editsOf(changes, uri));
    assert.equal(renamed, text.replaceAll('hatch-lid-mould', 'lid-shell'));
    const refused = await session.ask('textDocument/rename', { textDocument, position, newName: '5 mm' }).then((edit_) => edit_ === null, () => true);
    assert.ok(refused, 'a name that is none is taken');
  },

  async 'format: the one layout, and nothing to do the second time'() {
    const options = { tabSize: 2, insertSpaces: true };
    assert.equal(applyEdits(text, (await session.ask('textDocument/formatting', { textDocument, options })) ?? []), original);
    await edit(whole(), original.replace(/^ {2}process +bagged/m, '\tprocess bagged').replace('let lap = 15 mm', 'let   lap=15mm'));
    assert.notEqual(text, original);
    const edits = await session.ask('textDocument/formatting', { textDocument, options });
    assert.equal(applyEdits(text, edits), original);
    await edit(whole(), original);
  },

  async 'semantic tokens: legend and places'() {
    const { legend } = capabilities.semanticTokensProvider;
    const { data } = await session.ask('textDocument/semanticTokens/full', { textDocument });
    assert.ok(data.length >= 500 && data.length % 5 === 0, `${data.length} figures`);
    let line = 0;
    let character = 0;
    const lines = text.split('\n');
    const tokens = [];
    for (let i = 0; i < data.length; i += 5) {
      character = data[i] === 0 ? character + data[i + 1] : data[i + 1];
      line += data[i];
      assert.ok(data[i + 2] > 0 && character + data[i + 2] <= lines[line].length, `a token runs past its line ${line}`);
      assert.ok(data[i + 3] < legend.tokenTypes.length, 'a type is not in the legend');
      tokens.push({ piece: lines[line].slice(character, character + data[i + 2]), type: legend.tokenTypes[data[i + 3]], line });
    }
    assert.equal(tokens[0].piece, 'language');
    assert.equal(tokens.find((token) => token.line === 0 && token.piece === '1')?.type, 'number');
    assert.equal(tokens.find((token) => token.piece.startsWith('#'))?.type, 'comment');
    assert.equal(tokens.find((token) => token.piece === '"shop.recipe"')?.type, 'string');
  },

  async 'inlay hints: figures in the range that was asked for'() {
    const hints = await session.ask('textDocument/inlayHint', { textDocument, range: whole() });
    assert.ok(hints.length >= 5, `${hints.length} hints`);
    assert.ok(labels(hints).every((label) => label.trim().length > 0));
    const plies = rangeOf(text, 'plies');
    const { start } = plies;
    const above = await session.ask('textDocument/inlayHint', { textDocument, range: { start: { line: 0, character: 0 }, end: start } });
    assert.ok(above.length < hints.length && above.every((hint) => hint.position.line <= start.line), JSON.stringify(above));
    session.settings = { recipe: { inlayHints: { thickness: false, resin: false, clock: false, pressure: false, cure: false } } };
    await session.tell('workspace/didChangeConfiguration', { settings: session.settings });
    let left = hints;
    for (let i = 0; i < 50 && left.length > 0; i++) {
      left = await session.ask('textDocument/inlayHint', { textDocument, range: whole() });
    }
    assert.deepEqual(labels(left), [], 'hints that are switched off');
  },

  async 'what else it offers can be asked'() {
    const position = rangeOf(text, 'hatch-lid-mould', 1).start;
    if (capabilities.definitionProvider) {
      const found = [(await session.ask('textDocument/definition', { textDocument, position }))].flat()[0];
      assert.equal(offsetAt(text, (found.targetSelectionRange ?? found.range).start), text.indexOf('hatch-lid-mould'));
    }
    if (capabilities.referencesProvider) {
      const found = await session.ask('textDocument/references', { textDocument, position, context: { includeDeclaration: true } });
      assert.equal(found.length, text.split('hatch-lid-mould').length - 1);
    }
    if (capabilities.documentSymbolProvider) {
      const found = await session.ask('textDocument/documentSymbol', { textDocument });
      assert.ok(found.some((symbol) => symbol.name.includes('hatch-lid')), JSON.stringify(found).slice(0, 300));
    }
    if (capabilities.foldingRangeProvider) {
      const found = await session.ask('textDocument/foldingRange', { textDocument });
      assert.ok(found.length >= 5 && found.every((range) => range.endLine > range.startLine));
    }
  },

  async 'nothing breaks it: a text cut anywhere, and a method that it does not know'() {
    for (const share of [0.9, 0.5, 0.3, 0.1, 0]) {
      await edit(whole(), original.slice(0, Math.floor(original.length * share)));
      await session.ask('textDocument/semanticTokens/full', { textDocument });
    }
    const refused = await session.ask('recipe/noSuchMethod', {}).then(() => undefined, (error) => error);
    assert.equal(refused?.code, -32601);
    await edit(whole(), original);
    await session.diagnosed(uri, version, (all) => errorsOf(all).length === 0, 'of the whole recipe');
  },

  async 'close: the diagnostics go'() {
    await session.tell('textDocument/didClose', { textDocument });
    await session.diagnosed(uri, 0, (all) => all.length === 0, 'of the recipe that was closed');
  },

  async 'shutdown and exit'() {
    assert.equal(await session.ask('shutdown'), null);
    await session.tell('exit');
    assert.equal(await within(session.ended, 'the end of the program'), 0);
    assert.equal(session.errors, '');
  },
};

(async () => {
  let failed = 0;
  let passed = 0;
  for (const [name, step] of Object.entries(steps)) {
    try {
      await step();
      passed++;
      console.log(`ok      ${name}`);
    } catch (error) {
      failed++;
      console.log(`FAILED  ${name}\n        ${String(error.stack ?? error).replaceAll('\n', '\n        ')}`);
      if (!capabilities) {
        console.log('        it goes no further');
        break;
      }
    }
  }
  session.process.kill();
  fs.rmSync(folder, { recursive: true, force: true });
  if (session.errors) {
    console.log(`It said on stderr:\n${session.errors}`);
  }
  console.log(`${passed} passed, ${failed} failed`);
  process.exit(failed === 0 ? 0 : 1);
})();
