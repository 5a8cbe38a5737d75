package club.yearline.accounts;

import com.webauthn4j.util.exception.WebAuthnException;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.security.web.webauthn.api.AuthenticatorAssertionResponse;
import org.springframework.security.web.webauthn.api.AuthenticatorAttestationResponse;
import org.springframework.security.web.webauthn.api.AuthenticatorResponse;
import org.springframework.security.web.webauthn.api.Bytes;
import org.springframework.security.web.webauthn.api.CredentialRecord;
import org.springframework.security.web.webauthn.api.PublicKeyCredential;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialCreationOptions;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialRequestOptions;
import org.springframework.security.web.webauthn.jackson.WebauthnJacksonModule;
import org.springframework.security.web.webauthn.management.ImmutableRelyingPartyRegistrationRequest;
import org.springframework.security.web.webauthn.management.RelyingPartyAuthenticationRequest;
import org.springframework.security.web.webauthn.management.RelyingPartyPublicKey;
import org.springframework.stereotype.Component;
import tools.jackson.core.JacksonException;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/**
 * What passes between us and a device, as text: the question, and the judging of the answer. The
 * framework judges; here it is seen to that a question is answered once, by whom it was put to.
 */
@Component
class PasskeyCeremony {

  private static final Logger log = LoggerFactory.getLogger(PasskeyCeremony.class);

  private static final TypeReference<PublicKeyCredential<AuthenticatorAttestationResponse>> MADE =
      new TypeReference<>() {};
  private static final TypeReference<PublicKeyCredential<AuthenticatorAssertionResponse>> SIGNED =
      new TypeReference<>() {};

  /** Longer answers are not a device's. */
  private static final int LONGEST = 100_000;

  private final PasskeyParty party;
  private final PasskeyChallenges challenges;
  private final PasskeyOwners owners;
  private final PasskeyCredentials passkeys;
  private final JsonMapper json =
      JsonMapper.builder().addModule(new WebauthnJacksonModule()).build();

  PasskeyCeremony(
      PasskeyParty party,
      PasskeyChallenges challenges,
      PasskeyOwners owners,
      PasskeyCredentials passkeys) {
    this.party = party;
    this.challenges = challenges;
    this.owners = owners;
    this.passkeys = passkeys;
  }

  /** An answer that proves nothing. */
  static final class Refused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    Refused(String why, @Nullable Throwable cause) {
      super(why, cause);
    }
  }

  /** Asks a person's device for a new passkey. */
  String askToMake(Account account, String browser) {
    Bytes challenge = challenges.ask(making(account), browser);
    return json.writeValueAsString(party.toMake(account, challenge));
  }

  /** Keeps the passkey that a device made, under a name. */
  void keep(Account account, String answer, String name, String browser) {
    judged(
        () -> {
          PublicKeyCredential<AuthenticatorAttestationResponse> made = read(answer, MADE);
          Bytes challenge = taken(made, making(account), browser);
          PublicKeyCredentialCreationOptions asked = party.toMake(account, challenge);
          return party
              .operations(challenge)
              .registerCredential(
                  new ImmutableRelyingPartyRegistrationRequest(
                      asked, new RelyingPartyPublicKey(made, name)));
        });
  }

  /** Asks whatever device is there to sign with one of its passkeys for this site. */
  String askToSign(String browser) {
    return json.writeValueAsString(party.toSign(challenges.ask("sign-in", browser)));
  }

  /**
   * Judges what a device signed.
   *
   * @return whose passkey it was
   */
  long signer(String answer, String browser) {
    return judged(
        () -> {
          PublicKeyCredential<AuthenticatorAssertionResponse> signed = read(answer, SIGNED);
          Bytes challenge = taken(signed, "sign-in", browser);
          Bytes owner = ownerOf(signed);
          PublicKeyCredentialRequestOptions asked = party.toSign(challenge);
          party
              .operations(challenge)
              .authenticate(new RelyingPartyAuthenticationRequest(asked, signed));
          return owners.personOf(owner).orElseThrow(() -> new Refused("no owner", null));
        });
  }

  /** Whose passkey it is; what the device says about that must agree. */
  private Bytes ownerOf(PublicKeyCredential<AuthenticatorAssertionResponse> signed) {
    CredentialRecord known = passkeys.findByCredentialId(signed.getRawId());
    if (known == null) {
      throw new Refused("an unknown passkey", null);
    }
    if (!Objects.equals(known.getUserEntityUserId(), signed.getResponse().getUserHandle())) {
      throw new Refused("the passkey of somebody else", null);
    }
    return known.getUserEntityUserId();
  }

  private Bytes taken(
      PublicKeyCredential<? extends AuthenticatorResponse> answer, String purpose, String browser) {
    byte[] said = answer.getResponse().getClientDataJSON().getBytes();
    Bytes challenge = Bytes.fromBase64(json.readTree(said).path("challenge").asString(""));
    if (!challenges.take(challenge, purpose, browser)) {
      throw new Refused("an answer to no open question", null);
    }
    return challenge;
  }

  private <R extends AuthenticatorResponse> PublicKeyCredential<R> read(
      String answer, TypeReference<PublicKeyCredential<R>> type) {
    if (answer.length() > LONGEST) {
      throw new Refused("too long an answer", null);
    }
    PublicKeyCredential<R> read = json.readValue(answer, type);
    if (!isWhole(read)) {
      throw new Refused("an answer with parts missing", null);
    }
    return read;
  }

  /** The framework builds an answer from whatever parts came, and trips over those that did not. */
  private static boolean isWhole(@Nullable PublicKeyCredential<?> answer) {
    return answer != null
        && Stream.concat(Stream.of(answer.getRawId()), parts(answer.getResponse()))
            .allMatch(Objects::nonNull);
  }

  private static Stream<@Nullable Object> parts(@Nullable AuthenticatorResponse response) {
    if (response instanceof AuthenticatorAssertionResponse signed) {
      return Stream.of(
          signed.getClientDataJSON(), signed.getAuthenticatorData(), signed.getSignature());
    }
    return response instanceof AuthenticatorAttestationResponse made
        ? Stream.of(made.getClientDataJSON(), made.getAttestationObject())
        : Stream.of((Object) null);
  }

  /** Whatever is wrong with an answer, whoever sent it hears the same. */
  private static <T> T judged(Supplier<T> work) {
    try {
      return work.get();
    } catch (JacksonException | WebAuthnException | IllegalArgumentException e) {
      log.debug("A passkey's answer was refused", e);
      throw new Refused("the answer does not hold", e);
    }
  }

  private static String making(Account account) {
    return "make " + account.id();
  }
}
