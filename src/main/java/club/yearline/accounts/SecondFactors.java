package club.yearline.accounts;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.codec.binary.Base32;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/**
 * The second factor of accounts: the shared secret, sealed, and codes for the day the phone is
 * lost.
 */
@Repository
class SecondFactors {

  private static final int RECOVERY_CODES = 10;

  /** 80 bits, 16 letters: a quick hash guards it. */
  private static final int RECOVERY_BYTES = 10;

  private static final Pattern GROUPS = Pattern.compile("(.{4})(?!$)");
  private static final Pattern BETWEEN = Pattern.compile("[^A-Z2-7]");

  private final JdbcClient jdbc;

  private final Seal seal;

  SecondFactors(JdbcClient jdbc, Seal seal) {
    this.jdbc = jdbc;
    this.seal = seal;
  }

  /** The shared secret of an account; empty where there is none, or its key is missing. */
  Optional<String> secretOf(Account account) {
    return Optional.ofNullable(account.totpSecret())
        .flatMap(stored -> seal.open(account.id(), stored));
  }

  /** Prepares a secret; the factor is off until a code of it has been typed. */
  void prepare(long person, String secret) {
    jdbc.sql(
            """
            update person set totp_secret = :secret, totp_step = null, version = version + 1
            where id = :id and totp_since is null and state = 'ACTIVE'
            """)
        .param("secret", seal.close(person, secret))
        .param("id", person)
        .update();
  }

  /** Switches the factor on and gives back the recovery codes, which are shown this once. */
  @Transactional
  public List<String> switchOn(long person) {
    jdbc.sql(
            """
            update person set totp_since = :now, version = version + 1
            where id = :id and totp_secret is not null and totp_since is null
            """)
        .param("now", Accounts.now())
        .param("id", person)
        .update();
    return newRecoveryCodes(person);
  }

  @Transactional
  public void switchOff(long person) {
    jdbc.sql(
            """
            update person set totp_secret = null, totp_since = null, totp_step = null,
              version = version + 1
            where id = :id
            """)
        .param("id", person)
        .update();
    forgetRecoveryCodes(person);
  }

  @Transactional
  public List<String> newRecoveryCodes(long person) {
    forgetRecoveryCodes(person);
    List<String> codes = new ArrayList<>();
    for (int i = 0; i < RECOVERY_CODES; i++) {
      String code = new Base32().encodeToString(Secret.bytes(RECOVERY_BYTES));
      jdbc.sql("insert into recovery_code (person_id, hash) values (:id, :hash)")
          .param("id", person)
          .param("hash", Secret.hash(code))
          .update();
      codes.add(GROUPS.matcher(code).replaceAll("$1-"));
    }
    return codes;
  }

  /** Whether a code from the app is right and has not been used; if so, it is used now. */
  boolean accepts(Account account, String typed) {
    return secretOf(account)
        .map(secret -> OneTimeCodes.step(secret, typed, Instant.now()))
        .filter(step -> step.isPresent() && use(account.id(), step.getAsLong()))
        .isPresent();
  }

  /** Whether a recovery code is right; if so, it is used up. */
  boolean acceptsRecovery(long person, String typed) {
    String code = BETWEEN.matcher(typed.toUpperCase(Locale.ROOT)).replaceAll("");
    return jdbc.sql("delete from recovery_code where person_id = :id and hash = :hash")
            .param("id", person)
            .param("hash", Secret.hash(code))
            .update()
        == 1;
  }

  int recoveryCodesLeft(long person) {
    return jdbc.sql("select count(*) from recovery_code where person_id = :id")
        .param("id", person)
        .query(Integer.class)
        .single();
  }

  private boolean use(long person, long step) {
    return jdbc.sql(
                """
                update person set totp_step = :step
                where id = :id and (totp_step is null or totp_step < :step)
                """)
            .param("step", step)
            .param("id", person)
            .update()
        == 1;
  }

  private void forgetRecoveryCodes(long person) {
    jdbc.sql("delete from recovery_code where person_id = :id").param("id", person).update();
  }
}
