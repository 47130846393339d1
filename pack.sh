#!/usr/bin/env bash
# Makes the tool package and a self-contained archive for each system, into the folder named (default: packages).
# For the system that this runs on the program is compiled ahead of time as a whole, where a linker (clang or gcc) is at
# hand; for the others it carries the runtime with it.
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

publish() { # system, folder, further properties
  rm -rf "$2"
  dotnet publish "$project" -c Release -r "$1" -p:PackAsTool=false -p:DebugType=none -o "$2" -v q -nologo "${@:3}" >"$work/log" 2>&1
}

here=$(dotnet --info | sed -n 's/^ *RID: *//p')
made=() native=() missed=()
for system in $systems; do
  # Each in a copy of its own, so that one system's leftovers are never packed for another.
  out="$work/$system/journal"
  if { [ "$system" = "$here" ] && publish "$system" "$out" -p:Native=true && native+=("$system"); } ||
    publish "$system" "$out" --self-contained -p:PublishSingleFile=true; then
    rm -f "$out"/*.xml "$out"/*.dbg
    cp LICENSE README.md "$out/"
    tar -C "$work/$system" -czf "$to/journal-$system.tar.gz" journal
    made+=("$system")
  else
    missed+=("$system")
    echo "$system: $(grep -oE "error [A-Za-z0-9]+: .*" "$work/log" | head -n 1 | sed 's/ in source(s).*//; s/ \[.*//')" >&2
  fi
done

ls -1 "$to"
echo "Made for: ${made[*]:-none}. Compiled ahead of time as a whole: ${native[*]:-none}."
[ "${#missed[@]}" -eq 0 ] || echo "Could not be made for: ${missed[*]}."
