# Sourced by the scripts beside it: builds what they measure and knows how to start it.
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
maven() { ./mvnw -B -q --no-transfer-progress "$@"; }

# The packaged application.
build_jar() {
  maven -DskipTests package
  jar=$(ls target/yearline-*.jar)
}

# The application and the benchmarks as classes.
build_bench() {
  maven -P bench test-compile dependency:build-classpath -Dmdep.outputFile=target/bench-classpath
  classpath=target/bench-classes:target/classes:$(cat target/bench-classpath)
}

# Absolute figures are of this machine at this hour; a load well above 0 says that it is shared.
machine() {
  echo "$(nproc) processors, load $(cut -d' ' -f1-3 /proc/loadavg), $(java -version 2>&1 | head -1)"
}

median() { sort -g | awk '{ v[NR] = $1 } END { print (NR % 2) ? v[(NR + 1) / 2] : (v[NR / 2] + v[NR / 2 + 1]) / 2 }'; }
