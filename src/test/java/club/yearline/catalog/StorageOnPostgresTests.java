package club.yearline.catalog;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import club.yearline.testing.Database;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.dao.DataAccessException;

class StorageOnPostgresTests extends StorageContract {

  @Override
  Database freshDatabase() {
    return Database.postgres();
  }

  /** H2 knows no trigger for truncating. */
  @ParameterizedTest
  @ValueSource(strings = {"descent", "revision cascade"})
  void whatIsPublishedIsNeverTruncated(String table) {
    assertThatThrownBy(() -> instance.jdbc().sql("truncate table " + table).update())
        .isInstanceOf(DataAccessException.class)
        .hasMessageContaining("never changed or deleted");
  }
}
