#!/usr/bin/env bash
# Makes the pictures of the workbench and of the form for the yard, as their tests see them: light, dark, and on a phone.
set -euo pipefail
cd "$(dirname "$0")/../.."
bash .ci/setup.sh test
command -v convert >/dev/null || { echo "Please install imagemagick, then run this again." >&2; exit 1; }
gallery="$PWD/docs/gallery/workbench"
work="$(mktemp -d)"
trap 'rm -rf "$work"' EXIT
dotnet build tests/ExamDocs.Workbench.Tests -c Release -v quiet --nologo
EXAMDOCS_SCREENSHOTS="$work" tests/ExamDocs.Workbench.Tests/bin/Release/net10.0/ExamDocs.Workbench.Tests --progress off >"$work/log" ||
  { cat "$work/log" >&2; exit 1; }
rm -rf "$gallery"
mkdir -p "$gallery"

cat >"$gallery/README.md" <<'TEXT'
# What the workbench looks like

Made by `bash docs/gallery/workbench.sh` while the tests run; everything in the pictures is invented. The maker's instructions, the
law of the place and the judgement of the competent person come before whatever a page says.

| page | light | dark | on a phone |
|---|---|---|---|
TEXT
small() { convert "$1" -crop "x2400+0+0" +repage -resize "$2x" -colors 64 "PNG8:$gallery/$3.png"; }
cell() { [ -f "$gallery/$1.png" ] && printf '![%s](%s.png)' "$2" "$1" || printf ' '; }
for name in $(cd "$work" && ls *.png | sed -E 's/-[0-9]+-(Light|Dark)\.png$//' | sort -u); do
  [ -f "$work/$name-1280-Light.png" ] && small "$work/$name-1280-Light.png" 640 "$name-light"
  [ -f "$work/$name-1280-Dark.png" ] && small "$work/$name-1280-Dark.png" 640 "$name-dark"
  [ -f "$work/$name-390-Light.png" ] && small "$work/$name-390-Light.png" 260 "$name-phone"
  # A page that is only tried on a phone shows its dark side there.
  [ ! -f "$work/$name-1280-Dark.png" ] && [ -f "$work/$name-390-Dark.png" ] && small "$work/$name-390-Dark.png" 260 "$name-dark"
  printf '| %s | %s | %s | %s |\n' "${name//-/ }" "$(cell "$name-light" "$name, light")" "$(cell "$name-dark" "$name, dark")" \
    "$(cell "$name-phone" "$name, on a phone")" >>"$gallery/README.md"
done
echo "The pictures are in docs/gallery/workbench/README.md."
