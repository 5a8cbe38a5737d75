#!/usr/bin/env bash
# Starts the packaged jar in turns on the demo and on a generated catalogue of 1,000 families and
# 1,000,000 rows (imported by import.sh, if it is not there yet), asks each the same kinds of
# question, and tells start, memory and answers. About six minutes after the import. Needs curl.
set -euo pipefail
source "$(dirname "$0")/common.sh"
[[ -f target/bench-import/yearline.mv.db ]] || (unset SPRING_DATASOURCE_URL; src/bench/import.sh)
build_jar
port=${PORT:-18086} rounds=${ROUNDS:-3}
site=http://localhost:$port
options=";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_ON_EXIT=FALSE"
large=./target/bench-import/yearline
demo=./target/bench-demo/yearline
figures=target/bench-scale
rm -rf target/bench-demo "$figures" && mkdir -p "$figures"

server=

note() { echo "$3" >>"$figures/$1-$2"; } # WHICH WHAT VALUE

ask() { # WHICH WHAT PATH: the first answer, and the median of twenty after forty
  note "$1" "$2, first, s" "$(curl -sf -o /dev/null -w '%{time_total}' "$site$3")"
  for _ in $(seq 40); do curl -sf -o /dev/null "$site$3"; done
  note "$1" "$2, later, s" \
    "$(for _ in $(seq 20); do curl -sf -o /dev/null -w '%{time_total}\n' "$site$3"; done | median)"
}

visit() { # WHICH DATABASE SERIAL WORD
  local began
  began=$(date +%s.%N)
  java -Xmx2g -jar "$jar" --server.port="$port" "--spring.datasource.url=jdbc:h2:file:$2$options" \
    >"target/bench-scale.log" 2>&1 &
  server=$!
  trap 'kill $server 2>/dev/null || true' EXIT
  # A start is over when it answers the question, not when it listens: the demo loads first.
  until curl -sf -o /dev/null "$site/api/v1/expected?serial=$3"; do
    kill -0 $server || { tail target/bench-scale.log >&2; exit 1; }
    sleep 0.1
  done
  note "$1" "start, s" "$(awk "BEGIN { print $(date +%s.%N) - $began }")"
  ask "$1" "expected page" "/expected?serial=$3"
  ask "$1" "expected by API" "/api/v1/expected?serial=$3"
  ask "$1" "find box" "/find?q=$4"
  ask "$1" "first page" "/"
  jcmd $server GC.run >/dev/null
  note "$1" "heap in use after collection, MiB" \
    "$(jcmd $server GC.heap_info | awk 'match($0, /used [0-9]+K/) && /heap/ { print substr($0, RSTART + 5, RLENGTH - 6) / 1024 }')"
  note "$1" "resident memory, MiB" "$(awk '/VmRSS/ { print $2 / 1024 }' /proc/$server/status)"
  kill $server
  wait $server 2>/dev/null || true
  trap - EXIT
}

serial=$(awk -F, 'NR == 2 { print $3 }' target/bench-import/million/serial_blocks.csv)
visit demo "$demo" LT-0412 turnstone # loads the demo into an empty database: not counted
rm -f "$figures"/*
machine
for _ in $(seq "$rounds"); do
  visit demo "$demo" LT-0412 turnstone
  visit large "$large" "$serial" landing
done
for file in "$figures"/large-*; do
  what=${file#"$figures/large-"}
  echo "$what: $(median <"$file") with 1,000,000 rows, $(median <"$figures/demo-$what") with the demo"
done
machine
