#!/usr/bin/env bash
# Makes the tool package and a self-contained archive for each system, into the folder named (default: packages).
# What cannot be made, for want of a runtime pack, is said at the end; the rest is made all the same.
set -u
cd "$(dirname "$0")"
to=$(mkdir -p "${1:-packages}" && cd "${1:-packages}" && pwd)
systems=${2:-linux-x64 linux-arm64 osx-x64 osx-arm64 win-x64 win-arm64}
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 MSBUILDDISABLENODEREUSE=1
project=src/Journal.Cli/Journal.Cli.csproj
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

if ! dotnet pack "$project" -c Release -o "$to" -v q -nologo >"$work/log" 2>&1; then
  grep -E "error" "$work/log" | sort -u | head -20 >&2
  echo "The tool package could not be made." >&2
  exit 1
fi

made=() missed=()
for system in $systems; do
  # Each in a copy of its own, so that one system's leftovers are never packed for another.
  out="$work/$system/journal"
  if dotnet publish "$project" -c Release -r "$system" --self-contained -p:PublishSingleFile=true -p:PackAsTool=false \
    -p:DebugType=none -o "$out" -v q -nologo >"$work/log" 2>&1; then
    rm -f "$out"/*.xml
    cp LICENSE README.md "$out/"
    tar -C "$work/$system" -czf "$to/journal-$system.tar.gz" journal
    made+=("$system")
  else
    missed+=("$system")
    echo "$system: $(grep -oE "error [A-Za-z0-9]+: .*" "$work/log" | head -n 1 | sed 's/ in source(s).*//; s/ \[.*//')" >&2
  fi
done

ls -1 "$to"
echo "Made for: ${made[*]:-none}."
[ "${#missed[@]}" -eq 0 ] || echo "Could not be made for: ${missed[*]}."
