#!/usr/bin/env bash
# The long proofs (docs/proof.md): millions of records, then mutation testing. Called by tests/run.sh --proof.
set -uo pipefail
cd "$(dirname "$0")/.."
dotnet build tests/ExamDocs.Proof.Tests -c Release -v quiet --nologo || { echo "0 passed, 1 failed"; exit 1; }
EXAMDOCS_PROOF=full dotnet run --no-build -c Release --project tests/ExamDocs.Proof.Tests -- --output Detailed
proof=$?
dotnet tool restore >/dev/null && (cd tests/ExamDocs.Core.Tests && dotnet stryker --break-at 95)
mutation=$?
failed=$(( (proof != 0) + (mutation != 0) ))
echo "$((2 - failed)) passed, $failed failed"
exit "$failed"
