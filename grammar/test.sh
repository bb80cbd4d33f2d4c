#!/usr/bin/env bash
# Tests the grammars for editors: TextMate and tree-sitter. What the tests need is installed into this folder (node_modules, tools/bin).
# Ends with 1 when a test fails. Where a tool is missing its tests are skipped, and that is said; CI=true makes it a failure.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"
status=0
skip() { echo "skipped: $1"; if [ "${CI:-}" = true ]; then status=1; fi; }

if ! command -v node >/dev/null || ! command -v npm >/dev/null; then
  skip "all: node and npm are needed"
  exit "$status"
fi
[ -d node_modules ] && [ node_modules -nt package-lock.json ] || { npm ci --ignore-scripts >/dev/null && touch node_modules; }

echo "== TextMate"
node --test --test-reporter=spec textmate/test/*.test.js || status=1

echo "== tree-sitter"
if ! command -v cc >/dev/null || ! tree_sitter=$(tools/tree-sitter.sh); then
  skip "tree-sitter: a C compiler and tree-sitter are needed"
  exit "$status"
fi
TREE_SITTER=$tree_sitter node --test --test-reporter=spec tree-sitter-recipe/test/*.test.js || status=1
exit "$status"
