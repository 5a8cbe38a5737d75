package club.yearline.accounts;

import com.webauthn4j.WebAuthnManager;
import java.time.Duration;
import java.util.Optional;
import org.springframework.security.web.webauthn.api.AuthenticatorSelectionCriteria;
import org.springframework.security.web.webauthn.api.Bytes;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialCreationOptions;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialRequestOptions;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialRpEntity;
import org.springframework.security.web.webauthn.api.ResidentKeyRequirement;
import org.springframework.security.web.webauthn.api.UserVerificationRequirement;
import org.springframework.security.web.webauthn.management.ImmutablePublicKeyCredentialCreationOptionsRequest;
import org.springframework.security.web.webauthn.management.ImmutablePublicKeyCredentialRequestOptionsRequest;
import org.springframework.security.web.webauthn.management.WebAuthnRelyingPartyOperations;
import org.springframework.security.web.webauthn.management.Webauthn4JRelyingPartyOperations;
import org.springframework.stereotype.Component;

/**
 * What this site asks of devices: a key that the device finds by itself, and that its owner unlocks
 * by finger, face or number each time, so that it stands for both factors. A question is made from
 * its challenge alone, so that nothing else need be kept until the answer comes.
 */
@Component
class PasskeyParty {

  private static final Duration PATIENCE = Duration.ofMinutes(5);

  private final PasskeySites sites;
  private final PasskeyOwners owners;
  private final PasskeyCredentials passkeys;
  private final Post post;
  private final WebAuthnManager judge = judge();

  PasskeyParty(PasskeySites sites, PasskeyOwners owners, PasskeyCredentials passkeys, Post post) {
    this.sites = sites;
    this.owners = owners;
    this.passkeys = passkeys;
    this.post = post;
  }

  /** The name that browsers compare with the address of the page; empty where passkeys are off. */
  Optional<String> site() {
    return sites.site().map(PasskeySite::id);
  }

  PublicKeyCredentialCreationOptions toMake(Account account, Bytes challenge) {
    return operations(challenge)
        .createPublicKeyCredentialCreationOptions(
            new ImmutablePublicKeyCredentialCreationOptionsRequest(
                new SignedInActor(account.actor())));
  }

  PublicKeyCredentialRequestOptions toSign(Bytes challenge) {
    return operations(challenge)
        .createCredentialRequestOptions(
            new ImmutablePublicKeyCredentialRequestOptionsRequest(null));
  }

  WebAuthnRelyingPartyOperations operations(Bytes challenge) {
    PasskeySite site =
        sites.site().orElseThrow(() -> new IllegalStateException("Passkeys are off here"));
    PublicKeyCredentialRpEntity name =
        PublicKeyCredentialRpEntity.builder().id(site.id()).name(post.clubName()).build();
    Webauthn4JRelyingPartyOperations operations =
        new Webauthn4JRelyingPartyOperations(owners, passkeys, name, site.origins());
    operations.setWebAuthnManager(judge);
    operations.setCustomizeCreationOptions(
        options ->
            options
                .challenge(challenge)
                .timeout(PATIENCE)
                .authenticatorSelection(
                    AuthenticatorSelectionCriteria.builder()
                        .residentKey(ResidentKeyRequirement.REQUIRED)
                        .userVerification(UserVerificationRequirement.REQUIRED)
                        .build()));
    operations.setCustomizeRequestOptions(
        options ->
            options
                .challenge(challenge)
                .timeout(PATIENCE)
                .userVerification(UserVerificationRequirement.REQUIRED));
    return operations;
  }

  /** Counts are compared where the last one is kept: see {@link PasskeyCredentials}. */
  private static WebAuthnManager judge() {
    WebAuthnManager judge = WebAuthnManager.createNonStrictWebAuthnManager();
    judge.getAuthenticationDataVerifier().setMaliciousCounterValueHandler(signed -> {});
    return judge;
  }
}
