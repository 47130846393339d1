#!/usr/bin/env bash
# build.sh: bundles CodeMirror 6 (MIT) and our own editor.source.js into ../editor.js, with the texts of all licences.
# The result is committed: whoever builds Journal needs neither node nor this script.
set -euo pipefail
here="$(cd "$(dirname "$0")" && pwd)"
work="$(mktemp -d)"
trap 'rm -rf "$work"' EXIT
cp "$here"/{package.json,package-lock.json,.npmrc,editor.source.js} "$work"
cd "$work"
npm ci --silent
esbuild=(node_modules/@esbuild/*/bin/esbuild)
"${esbuild[0]}" editor.source.js --bundle --minify --format=iife --target=es2022 --legal-comments=none --metafile=meta.json --outfile=bundle.js --log-level=warning

# One notice for each text; several packages share theirs.
node - <<'NODE' > licences.txt
const fs = require('fs');
const inputs = Object.keys(JSON.parse(fs.readFileSync('meta.json')).inputs);
const packages = [...new Set(inputs.map(file => /^node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(file)?.[1]).filter(Boolean))].sort();
const texts = new Map();
for (const name of packages) {
  const { version } = JSON.parse(fs.readFileSync(`node_modules/${name}/package.json`));
  const text = fs.readFileSync(`node_modules/${name}/LICENSE`, 'utf8').trim();
  texts.set(text, [...(texts.get(text) ?? []), `${name} ${version}`]);
}
console.log([...texts].map(([text, names]) => `${names.join(', ')}\n\n${text}`).join('\n\n----\n\n'));
NODE
{ printf '/*!\nMade by bench-template/editor/build.sh from these packages and editor.source.js.\n\n'; cat licences.txt; printf '*/\n'; cat bundle.js; } > "$here/../editor.js"
wc -c "$here/../editor.js"
