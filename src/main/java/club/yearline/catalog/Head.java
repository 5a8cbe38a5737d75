package club.yearline.catalog;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;

/** The one row that says which revision is the newest. */
@Entity
class Head {

  @Id private int id;
  private int number;

  protected Head() {}
}
