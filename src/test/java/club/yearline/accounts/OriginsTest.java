package club.yearline.accounts;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.mock.web.MockHttpServletRequest;

class OriginsTest {

  @ParameterizedTest
  @CsvSource({
    "same-origin, , , true",
    "none, , , true",
    "same-site, , , false",
    "cross-site, , , false",
    "cross-site, https://catalogue.example, , false",
    ", , , true",
    ", https://catalogue.example, , true",
    ", https://catalogue.example:443, , true",
    ", http://catalogue.example, , false",
    ", https://catalogue.example:8443, , false",
    ", https://elsewhere.example, , false",
    ", https://catalogue.example.elsewhere.example, , false",
    ", null, , false",
    ", https://[, , false",
    ", https://public.example, public.example, true",
    ", https://elsewhere.example, public.example, false"
  })
  void aFormOfAnotherSiteIsToldFromOurs(
      String site, String origin, String forwarded, boolean ours) {
    MockHttpServletRequest request = new MockHttpServletRequest("POST", "/account/name");
    request.setScheme("https");
    request.setServerName("catalogue.example");
    request.setServerPort(443);
    add(request, "Sec-Fetch-Site", site);
    add(request, "Origin", origin);
    add(request, "X-Forwarded-Host", forwarded);
    assertThat(Origins.isOurs(request)).isEqualTo(ours);
  }

  private static void add(MockHttpServletRequest request, String name, String value) {
    if (value != null) {
      request.addHeader(name, value);
    }
  }
}
