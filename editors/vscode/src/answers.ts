import { basename } from 'node:path';
import * as vscode from 'vscode';

/** Documents with the figures of a part: shown, never saved. */
export const numbersScheme = 'recipe-numbers';

/** Shows what the commands behind the lines above a part answer: its figures, what changed, or the papers that were written. */
class Answers implements vscode.TextDocumentContentProvider {
  private readonly texts = new Map<string, string>();
  private readonly changed = new vscode.EventEmitter<vscode.Uri>();
  readonly onDidChange = this.changed.event;

  provideTextDocumentContent(uri: vscode.Uri): string {
    return this.texts.get(uri.path) ?? '';
  }

  async show(command: string, args: unknown[], answer: unknown): Promise<void> {
    if (!Array.isArray(answer) || !answer.every((item) => typeof item === 'string')) {
      return;
    }
    if (command === 'recipe.showNumbers') {
      await this.showPage(String(args[1]), answer.join('\n'));
    } else if (command === 'recipe.compare') {
      await this.showPage(`${String(args[1])} changes`, answer.join('\n'));
    } else if (command === 'recipe.makePapers') {
      await this.offerPapers(answer);
    }
  }

  private async showPage(name: string, markdown: string): Promise<void> {
    const uri = vscode.Uri.from({ scheme: numbersScheme, path: `${name}.md` });
    this.texts.set(uri.path, markdown);
    this.changed.fire(uri);
    await vscode.commands.executeCommand('markdown.showPreviewToSide', uri);
  }

  private async offerPapers(paths: string[]): Promise<void> {
    const pages = paths.filter((path) => path.endsWith('.html'));
    const names = pages.map((path) => basename(path));
    const chosen = await vscode.window.showInformationMessage(`${paths.length} papers were written.`, ...names);
    const page = chosen === undefined ? undefined : pages[names.indexOf(chosen)];
    if (page !== undefined) {
      await vscode.env.openExternal(vscode.Uri.file(page));
    }
  }
}

export const answers = new Answers();
