#!/usr/bin/env bash
# Shows that a backup of a shared register can be used: restores it into an empty database, checks it there, and compares it with
# the register as it is now. The last line begins with GOOD, OLDER or NOT GOOD; the exit code is 0, 1 or 1.
#
# Usage: restore-drill.sh REGISTER EMPTY-DATABASE [DUMP]
#   REGISTER        postgres://kit_owner@server.example/kit
#   EMPTY-DATABASE  postgres://kit_owner@server.example/kit_drill, made with: createdb --encoding UTF8 --template template0 kit_drill
#   DUMP            a file of pg_dump --format=custom; left out, one is made now
# Needs psql, pg_dump and pg_restore of the server's version, and examdocs (or EXAMDOCS=/path/to/it).
set -euo pipefail

[ $# = 2 ] || [ $# = 3 ] || { sed -n '2,11s/^# \{0,1\}//p' "$0" >&2; exit 2; }
register=$1 drill=$2 dump=${3:-}
examdocs=${EXAMDOCS:-examdocs}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
say() { echo "$1"; exit "$2"; }
ask() { psql --no-psqlrc --quiet --tuples-only --no-align --field-separator=' ' --set=ON_ERROR_STOP=1 --dbname="$1" --command="$2"; }

[ "$(ask "$drill" "SELECT count(*) FROM pg_namespace WHERE nspname = 'examdocs'")" = 0 ] ||
  say "NOT GOOD: there is a register in the second database already; this fills an empty one." 1

# What the log holds now, as a checkpoint that was kept elsewhere.
read -r id size root < <(ask "$register" "SELECT id, size, root FROM examdocs.register, examdocs.checkpoint ORDER BY size DESC LIMIT 1")
printf '{"format":"examdocs-checkpoint/1","body":"examdocs-register/%s\\n%s\\n%s\\n","day":"%s","signature":null}\n' \
  "$id" "$size" "$root" "$(date +%F)" > "$work/checkpoint.json"

if [ -z "$dump" ]; then
  dump=$work/register.dump
  pg_dump --format=custom --schema=examdocs --file="$dump" --dbname="$register"
fi
pg_restore --no-owner --exit-on-error --dbname="$drill" "$dump" || say "NOT GOOD: the dump cannot be restored." 1

read -r restored_id restored < <(ask "$drill" "SELECT id, log_size FROM examdocs.register")
[ "$restored_id" = "$id" ] || say "NOT GOOD: the dump is of another register." 1
if [ "$restored" -lt "$size" ]; then
  # An older one has to be the beginning of the present one: its own last root is among those of the register.
  "$examdocs" register check --register "$drill" > "$work/said" || { cat "$work/said"; say "NOT GOOD: what was restored is not sound." 1; }
  was=$(ask "$drill" "SELECT root FROM examdocs.checkpoint WHERE size = $restored")
  [ "$was" = "$(ask "$register" "SELECT root FROM examdocs.checkpoint WHERE size = $restored")" ] ||
    say "NOT GOOD: what was restored is not the beginning of the register." 1
  say "OLDER: what was restored is sound and ends at entry $restored of $size; what happened after it, and its numbers, would be lost." 1
fi
"$examdocs" register check --register "$drill" --checkpoint "$work/checkpoint.json" > "$work/said" ||
  { cat "$work/said"; say "NOT GOOD: what was restored is not sound, or is not the register that it was." 1; }
say "GOOD: all $restored entries were restored, the register is sound, and its log is the one of before." 0
