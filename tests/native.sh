#!/usr/bin/env bash
# Compiles the program ahead of time, as pack.sh ships it for this system, and holds it against the one that is built as
# usual: all it says of the demonstration, all its pages, and the tests that start the program.
set -eu
cd "$(dirname "$0")/.."
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 MSBUILDDISABLENODEREUSE=1
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
chmod 755 "$work" # Some tests start it as another user.
system=$(dotnet --info | sed -n 's/^ *RID: *//p')
dotnet publish src/Journal.Cli -c Release -r "$system" -p:Native=true -p:PackAsTool=false -p:DebugType=none -o "$work/native" -v q -nologo
dotnet build src/Journal.Cli -c Release -o "$work/usual" -v q -nologo >"$work/log" || { cat "$work/log"; exit 1; }
ls -l "$work/native/journal"

says() { # program: all that it says of the demonstration
  for words in check next hours timeline lessons "lessons --for boring" tooling costs readings settings "estimate bench-shaper" "estimate toolmakers-vice"; do
    for format in table csv json; do
      echo "== $words, $format"
      "$1" $words --format $format --in journal --today 2026-11-25 2>&1 || echo "ended with $?"
    done
  done
  for command in $("$1" --help | sed -n 's/^  journal \([a-z-]*\) .*/\1/p' | sort -u) completions; do
    "$1" "$command" --help 2>&1 || echo "ended with $?"
  done
}
for program in native usual; do
  says "$work/$program/journal" >"$work/$program.said"
  JOURNAL_CACHE="$work/$program.cache" "$work/$program/journal" publish --in journal --to "$work/$program.site" --today 2026-11-25 >/dev/null
done
diff "$work/native.said" "$work/usual.said"
# What a processor can do decides the last bit of a pixel, and pictures are named by what they were made from.
diff -r --exclude=photos --exclude=.published-site.json "$work/native.site" "$work/usual.site"
diff <(ls "$work/native.site/photos") <(ls "$work/usual.site/photos")
echo "It says the same in $(wc -l <"$work/native.said") lines, and publishes the same in $(find "$work/native.site" -type f | wc -l) files."

JOURNAL_PROGRAM="$work/native/journal" dotnet test tests/Journal.Cli.Tests -v q -nologo
