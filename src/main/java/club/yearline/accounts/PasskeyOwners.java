package club.yearline.accounts;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.web.webauthn.api.Bytes;
import org.springframework.security.web.webauthn.api.ImmutablePublicKeyCredentialUserEntity;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialUserEntity;
import org.springframework.security.web.webauthn.management.PublicKeyCredentialUserEntityRepository;
import org.springframework.stereotype.Repository;

/**
 * People as devices know them: by a number made of chance, which says nothing about who it is. The
 * framework asks by the name of an authentication, which is the id of a person; what a device shows
 * its owner is the address to sign in with.
 */
@Repository
class PasskeyOwners implements PublicKeyCredentialUserEntityRepository {

  private static final String OPEN =
      """
      select o.handle, p.name, p.email from passkey_owner o join person p on p.id = o.person_id
      where p.state = 'ACTIVE' and\s""";

  private final JdbcClient jdbc;

  PasskeyOwners(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  @Override
  public @Nullable PublicKeyCredentialUserEntity findById(Bytes handle) {
    return jdbc.sql(OPEN + "o.handle = :handle")
        .param("handle", handle.toBase64UrlString())
        .query(PasskeyOwners::row)
        .optional()
        .orElse(null);
  }

  /** Whoever is asked for has a number from then on. */
  @Override
  public @Nullable PublicKeyCredentialUserEntity findByUsername(String person) {
    PublicKeyCredentialUserEntity known = find(Long.parseLong(person));
    if (known != null) {
      return known;
    }
    add(Long.parseLong(person), Bytes.random());
    return find(Long.parseLong(person));
  }

  @Override
  public void save(PublicKeyCredentialUserEntity owner) {
    add(Long.parseLong(owner.getName()), owner.getId());
  }

  @Override
  public void delete(Bytes handle) {
    jdbc.sql("delete from passkey_owner where handle = :handle")
        .param("handle", handle.toBase64UrlString())
        .update();
  }

  /** Whose number it is. */
  Optional<Long> personOf(Bytes handle) {
    return jdbc.sql("select person_id from passkey_owner where handle = :handle")
        .param("handle", handle.toBase64UrlString())
        .query(Long.class)
        .optional();
  }

  private @Nullable PublicKeyCredentialUserEntity find(long person) {
    return jdbc.sql(OPEN + "o.person_id = :person")
        .param("person", person)
        .query(PasskeyOwners::row)
        .optional()
        .orElse(null);
  }

  private void add(long person, Bytes handle) {
    try {
      jdbc.sql("insert into passkey_owner (person_id, handle) values (:person, :handle)")
          .param("person", person)
          .param("handle", handle.toBase64UrlString())
          .update();
    } catch (DuplicateKeyException e) {
      // Asked for twice at once: the first number stands.
    }
  }

  private static PublicKeyCredentialUserEntity row(ResultSet row, int number) throws SQLException {
    return ImmutablePublicKeyCredentialUserEntity.builder()
        .id(Bytes.fromBase64(row.getString("handle")))
        .name(row.getString("email"))
        .displayName(row.getString("name"))
        .build();
  }
}
