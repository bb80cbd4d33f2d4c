#!/usr/bin/env bash
# Colours a sample with the engine of Kate and looks at what each piece was taken for. From the top of the repository.
set -euo pipefail
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
mkdir -p "$folder/org.kde.syntax-highlighting/syntax"
cp editors/kate/recipe.xml "$folder/org.kde.syntax-highlighting/syntax/"
cat > "$folder/a.recipe" <<'R'
part a {
  note "open
  plies { body carbon-8 +/-45 x2 }
  size (300 mm
    + lap) mm
  trim 1,5 mm
  viscosity 600 mPa.s at 25 degC   # warm
}
mould b {
R
wrong=0

trace() {
  XDG_DATA_HOME=$folder kate-syntax-highlighter -s Recipe -f ansi --syntax-trace format "$1" 2>/dev/null | sed -E 's/\x1b\[[0-9;]*[mK]//g' \
    | node editors/test/kate-trace.js "$1"
}

expect() {
  if ! grep -qxF -- "$2" <<< "$1"; then
    echo "kate: missing: $2"
    wrong=1
  fi
}

sample=$(trace samples/hatch-lid.recipe)
for line in 'Directive language' 'Number 1' 'Text "shop.recipe"' 'Declaration let' 'New lap' 'Declaration mould' 'New hatch-lid-mould' 'Line surface' \
  'Choice spherical-cap' 'Clause diameter' 'Unit mm' 'Block plies' 'Choice bagged' 'Name slow-laminating-epoxy'; do
  expect "$sample" "$line"
done
small=$(trace "$folder/a.recipe")
for line in 'Text "open' 'Block plies' 'Name body' 'Name carbon-8' 'Sign +/-' 'Number x2' 'Name lap' 'Wrong 1,5' 'Line viscosity' 'Clause at' \
  'Unit degC' 'Declaration mould' 'New b'; do
  expect "$small" "$line"
done
[ "$(grep -cx 'Unit mm' <<< "$small")" = 3 ] || { echo "kate: units in and behind parentheses"; wrong=1; }
[ "$wrong" = 0 ] && echo "kate: all is well"
exit "$wrong"
