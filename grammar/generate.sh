#!/usr/bin/env bash
# Writes the tree-sitter parser anew after its grammar.js changed, as after a new unit.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"
tree_sitter=$(tools/tree-sitter.sh) || { echo "There is no tree-sitter here."; exit 1; }
cd tree-sitter-recipe
"$tree_sitter" generate --abi 14 --no-bindings
# It leaves out the last line end.
echo >> src/node-types.json
"$tree_sitter" --version
