// Bundles the extension into one file and puts the TextMate grammar beside it.
import { build } from 'esbuild';
import { copyFileSync, mkdirSync } from 'node:fs';

mkdirSync('dist', { recursive: true });
copyFileSync('../../grammar/textmate/recipe.tmLanguage.json', 'dist/recipe.tmLanguage.json');
copyFileSync('../../LICENSE', 'LICENSE');
await build({
  entryPoints: ['src/extension.ts'],
  outfile: 'dist/extension.js',
  bundle: true,
  platform: 'node',
  target: 'node20',
  format: 'cjs',
  external: ['vscode'],
  minify: true,
});
