#!/usr/bin/env bash
# Prints the path of a tree-sitter program: the one on the PATH, or Debian's, unpacked into grammar/tools/bin where this Debian has none
# of its own. Nothing is installed outside that folder. Ends with 1 where there is none to be had.
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
bin="$here/bin"

if command -v tree-sitter >/dev/null; then command -v tree-sitter; exit; fi
if [ -x "$bin/tree-sitter" ]; then echo "$bin/tree-sitter"; exit; fi
command -v apt-get >/dev/null && command -v dpkg >/dev/null || exit 1

# Lists and packages of the release after this one, kept apart from those of the system.
suite=trixie
mkdir -p "$bin/lists/partial" "$bin/cache/archives/partial" "$bin/sources"
: > "$bin/sources.list"
for source in /etc/apt/sources.list /etc/apt/sources.list.d/debian.sources; do
  [ -f "$source" ] || continue
  case $source in *.sources) copy="$bin/sources/debian.sources" ;; *) copy="$bin/sources.list" ;; esac
  sed -E "s/\b(bookworm|bullseye)\b/$suite/g" "$source" > "$copy"
done
options=(-o "Dir::State::lists=$bin/lists" -o "Dir::Cache=$bin/cache" -o "Dir::Etc::sourcelist=$bin/sources.list"
  -o "Dir::Etc::sourceparts=$bin/sources" -o APT::Sandbox::User=root)
{
  apt-get "${options[@]}" update
  (cd "$bin/cache" && apt-get "${options[@]}" download tree-sitter-cli libc6 libgcc-s1)
  for package in "$bin"/cache/*.deb; do dpkg -x "$package" "$bin/root"; done
} >/dev/null 2>&1 || exit 1
rm -rf "$bin/cache" "$bin/lists"

# It runs on the C library that it was built for.
libraries=$(dirname "$(find "$bin/root/usr/lib" -name 'libc.so.6' | head -n 1)")
loader=$(find "$libraries" -name 'ld-linux-*.so.*' | head -n 1)
{
  echo '#!/bin/sh'
  echo "exec '$loader' --library-path '$libraries' '$bin/root/usr/bin/tree-sitter' \"\$@\""
} > "$bin/tree-sitter"
chmod +x "$bin/tree-sitter"
"$bin/tree-sitter" --version >/dev/null 2>&1 || { rm -f "$bin/tree-sitter"; exit 1; }
echo "$bin/tree-sitter"
