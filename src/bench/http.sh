#!/usr/bin/env bash
# Requests per second of /api/v1/expected and /expected against bare ones in the same process: an
# endpoint that serialises an equally large constant record, a template page of constant rows. In
# turns, after a warm-up; about eight minutes. Needs curl and wrk (Debian: apt-get install wrk).
set -euo pipefail
source "$(dirname "$0")/common.sh"
command -v wrk >/dev/null || { echo "Please install wrk (Debian: apt-get install wrk)" >&2; exit 2; }
build_bench
port=${PORT:-18085} rounds=${ROUNDS:-5} seconds=${SECONDS_EACH:-6} warmup=${WARMUP:-30}
site=http://localhost:$port
serial=AAA-0700

java -Xmx1g -cp "$classpath" club.yearline.Yearline --server.port="$port" --yearline.demo=false \
  "--spring.datasource.url=jdbc:h2:mem:bench;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH" \
  >target/bench-http.log 2>&1 &
server=$!
trap 'kill $server; wait $server 2>/dev/null || true' EXIT
for _ in $(seq 120); do
  curl -sf -o /dev/null "$site/api/v1/expected?serial=$serial" && break
  kill -0 $server || { tail target/bench-http.log >&2; exit 1; }
  sleep 0.5
done
curl -sf -o /dev/null "$site/api/v1/bare/prepare?serial=$serial"
curl -sf "$site/expected/bare/prepare?serial=$serial"

api=$site/api/v1/expected?serial=$serial
page=$site/expected?serial=$serial
# Nothing may answer from a store: every answer is a 200 with its whole body, not compressed.
for url in "$api" "$site/api/v1/bare" "$page" "$site/expected/bare/features" "$site/expected/bare/lines"; do
  curl -sf -o /dev/null -w "%{http_code} %{size_download} bytes  $url\n" "$url"
done

load() { # URL SECONDS -> requests per second; stops at any answer that is not a 200
  local out
  out=$(wrk -t1 -c4 -d"$2s" "$1")
  if grep -q "Non-2xx\|Socket errors" <<<"$out"; then echo "$out" >&2; exit 1; fi
  awk '/Requests\/sec/ { print $2 }' <<<"$out"
}

compare() { # NAME URL BARE-URL
  load "$2" "$warmup" >/dev/null
  load "$3" "$warmup" >/dev/null
  local ratios=() a b
  for _ in $(seq "$rounds"); do
    a=$(load "$2" "$seconds")
    b=$(load "$3" "$seconds")
    ratios+=("$(awk "BEGIN { print $a / $b }")")
    echo "  $1: $a against $b requests/s"
  done
  echo "$1: $(printf '%s\n' "${ratios[@]}" | median) times (median of $rounds)"
}

machine
compare "/api/v1/expected against the constant record" "$api" "$site/api/v1/bare"
compare "/expected against a page with a row for each feature" "$page" "$site/expected/bare/features"
compare "/expected against a page with a row for all it lists" "$page" "$site/expected/bare/lines"
machine
