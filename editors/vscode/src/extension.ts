import * as vscode from 'vscode';
import { LanguageClient, LanguageClientOptions, ServerOptions } from 'vscode-languageclient/node';
import { answers, numbersScheme } from './answers';
import { programPath } from './programPath';

let client: LanguageClient | undefined;

export async function activate(context: vscode.ExtensionContext): Promise<void> {
  context.subscriptions.push(
    vscode.commands.registerCommand('recipe.restart', restart),
    vscode.commands.registerCommand('recipe.openPreview', openPreview),
    vscode.workspace.registerTextDocumentContentProvider(numbersScheme, answers),
    vscode.workspace.onDidChangeConfiguration(async (change) => {
      if (change.affectsConfiguration('recipe.path')) {
        await restart();
      }
    }),
  );
  await start();
}

export async function deactivate(): Promise<void> {
  await stop();
}

async function restart(): Promise<void> {
  await stop();
  await start();
}

/** The server serves the page, follows what is typed, and asks to open it in the browser. */
async function openPreview(): Promise<void> {
  const document = vscode.window.activeTextEditor?.document;
  if (document?.languageId === 'recipe') {
    await vscode.commands.executeCommand('recipe.preview', document.uri.toString());
  }
}

async function stop(): Promise<void> {
  const running = client;
  client = undefined;
  await running?.dispose();
}

async function start(): Promise<void> {
  const settings = vscode.workspace.getConfiguration('recipe');
  const command = programPath(settings.get<string>('path', 'recipe'), vscode.workspace.workspaceFolders?.[0]?.uri.fsPath);
  // No transport is named: the language server speaks over stdin and stdout without being told to.
  const server: ServerOptions = { command, args: ['lsp'] };
  const options: LanguageClientOptions = {
    documentSelector: [{ language: 'recipe', scheme: 'file' }, { language: 'recipe', scheme: 'untitled' }],
    synchronize: {
      configurationSection: 'recipe',
      fileEvents: vscode.workspace.createFileSystemWatcher('**/*.recipe'),
    },
    initializationOptions: { inlayHints: settings.get('inlayHints'), documentation: settings.get('documentation') },
    middleware: {
      executeCommand: async (name, args, next) => {
        const answer: unknown = await next(name, args);
        await answers.show(name, args, answer);
        return answer;
      },
    },
  };
  client = new LanguageClient('recipe', 'Recipe', server, options);
  try {
    await client.start();
  } catch (error) {
    client = undefined;
    await explain(command, error);
  }
}

/** Colours work without the program; everything else needs it. */
async function explain(command: string, error: unknown): Promise<void> {
  const openSettings = 'Open settings';
  const answer = await vscode.window.showErrorMessage(
    `The language server could not be started: '${command} lsp' (${error instanceof Error ? error.message : String(error)}). Put recipe on the PATH or say where it is.`,
    openSettings,
  );
  if (answer === openSettings) {
    await vscode.commands.executeCommand('workbench.action.openSettings', 'recipe.path');
  }
}
