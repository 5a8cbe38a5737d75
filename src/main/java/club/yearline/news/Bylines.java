package club.yearline.news;

import club.yearline.catalog.Revision;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Who made a revision, by name. */
@Component
class Bylines {

  /** Who proposed it; empty where nobody is recorded. */
  Optional<String> author(Revision revision) {
    return Optional.ofNullable(revision.proposedBy()).filter(name -> !name.isBlank());
  }

  /** Who approved it, where that was somebody else. */
  Optional<String> approver(Revision revision) {
    return Optional.ofNullable(revision.approvedBy())
        .filter(name -> !name.isBlank() && !name.equals(revision.proposedBy()));
  }
}
