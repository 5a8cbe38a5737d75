#!/usr/bin/env bash
# What an estimate of a cut-in takes, with 40, 1,000 and 10,000 airframes and serials of four and of
# eighteen digits, by processor time of a thread (less than a minute).
set -euo pipefail
source "$(dirname "$0")/common.sh"
build_bench
machine
java -cp "$classpath" club.yearline.benchmarks.EstimateTime
machine
