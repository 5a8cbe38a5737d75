package club.yearline.accounts;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.web.webauthn.api.AuthenticatorTransport;
import org.springframework.security.web.webauthn.api.Bytes;
import org.springframework.security.web.webauthn.api.CredentialRecord;
import org.springframework.security.web.webauthn.api.ImmutableCredentialRecord;
import org.springframework.security.web.webauthn.api.ImmutablePublicKeyCose;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialType;
import org.springframework.security.web.webauthn.management.UserCredentialRepository;
import org.springframework.stereotype.Repository;

/**
 * The public halves of passkeys, as the framework reads and writes them. It compares a device's
 * count of signatures with that of the day of registration; the comparison with the last one seen
 * is made here, where two answers at one moment are told apart too.
 */
@Repository
class PasskeyCredentials implements UserCredentialRepository {

  private static final String FIND =
      """
      select k.*, o.handle from passkey k join passkey_owner o on o.person_id = k.person_id
      where\s""";

  private static final String ADD =
      """
      insert into passkey (person_id, credential, name, public_key, attestation, transports,
        signatures, backup_eligible, backed_up, created_at)
      values ((select person_id from passkey_owner where handle = :handle), :credential, :name, :key,
        :attestation, :transports, :signatures, :eligible, :backedUp, :now)
      """;

  private static final String USE =
      """
      update passkey set signatures = :signatures, backed_up = :backedUp, used_at = :now
      where credential = :credential
        and (signatures < :signatures or (signatures = 0 and :signatures = 0))
      """;

  private final JdbcClient jdbc;

  PasskeyCredentials(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** A device counts less than it did before: there may be two of it. */
  static final class CountWentBack extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final long person;

    CountWentBack(long person) {
      super("The passkey's count of signatures went back");
      this.person = person;
    }

    /** Whose account the passkey opens. */
    long person() {
      return person;
    }
  }

  @Override
  public void save(CredentialRecord passkey) {
    if (findByCredentialId(passkey.getCredentialId()) == null) {
      add(passkey);
    } else {
      use(passkey);
    }
  }

  @Override
  public @Nullable CredentialRecord findByCredentialId(Bytes credential) {
    return jdbc.sql(FIND + "k.credential = :credential")
        .param("credential", credential.toBase64UrlString())
        .query(PasskeyCredentials::row)
        .optional()
        .orElse(null);
  }

  @Override
  public List<CredentialRecord> findByUserId(Bytes handle) {
    return jdbc.sql(FIND + "o.handle = :handle order by k.id")
        .param("handle", handle.toBase64UrlString())
        .query(PasskeyCredentials::row)
        .list();
  }

  @Override
  public void delete(Bytes credential) {
    jdbc.sql("delete from passkey where credential = :credential")
        .param("credential", credential.toBase64UrlString())
        .update();
  }

  private void add(CredentialRecord passkey) {
    Bytes attestation = passkey.getAttestationObject();
    if (attestation == null) {
      throw new IllegalArgumentException("A passkey without an attestation");
    }
    jdbc.sql(ADD)
        .param("credential", passkey.getCredentialId().toBase64UrlString())
        .param("name", passkey.getLabel())
        .param("key", passkey.getPublicKey().getBytes())
        .param("attestation", attestation.getBytes())
        .param("transports", written(passkey.getTransports()))
        .param("signatures", passkey.getSignatureCount())
        .param("eligible", passkey.isBackupEligible())
        .param("backedUp", passkey.isBackupState())
        .param("now", Accounts.now())
        .param("handle", passkey.getUserEntityUserId().toBase64UrlString())
        .update();
  }

  private void use(CredentialRecord passkey) {
    int rows =
        jdbc.sql(USE)
            .param("signatures", passkey.getSignatureCount())
            .param("backedUp", passkey.isBackupState())
            .param("now", Accounts.now())
            .param("credential", passkey.getCredentialId().toBase64UrlString())
            .update();
    if (rows == 0) {
      throw new CountWentBack(personOf(passkey.getCredentialId()));
    }
  }

  private long personOf(Bytes credential) {
    return jdbc.sql("select person_id from passkey where credential = :credential")
        .param("credential", credential.toBase64UrlString())
        .query(Long.class)
        .single();
  }

  private static String written(Set<AuthenticatorTransport> transports) {
    return transports.stream()
        .map(AuthenticatorTransport::getValue)
        .sorted()
        .collect(Collectors.joining(","));
  }

  private static Set<AuthenticatorTransport> read(String transports) {
    return Stream.of(transports.split(","))
        .filter(text -> !text.isEmpty())
        .map(AuthenticatorTransport::valueOf)
        .collect(Collectors.toSet());
  }

  private static CredentialRecord row(ResultSet row, int number) throws SQLException {
    return ImmutableCredentialRecord.builder()
        .userEntityUserId(Bytes.fromBase64(row.getString("handle")))
        .credentialType(PublicKeyCredentialType.PUBLIC_KEY)
        .credentialId(Bytes.fromBase64(row.getString("credential")))
        .label(row.getString("name"))
        .publicKey(new ImmutablePublicKeyCose(row.getBytes("public_key")))
        .attestationObject(new Bytes(row.getBytes("attestation")))
        .transports(read(row.getString("transports")))
        .signatureCount(row.getLong("signatures"))
        .uvInitialized(true)
        .backupEligible(row.getBoolean("backup_eligible"))
        .backupState(row.getBoolean("backed_up"))
        .created(Accounts.instantOf(row, "created_at"))
        .build();
  }
}
