#!/usr/bin/env bash
# Uses what package.sh made as its users will: no SDK, no environment of the developer's, another home. Usage: try.sh FOLDER
# It says what went well, stops at the first thing that does not, and ends with: N passed.
set -euo pipefail
cd "$(dirname "$0")/../.."
made="$(cd "${1:?name the folder that package.sh made}" && pwd)"
version="$(sed -n 's|.*<Version>\(.*\)</Version>.*|\1|p' Directory.Build.props)"
architecture="$(dpkg --print-architecture)"
system="$([ "$architecture" = arm64 ] && echo linux-arm64 || echo linux-x64)"
for program in pdffonts pdftotext curl python3; do
  command -v "$program" >/dev/null || { echo "Please install $program, then run this again." >&2; exit 1; }
done
work="$(mktemp -d)"
pages=""
trap '[ -z "$pages" ] || kill "$pages" 2>/dev/null || true; rm -rf "$work"' EXIT
passed=0
good() { passed=$((passed + 1)); echo "ok: $*"; }
bad() { echo "FAILED: $*" >&2; exit 1; }

# How a program is run: by nothing but a shell on the PATH, which starts the browser, and with a home of its own. Where root may, the
# runtime that is installed here is hidden as well, wherever its usual places are.
mkdir -p "$work/bin"
ln -s "$(command -v sh)" "$work/bin/sh"
cat >"$work/hidden" <<'SH'
for d in /usr/share/dotnet /usr/lib/dotnet /usr/local/share/dotnet /etc/dotnet; do [ ! -d "$d" ] || mount -t tmpfs none "$d"; done
exec "$@"
SH
hidden=()
unshare -m true 2>/dev/null && hidden=(unshare -m sh "$work/hidden")
alone() { # home, further variables
  mkdir -p "$1"
  run=("${hidden[@]}" env -i PATH="$work/bin" HOME="$1" TMPDIR="$work" LANG=C.UTF-8 "${@:2}")
}
alone "$work/home"
if "${run[@]}" sh -c 'command -v dotnet' >/dev/null; then bad "dotnet is on the PATH of the test"; fi

(cd "$made" && sha256sum --quiet -c SHA256SUMS) || bad "a file is not the one in SHA256SUMS"
[ "$(wc -l <"$made/SHA256SUMS")" = "$(ls "$made" | grep -vc '^SHA256SUMS$')" ] || bad "SHA256SUMS does not name every file"
good "every file is the one in SHA256SUMS"
python3 .ci/package/look.py "$made" "$version" || bad "what was made for other systems is not as it should be"
good "programs for other systems, lists of parts and texts are as they should be"

# The first thing that a user does, then documents, then the pages. What one package says, all say.
use() { # name, program
  local name="$1" program="$2" here="$work/$1" pdf
  mkdir -p "$here"
  "${run[@]}" "$program" check examples/visit.xlsx >"$here/check.txt" 2>"$here/errors" || [ $? = 1 ] || bad "$name: check: $(tail -n 3 "$here/errors")"
  grep -Eq '^[0-9]+ fit, [0-9]+ fit-until, [0-9]+ undetermined, [0-9]+ withdraw$' "$here/check.txt" || bad "$name: check says no outcomes"
  cmp -s "$here/check.txt" "${first:=$here/check.txt}" || bad "$name: check says something else than the first package"
  good "$name checks the example: $(tail -n 1 "$here/check.txt")"

  "${run[@]}" "$program" issue examples/photos.json --out "$here/out" >"$here/issue" 2>&1 || [ $? = 1 ] || bad "$name: issue: $(tail -n 3 "$here/issue")"
  pdf="$(find "$here/out" -name 'R-*.pdf' | sort | head -n 1)"
  [ -n "$pdf" ] || bad "$name: issue made no report: $(tail -n 3 "$here/issue")"
  in_own_type "$pdf"
  "${run[@]}" "$program" verify "$pdf" >"$here/verify" 2>&1 || bad "$name: verify: $(tail -n 3 "$here/verify")"
  good "$name issues $(find "$here/out" -name '*.pdf' | wc -l) documents in their own type, and finds the report genuine"
  work_in_pages "$name" "$program"
}
in_own_type() {
  local others; others="$(pdffonts "$1" | awk 'NR > 2 { print $1 }' | grep -v '+NotoSans' || true)"
  [ -z "$others" ] || bad "$1 is printed in $others"
  pdffonts "$1" | grep -q '+NotoSans-Bold' || bad "$1 holds no Noto Sans Bold"
}
work_in_pages() {
  local name="$1" here="$work/$1" address="" site sheet
  "${run[@]}" "$2" workbench --no-browser --data "$here/desk" >"$here/pages" 2>"$here/errors" &
  pages=$!
  for _ in $(seq 1 600); do
    address="$(head -n 1 "$here/pages")"
    [ -z "$address" ] || break
    kill -0 "$pages" 2>/dev/null || bad "$name: workbench: $(cat "$here/errors")"
    sleep 0.1
  done
  site="$(echo "$address" | sed 's|^\(http://[^/]*\).*|\1|')"
  curl -sf -c "$here/cookies" -b "$here/cookies" -L "$address" >"$here/page.html" || bad "$name: no page at $address"
  grep -q '<h1' "$here/page.html" || bad "$name: the page has no heading"
  sheet="$(grep -o '/[^" ]*\.css' "$here/page.html" | head -n 1)"
  # Into a file: a reader that stops at the first hit would make the other end fail now and then.
  curl -sf -b "$here/cookies" "$site$sheet" >"$here/sheet.css" || bad "$name: no style sheet at $sheet"
  grep -q 'Noto Sans' "$here/sheet.css" || bad "$name: the pages have no style sheet"
  [ "$(curl -s -o /dev/null -w '%{http_code}' "$site/")" != 200 ] || bad "$name: a stranger gets a page"
  kill -TERM "$pages"
  wait "$pages" || true
  pages=""
  good "$name opens the workbench: a page, its style sheet, and nothing for a stranger"
}

deb="$made/examdocs_${version}_$architecture.deb"
mkdir -p "$work/root"
dpkg -x "$deb" "$work/root"
for wanted in usr/bin/examdocs usr/share/applications/examdocs.desktop usr/share/icons/hicolor/scalable/apps/examdocs.svg \
  usr/share/doc/examdocs/copyright usr/share/doc/examdocs/README.md usr/share/doc/examdocs/docs/install.md; do
  [ -e "$work/root/$wanted" ] || bad "the .deb has no $wanted"
done
# Whether the system has all that it depends on, and what its libraries ask for, in the same breath.
apt-get install --simulate -qq "$deb" >"$work/apt.txt" 2>&1 || bad "apt would not install the .deb: $(tail -n 3 "$work/apt.txt")"
for library in "$work/root"/usr/lib/examdocs/*; do
  ! ldd "$library" 2>/dev/null | grep 'not found' || bad "$library asks for a library that nothing brings"
done
[ -z "$(find "$work/root" -perm -o+w -not -type l)" ] || bad "somebody else may write to what the .deb installs"
good "the .deb can be installed, and holds program, desktop entry, icon, licences and docs"
alone "$work/home-deb"
use deb "$work/root/usr/bin/examdocs"
[ ! -e "$work/home-deb/.net" ] || bad "the program of the .deb unpacks something in the home"

tar -C "$work" -xf "$made/examdocs-$version-$system.tar.gz"
alone "$work/home-file"
use file "$work/examdocs-$version-$system/examdocs"

# A system that has other fonts than those of the documents: the program brings them.
cat >"$work/fonts.conf" <<XML
<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "urn:fontconfig:fonts.dtd">
<fontconfig><dir>/usr/share/fonts/truetype/dejavu</dir><cachedir>$work/fonts</cachedir></fontconfig>
XML
alone "$work/home-fonts" FONTCONFIG_FILE="$work/fonts.conf"
"${run[@]}" "$work/examdocs-$version-$system/examdocs" issue examples/photos.json --out "$work/fonts-out" >"$work/fonts.txt" 2>&1 \
  || [ $? = 1 ] || bad "without fonts: issue: $(tail -n 3 "$work/fonts.txt")"
# Every register has an id of its own, and with it every file another checksum; all other words are the same, page by page.
words() { pdftotext "$1" - | sed 's/[0-9a-f]\{32,\}/X/g' | tr -s ' \n' '\n'; }
for pdf in "$work"/fonts-out/*.pdf; do
  in_own_type "$pdf"
  cmp -s <(words "$pdf") <(words "$work/file/out/$(basename "$pdf")") \
    || bad "without fonts, $(basename "$pdf") has other pages"
done
good "where the fonts are not installed, the same pages come out in the program's own"

DOTNET_CLI_TELEMETRY_OPTOUT=1 dotnet tool install ExamDocs.Cli --version "$version" --tool-path "$work/tool" --add-source "$made" >"$work/tool.txt" 2>&1 \
  || bad "the tool package: $(tail -n 3 "$work/tool.txt")"
mkdir -p "$work/home-tool"
run=(env -i PATH="$PATH" HOME="$work/home-tool" TMPDIR="$work" LANG=C.UTF-8)
use tool "$work/tool/examdocs"
echo "$passed passed"
