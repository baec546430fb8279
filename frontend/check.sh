#!/bin/sh
# Checks the web components: types, unit tests, and that the committed bundles are what these sources give.
# Where Node.js is missing it says so and checks nothing: the app itself runs on the committed bundles.
set -eu
cd "$(dirname "$0")"
bundles=../src/main/resources/META-INF/resources/js

for tool in node npm; do
    if ! command -v "$tool" >/dev/null 2>&1; then
        echo "Web components NOT CHECKED: $tool is not installed (Node.js 20 or newer with npm is needed)."
        exit 0
    fi
done
if ! node -e 'process.exit(Number(process.versions.node.split(".")[0]) < 20 ? 1 : 0)'; then
    echo "Web components NOT CHECKED: Node.js $(node --version) is too old (20 or newer is needed)."
    exit 0
fi

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
trap 'exit 1' HUP INT TERM

echo "Web components: installing the packages of package-lock.json"
npm ci --ignore-scripts --no-audit --no-fund --prefer-offline --loglevel=error

echo "Web components: types"
npm run --silent types

echo "Web components: unit tests"
npx --no-install esbuild test/*.test.ts --bundle --platform=node --format=esm --log-level=warning \
    --out-extension:.js=.mjs --outdir="$work/test"
node --test "$work"/test/*.test.mjs

echo "Web components: bundles"
npm run --silent bundle -- --outdir="$work/js"
for bundle in "$work"/js/*.js; do
    if ! cmp "$bundle" "$bundles/$(basename "$bundle")"; then
        echo "A committed bundle is not what the sources give: run 'npm run build' in frontend/ and commit the result." >&2
        exit 1
    fi
done
echo "Web components: checked, the committed bundles are up to date."
