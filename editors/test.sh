#!/usr/bin/env bash
# Tests what is here for editors, as far as the editors are installed, and says what was skipped.
# Usage: editors/test.sh [COMMAND [ARGUMENT...]]    the command that starts the language server; else `recipe lsp` when recipe is on the PATH.
# What the tests need is installed into editors/vscode/node_modules and editors/test/node-client/node_modules. Ends with 1 when a test fails.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
status=0
skipped=()
failed=()

has() { command -v "$1" >/dev/null; }
result=$(mktemp)
parser=$(mktemp -d)
trap 'rm -rf "$result" "$parser"' EXIT
export RECIPE_TEST_RESULT=$result RECIPE_TEST_PARSER=$parser

server=("$@")
if [ ${#server[@]} -eq 0 ] && has recipe && recipe --help 2>/dev/null | grep -qE '^ +lsp\b'; then server=(recipe lsp); fi
if [ ${#server[@]} -gt 0 ]; then export RECIPE_TEST_SERVER="${server[*]}"; else unset RECIPE_TEST_SERVER; fi

run() {
  local name=$1
  shift
  echo "== $name"
  if "$@"; then echo "$name: passed"; else failed+=("$name"); status=1; fi
}

# An editor that wrote no result did not get to the end of its script.
by_result() {
  rm -f "$result"
  timeout 300 "$@" >/dev/null 2>&1 </dev/null || true
  [ -f "$result" ] || { echo "it did not end"; return 1; }
  cat "$result"
  [ ! -s "$result" ]
}

tree_sitter() {
  local grammar=grammar/tree-sitter-recipe
  mkdir -p "$parser/parser" "$parser/queries/recipe"
  cp "$grammar"/queries/*.scm "$parser/queries/recipe/"
  cc -O1 -shared -fPIC -I "$grammar/src" -o "$parser/parser/recipe.so" "$grammar/src/parser.c"
  by_result nvim --headless -u NONE -S editors/test/neovim-tree-sitter.lua
}

install_client() { (cd editors/test/node-client && { [ node_modules -nt package-lock.json ] || { npm ci --ignore-scripts >/dev/null && touch node_modules; }; }); }
vscode() {
  (cd editors/vscode && npm ci --ignore-scripts >/dev/null && npm run --silent package && node --test test/*.test.js)
}

if has node && has npm; then run "VS Code extension" vscode; else skipped+=("VS Code extension: no node or npm"); fi
if has vim; then run Vim by_result vim -es -u NONE -N -S editors/test/vim.vim; else skipped+=("Vim: not installed"); fi
if has nvim; then run "Neovim, colours" by_result nvim --headless -u NONE -S editors/test/vim.vim; else skipped+=("Neovim: not installed"); fi
if has nvim && has cc; then run "Neovim, tree-sitter" tree_sitter; else skipped+=("tree-sitter in Neovim: not installed, or no C compiler"); fi
if has kate-syntax-highlighter && has node; then run Kate editors/test/kate.sh; else skipped+=("Kate: no kate-syntax-highlighter"); fi
if has emacs; then
  run Emacs timeout 300 emacs -Q --batch -L editors/emacs -l editors/test/emacs.el
else
  skipped+=("Emacs: not installed")
fi

if [ ${#server[@]} -eq 0 ]; then
  skipped+=("language server in Neovim, Emacs and the Node client: no command given and no recipe with lsp on the PATH")
else
  if has nvim; then run "Neovim, language server" by_result nvim --headless -u NONE -S editors/test/neovim.lua; fi
  if has node && has npm && install_client; then
    run "Node client" timeout 600 node editors/test/node-client/scenario.js "${server[@]}"
  else
    skipped+=("Node client: no node or npm")
  fi
fi

skipped+=("Helix, Sublime: tried by hand or not at all")

for one in "${skipped[@]}"; do echo "skipped: $one"; done
for one in "${failed[@]}"; do echo "FAILED: $one"; done
exit "$status"
