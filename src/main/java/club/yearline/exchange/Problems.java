package club.yearline.exchange;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The problems of one package as they are found. A fault that two checks see is told once. Beyond
 * {@value #MOST} they are only counted, so that a hostile file cannot fill the memory.
 */
final class Problems {

  static final int MOST = 10_000;

  private record Place(String file, @Nullable Integer line, @Nullable String column, String code) {}

  private final Set<Place> places = new HashSet<>();
  private final ArrayList<PackageProblem> found = new ArrayList<>();
  private int more;
  private boolean errors;

  void add(PackageProblem problem) {
    errors |= problem.isError();
    if (found.size() >= MOST) {
      more++;
    } else if (places.add(
        new Place(problem.file(), problem.line(), problem.column(), problem.code()))) {
      found.add(problem);
    }
  }

  boolean hasErrors() {
    return errors;
  }

  /** All of them, gravest first, then by place. */
  List<PackageProblem> all(String packageName) {
    List<PackageProblem> all =
        new ArrayList<>(found.stream().sorted(PackageProblem.GRAVEST_FIRST).toList());
    if (more > 0) {
      all.add(PackageProblem.of(packageName, "more-problems", MOST, more));
    }
    return List.copyOf(all);
  }
}
