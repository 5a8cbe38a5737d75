package club.yearline.accounts;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.MessageDigest;
import java.security.Signature;
import java.security.interfaces.ECPublicKey;
import java.security.spec.ECGenParameterSpec;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A device with one passkey, in software, that can be made to lie. How its answers are laid out is
 * written from memory of Web Authentication; that browsers lay them out so is seen in the test in a
 * real browser.
 */
final class SoftDevice {

  static final int PRESENT = 0x01;
  static final int VERIFIED = 0x04;
  private static final int WITH_KEY = 0x40;

  private final JsonMapper json = new JsonMapper();
  private final byte[] id = Secret.bytes(32);
  private final KeyPair keys;

  /** What it says of itself. */
  String origin;

  String type = "";
  int flags = PRESENT | VERIFIED;
  int count = 1;
  String handle = "";

  SoftDevice(String origin) {
    this.origin = origin;
    try {
      KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
      generator.initialize(new ECGenParameterSpec("secp256r1"));
      keys = generator.generateKeyPair();
    } catch (GeneralSecurityException e) {
      throw new AssertionError(e);
    }
  }

  /** Makes the passkey, as it was asked to. */
  String make(String question) {
    JsonNode asked = json.readTree(question);
    handle = asked.path("user").path("id").asString();
    byte[] data = data(asked.path("rp").path("id").asString(), flags | WITH_KEY, key());
    return answer(
        Map.of(
            "clientDataJSON", text(client("webauthn.create", asked)),
            "attestationObject", text(attestation(data))));
  }

  /** Signs, as it was asked to. */
  String sign(String question) {
    JsonNode asked = json.readTree(question);
    byte[] data = data(asked.path("rpId").asString(), flags, new byte[0]);
    byte[] client = client("webauthn.get", asked);
    return answer(
        Map.of(
            "clientDataJSON", text(client),
            "authenticatorData", text(data),
            "signature", text(signature(joined(data, sha256(client)))),
            "userHandle", handle));
  }

  private String answer(Map<String, String> response) {
    return json.writeValueAsString(
        Map.of(
            "id", text(id),
            "rawId", text(id),
            "type", "public-key",
            "clientExtensionResults", Map.of(),
            "response", response));
  }

  private byte[] client(String usual, JsonNode asked) {
    return json.writeValueAsBytes(
        Map.of(
            "type",
            type.isEmpty() ? usual : type,
            "challenge",
            asked.path("challenge").asString(),
            "origin",
            origin,
            "crossOrigin",
            false));
  }

  private byte[] data(String site, int flags, byte[] key) {
    byte[] head = ByteBuffer.allocate(5).put((byte) flags).putInt(count++).array();
    return joined(sha256(site.getBytes(StandardCharsets.UTF_8)), head, key);
  }

  /** No maker's number, the key's own number, and the public half: COSE, ES256. */
  private byte[] key() {
    ECPublicKey half = (ECPublicKey) keys.getPublic();
    byte[] length = ByteBuffer.allocate(2).putShort((short) id.length).array();
    return joined(
        new byte[16],
        length,
        id,
        HexFormat.of().parseHex("a5010203262001215820"),
        coordinate(half.getW().getAffineX().toByteArray()),
        HexFormat.of().parseHex("225820"),
        coordinate(half.getW().getAffineY().toByteArray()));
  }

  /** CBOR: a map of fmt "none", attStmt {}, authData. */
  private static byte[] attestation(byte[] data) {
    return joined(
        HexFormat.of().parseHex("a363666d74646e6f6e656761747453746d74a068617574684461746158"),
        new byte[] {(byte) data.length},
        data);
  }

  private static byte[] coordinate(byte[] number) {
    byte[] padded = new byte[32];
    int from = Math.max(0, number.length - 32);
    System.arraycopy(number, from, padded, 32 - (number.length - from), number.length - from);
    return padded;
  }

  private byte[] signature(byte[] signed) {
    try {
      Signature signature = Signature.getInstance("SHA256withECDSA");
      signature.initSign(keys.getPrivate());
      signature.update(signed);
      return signature.sign();
    } catch (GeneralSecurityException e) {
      throw new AssertionError(e);
    }
  }

  private static byte[] sha256(byte[] bytes) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(bytes);
    } catch (GeneralSecurityException e) {
      throw new AssertionError(e);
    }
  }

  private static byte[] joined(byte[]... parts) {
    ByteArrayOutputStream joined = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      joined.writeBytes(part);
    }
    return joined.toByteArray();
  }

  private static String text(byte[] bytes) {
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }
}
