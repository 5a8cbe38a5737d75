package club.yearline.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.mock.env.MockEnvironment;

class PasskeySiteTest {

  @ParameterizedTest
  @CsvSource({
    "https://catalogue.example, catalogue.example, https://catalogue.example",
    "https://Catalogue.Example/, catalogue.example, https://catalogue.example",
    "https://catalogue.example:443/yearline, catalogue.example, https://catalogue.example",
    "https://catalogue.example:8443, catalogue.example, https://catalogue.example:8443",
    "http://localhost:8080, localhost, http://localhost:8080",
    "http://localhost, localhost, http://localhost"
  })
  void thePublicAddressSaysForWhichSite(String address, String id, String origin) {
    assertThat(sites(address, "", List.of()).site()).contains(new PasskeySite(id, Set.of(origin)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "http://catalogue.example",
        "https://192.0.2.7",
        "https://[2001:db8::7]",
        "https://intranet",
        "catalogue.example",
        "https://"
      })
  void anAddressThatCarriesNoPasskeysSwitchesThemOff(String address) {
    assertThat(sites(address, "", List.of()).site()).isEmpty();
  }

  @Test
  void withoutAnAddressPasskeysAreForThisComputer() {
    assertThat(sites("", "", List.of()).site().orElseThrow().id()).isEqualTo("localhost");
    assertThat(sites("", "", List.of()).site().orElseThrow().origins())
        .contains("http://localhost:8080");
    assertThat(new PasskeySites(new MockEnvironment(), "", "", List.of()).site()).isEmpty();
  }

  @Test
  void theSettingsNameADomainThatHoldsThePages() {
    assertThat(sites("https://catalogue.club.example", "club.example", List.of()).site())
        .contains(new PasskeySite("club.example", Set.of("https://catalogue.club.example")));
    List<String> two = List.of("https://a.club.example", "https://b.club.example");
    assertThat(sites("", "club.example", two).site().orElseThrow().origins())
        .containsExactlyInAnyOrderElementsOf(two);
    assertThat(sites("https://club.example", "", List.of("https://www.club.example")).site())
        .contains(new PasskeySite("club.example", Set.of("https://www.club.example")));
  }

  @ParameterizedTest
  @CsvSource({
    "other.example, https://catalogue.example, work on no page",
    "ample, https://catalogue.example, name of a host",
    "talogue.example, https://catalogue.example, work on no page",
    "catalogue.example, http://catalogue.example, secured connections",
    "catalogue.example, https://user@catalogue.example, not the address",
    "192.0.2.7, https://192.0.2.7, name of a host"
  })
  void wrongSettingsStopTheStartAndSayWhatToDo(String id, String origin, String said) {
    assertThatThrownBy(() -> sites("", id, List.of(origin)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(said);
  }

  private static PasskeySites sites(String address, String id, List<String> origins) {
    MockEnvironment here = new MockEnvironment().withProperty("local.server.port", "8080");
    return new PasskeySites(here, address, id, origins);
  }
}
