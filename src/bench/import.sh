#!/usr/bin/env bash
# The packaged jar imports a generated catalogue of 1,000 families: 1,000,000 rows, 100,000 of them
# changes, into an empty database with 1 GiB of heap. H2 unless SPRING_DATASOURCE_URL names another.
set -euo pipefail
source "$(dirname "$0")/common.sh"
build_jar
folder=target/bench-import
rm -rf "$folder" && mkdir -p "$folder"
java -jar "$jar" generate "$folder/million" --families 1000 --seed 1
: "${SPRING_DATASOURCE_URL:=jdbc:h2:file:./$folder/yearline;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH}"
export SPRING_DATASOURCE_URL
machine
TIMEFORMAT="import: %R s, %U + %S s of processor"
time java -Xmx1g -Xlog:gc:file="$folder/gc.log" -jar "$jar" import "$folder/million" | tail -2
machine
