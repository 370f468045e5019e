#!/usr/bin/env bash
# Prints every kind of document from the examples, and makes the pictures and the page of this gallery of them.
set -euo pipefail
cd "$(dirname "$0")/../.."
bash .ci/setup.sh print
command -v pdftoppm >/dev/null || { echo "Please install poppler-utils, then run this again." >&2; exit 1; }
dotnet build src/ExamDocs.Cli -c Release -v quiet --nologo
examdocs="$PWD/src/ExamDocs.Cli/bin/Release/net10.0/ExamDocs.Cli"
gallery="$PWD/docs/gallery"
work="$(mktemp -d)"
trap 'rm -rf "$work"' EXIT
rm -f "$gallery"/*.png

issue() { # folder, input, options: issues, and keeps the list of numbers
  local folder="$work/$1" input="$2"; shift 2
  [ -f "$folder.db" ] || "$examdocs" register create --register "$folder.db" >/dev/null
  "$examdocs" issue "$input" --out "$folder" --register "$folder.db" "$@" 2>/dev/null >>"$folder.list" || [ $? = 1 ]
}
number() { awk -v kind="$2" -v item="$3" '$2 == kind && index($0, item) { n = $1 } END { print n }' "$work/$1.list"; }
page() { # picture, folder, number, page, words
  pdftoppm -r 80 -png -f "$4" -l "$4" -singlefile "$work/$2/$3.pdf" "$gallery/$1"
  printf '\n## %s\n\n![%s](%s.png)\n' "$5" "$5" "$1" >>"$gallery/README.md"
}
holding() { # folder, number, text: the first page on which the text stands
  local n; for n in $(seq 1 200); do pdftotext -f "$n" -l "$n" "$work/$1/$2.pdf" - 2>/dev/null | grep -qF "$3" && { echo "$n"; return; }; done; echo 1
}

cat >"$gallery/README.md" <<'TEXT'
# What the documents look like

Made by `bash docs/gallery/make.sh` from the examples; everything in them is invented. The maker's instructions, the law of
the place and the judgement of the competent person come before every one of these papers.
[The pages of the workbench](workbench/README.md) have a gallery of their own.
TEXT

issue visit examples/visit.json
issue visit examples/visit.json --only check-sheet
issue visit examples/visit.json --only record
issue visit examples/visit.json --only evidence
report="$(number visit report items)"
first="$(head -n 1 <(awk '$2 == "report" { print $1 }' "$work/visit.list"))"
copy="$(awk '$2 == "report" { print $1 }' "$work/visit.list" | sed -n 2p)"
page report visit "$first" 1 "Report of thorough examination: the outcomes first"
page report-item visit "$first" "$(holding visit "$first" 'BRG-04: diameter')" "Report: items that may not be used, each in a block"
page report-lines visit "$first" "$(holding visit "$first" 'items in order')" "Report: items in order, each in a line of its group"
last="$(pdfinfo "$work/visit/$first.pdf" | awk '/^Pages/ { print $2 }')"
page report-last visit "$first" "$last" "Report: its last page"
evidence="$(number visit evidence items)"
page evidence visit "$evidence" "$(holding visit "$evidence" 'BRG-01: diameter from')" "Evidence file: measurements of an item"
page report-copy visit "$copy" 1 "The enforcing authority's copy: its cover"
page notice visit "$(number visit notice CON-07)" 1 "Notice of defect"
page certificate visit "$(number visit certificate HAR-02)" 1 "Certificate of conformity for reissue"
page quarantine-label visit "$(number visit quarantine-label BRG-02)" 1 "Quarantine label"
page hold-label visit "$(number visit quarantine-label PUL-02)" 1 "Hold label"
page due-label visit "$(number visit due-label HAR-02)" 1 "Next-examination label"
page record visit "$(number visit record SLG-03)" 1 "Equipment record"
sheet="$(number visit check-sheet BRG-02)"
page check-sheet-1 visit "$sheet" 1 "Check sheet: what was found last time"
page check-sheet-2 visit "$sheet" 3 "Check sheet: diameters, defects, conclusion"

issue photos examples/photos.json --letterhead examples/letterhead.json
page photos photos "$(number photos notice CON-07)" 1 "Notice with a photo, on the issuer's letterhead"

for language in de fr; do
  issue "$language" examples/photos.json --language "$language"
  page "report-$language" "$language" "$(awk '$2 == "report" { print $1; exit }' "$work/$language.list")" 1 "Report ($language)"
  page "notice-$language" "$language" "$(number "$language" notice CON-07)" 1 "Notice ($language)"
  page "label-$language" "$language" "$(number "$language" quarantine-label CON-07)" 1 "Quarantine label ($language)"
done

sed -e 's/"Brackwater Tree Training and Hire Ltd"/"樹木管理訓練株式会社"/; s/"Quillmere Access Hire LLP"/"شركة تأجير المعدات"/' examples/photos.json >"$work/scripts.json"
issue scripts "$work/scripts.json"
page scripts scripts "$(awk '$2 == "report" { print $1; exit }' "$work/scripts.list")" 1 "Names in other scripts"

echo "The gallery is in docs/gallery/README.md."
