#!/usr/bin/env bash
# What the engine takes for one serial of a variant with 60 features, in catalogues of 1 and 1,000
# families: first by processor time of a thread (a minute), then by JMH and elapsed time (about ten
# minutes; ROUNDS=1 for a first look, ROUNDS=0 for none).
set -euo pipefail
source "$(dirname "$0")/common.sh"
build_bench
machine
java -Xmx3g -cp "$classpath" club.yearline.benchmarks.EngineTime
if [[ ${ROUNDS:-5} != 0 ]]; then
  java -Drounds="${ROUNDS:-5}" -cp "$classpath" club.yearline.benchmarks.EngineFigures
fi
machine
