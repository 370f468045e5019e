#!/usr/bin/env bash
# Runs every test, and ends with a line: N passed, N failed.
# With --proof: the long proofs instead, in full (docs/proof.md); they take hours.
set -uo pipefail
cd "$(dirname "$0")/.."
bash .ci/setup.sh test || exit 1
[ "${1:-}" = --proof ] && exec bash tests/proof.sh

# Compiler and tests run each path a few times: measuring them, to compile them better, costs more than it gains.
export DOTNET_TieredPGO=0
# Tests make and flush small files by the thousand: in memory, where there is room, none of them waits for the disk.
memory=/dev/shm
own=""
if [ -w "$memory" ] && [ "$(df -Pk "$memory" | awk 'NR == 2 { print $4 }')" -gt 4000000 ]; then
  own="$(mktemp -d "$memory/examdocs-tests-XXXXXX")"
  # The database server of the tests runs as a user of its own.
  chmod 1777 "$own"
  export TMPDIR="$own"
fi
logs="$(mktemp -d)"
trap 'rm -rf "$logs" ${own:+"$own"}' EXIT
# As it ships: optimised, and built once for examples/run.sh too.
dotnet build ExamDocs.sln -c Release -v quiet --nologo || { echo "0 passed, 1 failed"; exit 1; }

# One project; what it says is shown when it is done. A filter may leave nothing of it to run (8): only then that is no fault.
project() {
  local name="$1" log="$2/$1"
  "tests/$name/bin/Release/net10.0/$name" --progress off ${3:+--ignore-exit-code 8} "${@:3}" >"$log" 2>&1
  echo $? >"$log.code"
  # A build server may force colours even into a file; the counts below are read without them.
  sed -i 's/\x1b\[[0-9;]*[A-Za-z]//g' "$log"
  flock "$2" cat "$log"
}
export -f project

# As many projects at a time as there are cores, those that take longest first.
longest=(ExamDocs.UseCases.Tests ExamDocs.Workbench.Tests ExamDocs.Intake.Tests ExamDocs.Documents.Tests ExamDocs.Cli.Tests
  ExamDocs.SharedRegister.Tests ExamDocs.Faults.Tests ExamDocs.Interchange.Tests ExamDocs.Proof.Tests)
all=("${longest[@]}")
for folder in tests/*.Tests; do
  [[ " ${longest[*]} " == *" ${folder#tests/} "* ]] || all+=("${folder#tests/}")
done
printf '%s\0' "${all[@]}" | xargs -0 -P "$(nproc)" -I{} bash -c 'project "$@"' _ {} "$logs" "$@"

count() { sed -n "s/^ *$1: \([0-9][0-9]*\).*/\1/p" "$logs"/*.Tests | awk '{ n += $1 } END { print n + 0 }'; }
total="$(count total)"; failed="$(count failed)"; passed="$(count succeeded)"; skipped="$(count skipped)"
code=0
for name in "${all[@]}"; do
  # One that ended without a word of its own failures, or never began, failed.
  [ "$(cat "$logs/$name.code" 2>/dev/null)" = 0 ] && continue
  code=1
  grep -q '^ *failed: [1-9]' "$logs/$name" 2>/dev/null || failed=$((failed + 1))
done
if [ "$total" = 0 ] || [ "$passed" = 0 ]; then
  echo "No test ran." >&2
  code=1
  [ "$failed" != 0 ] || failed=1
fi
line=""
[ "$skipped" = 0 ] || line=", $skipped skipped"
echo "$passed passed, $failed failed$line"
exit "$code"
