// One conversation with a language server over its stdin and stdout.
'use strict';
const { spawn } = require('node:child_process');
const { createProtocolConnection, StreamMessageReader, StreamMessageWriter } = require('vscode-languageserver-protocol/node');

const PATIENCE = 30_000;

function within(promise, what, patience = PATIENCE) {
  let timer;
  const late = new Promise((_, reject) => {
    timer = setTimeout(() => reject(new Error(`nothing came within ${patience} ms: ${what}`)), patience);
  });
  return Promise.race([promise, late]).finally(() => clearTimeout(timer));
}

class Session {
  constructor(command) {
    this.process = spawn(command[0], command.slice(1), { stdio: ['pipe', 'pipe', 'pipe'] });
    this.errors = '';
    this.settings = {};
    this.diagnostics = new Map();
    this.waiters = new Set();
    this.process.stderr.on('data', (data) => {
      this.errors += data;
    });
    this.ended = new Promise((resolve) => this.process.once('exit', (code, signal) => resolve(code ?? signal)));
    this.failed = new Promise((_, reject) => this.process.once('error', reject));
    this.failed.catch(() => {});
    this.connection = createProtocolConnection(new StreamMessageReader(this.process.stdout), new StreamMessageWriter(this.process.stdin));
    this.connection.onNotification('textDocument/publishDiagnostics', (params) => {
      this.diagnostics.set(params.uri, params);
      for (const waiter of [...this.waiters]) {
        waiter();
      }
    });
    this.connection.onRequest('workspace/configuration', ({ items }) =>
      items.map(({ section }) => (section ?? '').split('.').filter(Boolean).reduce((value, key) => value?.[key], this.settings) ?? null));
    for (const method of ['client/registerCapability', 'client/unregisterCapability', 'window/workDoneProgress/create', 'workspace/inlayHint/refresh',
      'workspace/semanticTokens/refresh', 'workspace/codeLens/refresh', 'workspace/diagnostic/refresh']) {
      this.connection.onRequest(method, () => null);
    }
    this.connection.listen();
  }

  ask(method, params) {
    const died = this.ended.then((status) => Promise.reject(new Error(`the program ended with ${status} before it answered: ${method}`)));
    return within(Promise.race([this.connection.sendRequest(method, params), this.failed, died]), method);
  }

  tell(method, params) {
    return this.connection.sendNotification(method, params);
  }

  /** The diagnostics of a document, once they fit: those of the version asked for, or any later ones. */
  diagnosed(uri, version, fits, what) {
    return within(new Promise((resolve) => {
      const look = () => {
        const last = this.diagnostics.get(uri);
        if (last && (last.version === undefined || last.version === null || last.version >= version) && fits(last.diagnostics)) {
          this.waiters.delete(look);
          resolve(last.diagnostics);
        }
      };
      this.waiters.add(look);
      look();
    }), `diagnostics: ${what}`).catch((error) => {
      throw new Error(`${error.message}; the last were ${JSON.stringify(this.diagnostics.get(uri))}`);
    });
  }
}

module.exports = { Session, within };
