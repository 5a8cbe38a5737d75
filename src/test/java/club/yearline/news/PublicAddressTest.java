package club.yearline.news;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.mock.web.MockHttpServletRequest;

class PublicAddressTest {

  private static MockHttpServletRequest asked(String scheme, String host, int port, String root) {
    MockHttpServletRequest request = new MockHttpServletRequest("GET", root + "/feed");
    request.setScheme(scheme);
    request.setServerName(host);
    request.setServerPort(port);
    request.setContextPath(root);
    return request;
  }

  @ParameterizedTest
  @CsvSource({
    "https, catalogue.example, 443, '', https://catalogue.example",
    "http, localhost, 8080, '', http://localhost:8080",
    "https, club.example, 443, /catalogue, https://club.example/catalogue"
  })
  void withoutASettingItIsWhatTheRequestSays(
      String scheme, String host, int port, String root, String address) {
    PublicAddress unset = new PublicAddress("");
    assertThat(unset.isConfigured()).isFalse();
    assertThat(unset.of(asked(scheme, host, port, root))).isEqualTo(address);
  }

  @Test
  void theSettingWinsOverWhateverARequestClaims() {
    PublicAddress set = new PublicAddress(" https://club.example/catalogue/ ");
    assertThat(set.isConfigured()).isTrue();
    assertThat(set.of(asked("http", "evil.example", 80, "")))
        .isEqualTo("https://club.example/catalogue");
    assertThat(set.configured("/inbox")).isEqualTo("https://club.example/catalogue/inbox");
  }

  @ParameterizedTest
  @ValueSource(strings = {"catalogue.example", "ftp://a.example", "https://", "https://a b/", "/"})
  void aSettingThatIsNoAddressIsRefusedAtTheStart(String setting) {
    assertThatThrownBy(() -> new PublicAddress(setting))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("yearline.address");
  }
}
