#!/usr/bin/env bash
# Requests per second of /api/v1/expected and /expected against bare ones in the same process: an
# endpoint that serialises an equally large constant record; a template page with the same frame
# that renders as many constant rows. "As many constant rows" is meant fully: as many, and each with
# the texts, links, marks and pictures that a row of /expected shows, so that both pages are about
# equally long; its template is an ordinary one, its model is made once. To judge that by, two more:
# the real page's own template with a constant model (only the work for the answer differs), and a
# plain table without our frame, with a row of four cells for everything that /expected lists (less
# than half the bytes). No side keeps finished bytes. In turns, after a warm-up; about ten minutes.
# Needs curl and wrk (Debian: apt-get install wrk).
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
for url in "$api" "$site/api/v1/bare" "$page" \
  "$site/expected/bare/rows" "$site/expected/bare/same" "$site/expected/bare/lines"; do
  curl -sf -o /dev/null -w "%{http_code} %{size_download} bytes  $url\n" "$url"
done

used() { awk '{ print $14 + $15 }' "/proc/$server/stat"; }

load() { # URL SECONDS -> requests per second, and the server's processor time for each in µs
  local out before
  before=$(used)
  out=$(wrk -t1 -c4 -d"$2s" "$1")
  if grep -q "Non-2xx\|Socket errors" <<<"$out"; then echo "$out" >&2; exit 1; fi
  awk -v ticks=$(($(used) - before)) -v second="$(getconf CLK_TCK)" \
    '/ requests in / { n = $1 } /Requests\/sec/ { print $2, ticks / second / n * 1e6 }' <<<"$out"
}

compare() { # NAME URL BARE-URL
  load "$2" "$warmup" >/dev/null
  load "$3" "$warmup" >/dev/null
  local ratios=() costs=() a b
  for _ in $(seq "$rounds"); do
    a=$(load "$2" "$seconds")
    b=$(load "$3" "$seconds")
    ratios+=("$(awk '{ print $1 / $3 }' <<<"$a $b")")
    # Where others use the processor too, time spent tells more than answers given.
    costs+=("$(awk '{ print $4 / $2 }' <<<"$a $b")")
    echo "  $1: ${a% *} against ${b% *} requests/s, ${a#* } against ${b#* } µs of processor"
  done
  echo "$1: $(printf '%s\n' "${ratios[@]}" | median) times the requests per second" \
    "($(printf '%s\n' "${costs[@]}" | median) by processor time; medians of $rounds)"
}

machine
compare "/api/v1/expected against the constant record" "$api" "$site/api/v1/bare"
compare "/expected against a page of as many constant rows" "$page" "$site/expected/bare/rows"
compare "/expected against its own template, constant" "$page" "$site/expected/bare/same"
compare "/expected against a plain table, a row for all it lists" "$page" "$site/expected/bare/lines"
machine
