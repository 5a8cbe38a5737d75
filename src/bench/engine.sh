#!/usr/bin/env bash
# What the engine takes for one serial of a variant with 60 features, in catalogues of 1 and 1,000
# families. About six minutes; ROUNDS=1 for a first look.
set -euo pipefail
source "$(dirname "$0")/common.sh"
build_bench
machine
java -Drounds="${ROUNDS:-5}" -cp "$classpath" club.yearline.benchmarks.EngineFigures
machine
