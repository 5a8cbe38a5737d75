package club.yearline.catalog;

import club.yearline.accounts.People;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** What those are called who proposed and approved revisions, as of now. */
@Component
public class Contributors {

  private final People people;

  Contributors(People people) {
    this.people = people;
  }

  /** The name of a contributor; null where nobody is recorded. */
  public @Nullable String nameOf(Contributor contributor) {
    Long person = contributor.person();
    return person == null ? contributor.name() : people.nameOf(person);
  }
}
