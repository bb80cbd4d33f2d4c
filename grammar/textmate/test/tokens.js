// Cuts lines into tokens the way editors do, with the engine that they use.
'use strict';
const fs = require('node:fs');
const path = require('node:path');
const oniguruma = require('vscode-oniguruma');
const textmate = require('vscode-textmate');

const grammarPath = path.join(__dirname, '..', 'recipe.tmLanguage.json');

async function loadGrammar() {
  const wasm = fs.readFileSync(path.join(path.dirname(require.resolve('vscode-oniguruma')), 'onig.wasm'));
  await oniguruma.loadWASM(wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.byteLength));
  const registry = new textmate.Registry({
    onigLib: Promise.resolve({
      createOnigScanner: (patterns) => new oniguruma.OnigScanner(patterns),
      createOnigString: (text) => new oniguruma.OnigString(text),
    }),
    loadGrammar: async () => textmate.parseRawGrammar(fs.readFileSync(grammarPath, 'utf8'), grammarPath),
  });
  return registry.loadGrammar('source.recipe');
}

/** Tokens of a text: its piece, its scopes without the root, and the line. Blanks without a scope of their own are left out. */
function tokensOf(grammar, text) {
  let state = textmate.INITIAL;
  const tokens = [];
  text.split(/\r\n|\r|\n/).forEach((line, number) => {
    const result = grammar.tokenizeLine(line, state);
    state = result.ruleStack;
    for (const token of result.tokens) {
      const piece = line.slice(token.startIndex, token.endIndex);
      const scopes = token.scopes.slice(1);
      if (piece.trim() !== '' || scopes.length > 0) {
        tokens.push({ piece, scopes, line: number });
      }
    }
  });
  return tokens;
}

module.exports = { loadGrammar, tokensOf };
