package club.yearline.accounts;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The site that passkeys are made for. A device gives a key to no other.
 *
 * @param id the name the keys are bound to: the host of the pages, or a domain that holds it
 * @param origins where pages of the site may stand
 */
record PasskeySite(String id, Set<String> origins) {

  private static final String LOCAL = "localhost";
  private static final Pattern NUMBERS = Pattern.compile("[0-9.]+|\\[.*");

  /**
   * A site.
   *
   * @throws IllegalArgumentException if no browser would make a passkey for it; the message says
   *     what to do
   */
  PasskeySite {
    id = id.toLowerCase(Locale.ROOT);
    origins = Set.copyOf(checked(id, origins));
  }

  /** The site whose pages stand at an address. */
  static PasskeySite at(String address) {
    URI uri = parsed(address);
    return new PasskeySite(uri.getHost(), Set.of(origin(uri)));
  }

  /** The site on a computer of one's own, which browsers trust without a secured connection. */
  static PasskeySite local(int port) {
    return new PasskeySite(
        LOCAL, Set.of("http://" + LOCAL + ":" + port, "https://" + LOCAL + ":" + port));
  }

  private static Set<String> checked(String id, Set<String> origins) {
    if (!id.equals(LOCAL) && (id.indexOf('.') < 0 || NUMBERS.matcher(id).matches())) {
      throw new IllegalArgumentException(
          "Passkeys are bound to the name of a host, such as catalogue.example; \"%s\" is none"
              .formatted(id));
    }
    Set<String> checked = new LinkedHashSet<>();
    for (String text : origins) {
      URI origin = parsed(text);
      String host = origin.getHost().toLowerCase(Locale.ROOT);
      if (!host.equals(id) && !host.endsWith("." + id)) {
        throw new IllegalArgumentException(
            "Passkeys for \"%s\" work on no page at %s. Give a domain that holds the host"
                .formatted(id, text));
      }
      if (!"https".equals(origin.getScheme()) && !isLocal(host)) {
        throw new IllegalArgumentException(
            "Browsers make passkeys on secured connections only; %s must begin with https://"
                .formatted(text));
      }
      checked.add(origin(origin));
    }
    return checked;
  }

  private static boolean isLocal(String host) {
    return host.equals(LOCAL) || host.endsWith("." + LOCAL);
  }

  private static URI parsed(String address) {
    try {
      URI uri = new URI(address.strip());
      if (uri.getScheme() != null && uri.getHost() != null && uri.getRawUserInfo() == null) {
        return uri;
      }
    } catch (URISyntaxException e) {
      // Said below, like every other text that is no address.
    }
    throw new IllegalArgumentException(
        "\"%s\" is not the address of a site. Give one such as https://catalogue.example"
            .formatted(address));
  }

  /** As browsers write it: without a path, and without the port that goes without saying. */
  private static String origin(URI uri) {
    String scheme = uri.getScheme().toLowerCase(Locale.ROOT);
    int port = uri.getPort();
    boolean usual = port < 0 || port == (scheme.equals("https") ? 443 : 80);
    return scheme + "://" + uri.getHost().toLowerCase(Locale.ROOT) + (usual ? "" : ":" + port);
  }
}
