#!/usr/bin/env bash
# The long proofs (docs/proof.md): millions of records, a thousand killed runs, then mutation testing. Called by
# tests/run.sh --proof.
set -uo pipefail
cd "$(dirname "$0")/.."
passed=0 failed=0
count() { if [ "$1" = 0 ]; then passed=$((passed + 1)); else failed=$((failed + 1)); fi; }
for project in ExamDocs.Proof.Tests ExamDocs.Faults.Tests; do
  dotnet build "tests/$project" -c Release -v quiet --nologo || { echo "$passed passed, $((failed + 1)) failed"; exit 1; }
  EXAMDOCS_PROOF=full dotnet run --no-build -c Release --project "tests/$project" -- --output Detailed
  count $?
done
# Of these projects a part.
for part in "Documents --filter-namespace *Fuzz" "Documents --filter-class *.EveryByteTests *.TimestampTests" \
  "SharedRegister --filter-class *.KilledWorkerTests *.EachStatementCutTests *.EveryCellTests"; do
  read -ra words <<<"$part"
  project="tests/ExamDocs.${words[0]}.Tests"
  dotnet build "$project" -c Release -v quiet --nologo || { echo "$passed passed, $((failed + 1)) failed"; exit 1; }
  EXAMDOCS_PROOF=full dotnet run --no-build -c Release --project "$project" -- "${words[@]:1}" --output Detailed
  count $?
done
dotnet tool restore >/dev/null && (cd tests/ExamDocs.Core.Tests && dotnet stryker --break-at 95)
count $?
echo "$passed passed, $failed failed"
exit "$failed"
