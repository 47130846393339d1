#!/usr/bin/env bash
# Attacks the program from a seed for a given time and prints how often each kind was tried and how often it failed.
#   bash tests/attack.sh [minutes] [seed]        default: 20 minutes, today's date
# Each kind is a test of the suite, which runs a short form of it. Here it gets more tries and another seed each round. The log of
# what failed is kept in tests/.attacks, with the seed and the input: the same seed finds it again.
set -u
if [ -z "${JOURNAL_HEARS:-}" ] && env --default-signal=INT true 2>/dev/null; then
  exec env --default-signal=INT JOURNAL_HEARS=yes bash "$0" "$@"
fi
cd "$(dirname "$0")/.."
minutes=${1:-20} seed=${2:-$(date +%Y%m%d)}
kept=$PWD/tests/.attacks/$seed
ends=$(($(date +%s) + minutes * 60))
mkdir -p "$kept"
export JOURNAL_KILLS=all JOURNAL_TRIES=$kept/tries
: >"$JOURNAL_TRIES"

# kind | project | tests | variable | tries a round
kinds="
files|Journal.Core.Tests|Parsing.FuzzTests|JOURNAL_FUZZ|20000
commands|Journal.Cli.Tests|CommandFuzz|JOURNAL_FUZZ_COMMANDS|60
texts|Journal.Site.Tests|PublishFuzz|JOURNAL_PUBLISH_FUZZ|1600
pictures|Journal.Site.Tests|PictureReaderTest|JOURNAL_NOTHING|1
edits|Journal.Site.Tests|RandomEditsTests|JOURNAL_EDITS|10
kills|Journal.Cli.Tests|Killed|JOURNAL_NOTHING|1
kills|Journal.Site.Tests|InterruptedSend|JOURNAL_NOTHING|1
power|Journal.Cli.Tests|PowerCut|JOURNAL_NOTHING|1
saves|Journal.Cli.Tests|SavedWhile|JOURNAL_NOTHING|1
cache|Journal.Site.Tests|PhotoStageTest|JOURNAL_NOTHING|1
servers|Journal.Site.Tests|Sending&FullyQualifiedName!~InterruptedSend|JOURNAL_NOTHING|1
secrets|Journal.Cli.Tests|Secret|JOURNAL_NOTHING|1
previews|Journal.Browser.Tests|PreviewTests|JOURNAL_NOTHING|1
"

dotnet build Journal.sln -v q -nologo -p:Optimize=true >"$kept/build" 2>&1 || { grep error "$kept/build" | head; exit 1; }
rm "$kept/build"
declare -A failures runs
round=0
while [ "$(date +%s)" -lt "$ends" ]; do
  while IFS='|' read -r kind project filter variable count; do
    [ -n "$kind" ] && [ "$(date +%s)" -lt "$ends" ] || continue
    log=$kept/$kind-$project-$((seed + round))
    env "$variable=$count" JOURNAL_FUZZ_SEED=$((seed + round)) timeout --signal=KILL 900 \
      dotnet test "tests/$project" --no-build -nologo --filter "FullyQualifiedName~$filter" --logger "console;verbosity=minimal" >"$log" 2>&1
    status=$?
    passed=$(sed -nE 's/.*Passed: +([0-9]+).*/\1/p' "$log" | tail -n 1)
    runs[$kind]=$((${runs[$kind]:-0} + ${passed:-0}))
    if [ $status -eq 0 ] && [ "${passed:-0}" -gt 0 ]; then rm "$log"; else failures[$kind]=$((${failures[$kind]:-0} + 1)); fi
  done <<<"$kinds"
  round=$((round + 1))
done

printf '%-10s %9s %9s %9s\n' kind tries tests failures
failed=0
for kind in $(cut -d '|' -f 1 <<<"$kinds" | uniq); do
  tries=$(awk -v kind="$kind" '$1 == kind { sum += $2 } END { print sum + 0 }' "$JOURNAL_TRIES")
  printf '%-10s %9s %9s %9s\n' "$kind" "$tries" "${runs[$kind]:-0}" "${failures[$kind]:-0}"
  failed=$((failed + ${failures[$kind]:-0}))
done
echo "Seed $seed, $round rounds, $failed failures."
[ "$failed" -eq 0 ] || echo "The logs of what failed: $kept"
[ "$failed" -eq 0 ]
