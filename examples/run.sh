#!/usr/bin/env bash
# The main job on the example batch: check the workbook, then issue every document it calls for.
set -euo pipefail
cd "$(dirname "$0")/.."
bash .ci/setup.sh print

echo "Building ..."
dotnet build src/ExamDocs.Cli -c Release -v quiet --nologo
examdocs=src/ExamDocs.Cli/bin/Release/net10.0/ExamDocs.Cli
out=examples/out
mkdir -p "$out"

# A register of its own, so that the one of your real work stays as it is.
export EXAMDOCS_REGISTER="$out/register.db"
[ -e "$EXAMDOCS_REGISTER" ] || "$examdocs" register create

echo
echo "== examdocs check examples/visit.xlsx"
"$examdocs" check examples/visit.xlsx --json "$out/findings.json" --replace

echo
echo "== examdocs issue examples/visit.xlsx --out $out"
"$examdocs" issue examples/visit.xlsx --out "$out" 2>/dev/null | sed -n '/^[A-Z]-[0-9]/p;/documents in/p'

echo
echo "The PDFs are in $out; documents.json beside them says what each is about, and findings.json why."
