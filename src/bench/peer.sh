#!/usr/bin/env bash
# A typed serial asked of the engine, and of PostgreSQL in one indexed query over JDBC from the same
# process, after checking that both give the same changes. About four minutes.
set -euo pipefail
source "$(dirname "$0")/common.sh"
build_bench
machine
java -Drounds="${ROUNDS:-5}" -Dfamilies="${FAMILIES:-100}" -cp "$classpath" \
  club.yearline.benchmarks.PeerFigures
machine
