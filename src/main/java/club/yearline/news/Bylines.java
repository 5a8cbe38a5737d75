package club.yearline.news;

import club.yearline.catalog.Contributors;
import club.yearline.catalog.Revision;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** Who made a revision. */
@Component
class Bylines {

  private final Contributors contributors;

  Bylines(Contributors contributors) {
    this.contributors = contributors;
  }

  /** The name of who proposed it; empty where nobody is recorded. */
  Optional<String> author(Revision revision) {
    return Optional.ofNullable(contributors.nameOf(revision.proposedBy()))
        .filter(name -> !name.isBlank());
  }

  /** The name of who approved it, where that was somebody else. */
  Optional<String> approver(Revision revision) {
    return revision.approvedBy().equals(revision.proposedBy())
        ? Optional.empty()
        : Optional.ofNullable(contributors.nameOf(revision.approvedBy()))
            .filter(name -> !name.isBlank());
  }

  /** The numbers of the accounts of those who made it. */
  static Set<Long> makers(Revision revision) {
    return Stream.of(revision.proposedBy(), revision.approvedBy())
        .flatMap(contributor -> Stream.ofNullable(contributor.person()))
        .collect(Collectors.toUnmodifiableSet());
  }
}
