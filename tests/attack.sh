#!/usr/bin/env bash
# Attacks the program from a seed for a given time and prints how often it was tried and how often it failed, by kind.
#   bash tests/attack.sh [minutes] [seed]        20 minutes and today's date where nothing is said
# Each kind is a test of the suite, which runs a short form of it; here it gets more tries and a new seed each round. What
# failed is kept in tests/.attacks, with the seed and the input: the same seed finds it again.
set -u
cd "$(dirname "$0")/.."
minutes=${1:-20} seed=${2:-$(date +%Y%m%d)}
kept=tests/.attacks/$seed
ends=$(($(date +%s) + minutes * 60))
mkdir -p "$kept"

# kind | project | tests | the variable for how many | how many a round | what one of them is
kinds="
files|Journal.Core.Tests|FullyQualifiedName~FuzzTests|JOURNAL_FUZZ|8000|journals with a damaged file, read
commands|Journal.Cli.Tests|FullyQualifiedName~CommandFuzz|JOURNAL_FUZZ_COMMANDS|100|journals with a damaged file, asked every command
texts|Journal.Site.Tests|FullyQualifiedName~PublishFuzz|JOURNAL_PUBLISH_FUZZ|800|hostile texts, published
pictures|Journal.Site.Tests|FullyQualifiedName~PictureReader|JOURNAL_PICTURES|1|rounds of damaged pictures of every format
edits|Journal.Site.Tests|FullyQualifiedName~RandomEdits|JOURNAL_EDITS|10|random edits, published again and held against a clean publish
kills|Journal.Cli.Tests|FullyQualifiedName~Killed|JOURNAL_ROUNDS|1|rounds of kills while writing, publishing and sending
power|Journal.Cli.Tests|FullyQualifiedName~PowerCut||1|rounds of power cuts at every moment of every writing command
saves|Journal.Cli.Tests|FullyQualifiedName~SavedWhile||1|rounds of an editor that saves while a command adds
previews|Journal.Browser.Tests|FullyQualifiedName~Preview||1|rounds of hostile requests to the preview
servers|Journal.Site.Tests|FullyQualifiedName~Sending||1|rounds of hostile servers and changed host keys
"

dotnet build Journal.sln -v q -nologo >"$kept/build" 2>&1 || { grep error "$kept/build" | head; exit 1; }
declare -A tries failures
round=0
while [ "$(date +%s)" -lt "$ends" ]; do
  while IFS='|' read -r kind project filter variable count what; do
    [ -n "$kind" ] && [ "$(date +%s)" -lt "$ends" ] || continue
    this=$((seed + round))
    log=$kept/$kind-$this
    env ${variable:+"$variable=$count"} JOURNAL_FUZZ_SEED=$this dotnet test "tests/$project" --no-build -nologo --filter "$filter" --logger "console;verbosity=minimal" >"$log" 2>&1
    status=$?
    tries[$kind]=$((${tries[$kind]:-0} + count))
    if [ $status -eq 0 ]; then rm "$log"; else failures[$kind]=$((${failures[$kind]:-0} + 1)); fi
  done <<<"$kinds"
  round=$((round + 1))
done

printf '%-10s %9s %9s  %s\n' kind tries failures "one try is one of"
failed=0
while IFS='|' read -r kind project filter variable count what; do
  [ -n "$kind" ] || continue
  printf '%-10s %9s %9s  %s\n' "$kind" "${tries[$kind]:-0}" "${failures[$kind]:-0}" "$what"
  failed=$((failed + ${failures[$kind]:-0}))
done <<<"$kinds"
rmdir "$kept" 2>/dev/null
echo "Seed $seed, $round rounds, $failed failures${failed:+; what failed is kept in $kept}."
[ "$failed" -eq 0 ]
