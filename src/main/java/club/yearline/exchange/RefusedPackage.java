package club.yearline.exchange;

/** A package that cannot be read on: it is no zip, too large, or would climb out of its folder. */
final class RefusedPackage extends RuntimeException {

  private final transient PackageProblem problem;

  RefusedPackage(PackageProblem problem) {
    super(problem.code() + " in " + problem.file());
    this.problem = problem;
  }

  PackageProblem problem() {
    return problem;
  }
}
