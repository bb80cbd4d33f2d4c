#!/usr/bin/env bash
# Makes recipe.vsix: code --install-extension editors/vscode/recipe.vsix
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"
npm ci --ignore-scripts
npm run package
ls -l recipe.vsix
