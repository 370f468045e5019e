#!/usr/bin/env bash
# Runs every test, and ends with a line: N passed, N failed.
# With --proof: the long proofs instead, in full (docs/proof.md); they take hours.
set -uo pipefail
cd "$(dirname "$0")/.."
bash .ci/setup.sh test || exit 1
[ "${1:-}" = --proof ] && exec bash tests/proof.sh

log="$(mktemp)"
trap 'rm -f "$log"' EXIT
# As it ships: optimised, and built once for examples/run.sh too.
dotnet build ExamDocs.sln -c Release -v quiet --nologo || { echo "0 passed, 1 failed"; exit 1; }
dotnet test --solution ExamDocs.sln -c Release --no-build --no-progress "$@" 2>&1 | tee "$log"
code=${PIPESTATUS[0]}

count() { sed -n "s/^ *$1: \([0-9][0-9]*\).*/\1/p" "$log" | tail -n 1; }
total="$(count total)"; failed="$(count failed)"; passed="$(count succeeded)"; skipped="$(count skipped)"
if [ "${total:-0}" = 0 ] || [ "${passed:-0}" = 0 ]; then
  echo "No test ran." >&2
  [ "$code" = 0 ] && code=1
  failed=${failed:-1}
fi
if [ "${skipped:-0}" != 0 ]; then line=", ${skipped} skipped"; fi
echo "${passed:-0} passed, ${failed:-0} failed${line:-}"
exit "$code"
