package club.yearline.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.mock.web.MockHttpServletRequest;

class SentFromTest {

  @ParameterizedTest
  @CsvSource({
    "POST, https://club.example/corrections/7, /corrections/7",
    "POST, https://CLUB.example/corrections/new?kind=change, /corrections/new?kind=change",
    "GET, https://club.example/corrections/7,",
    "POST, https://elsewhere.example/corrections/7,",
    "POST, https://club.example.elsewhere.example/,",
    "POST, https://club.example//elsewhere.example/,",
    "POST, https://club.example,",
    "POST, javascript:alert(1),",
    "POST, not an address,",
    "POST, ,",
  })
  void theWayBackLeadsToAPageOfOurs(String method, String referer, String back) {
    MockHttpServletRequest request = new MockHttpServletRequest(method, "/corrections/7/submit");
    request.setServerName("club.example");
    if (referer != null) {
      request.addHeader("Referer", referer);
    }
    assertThat(SentFrom.of(request)).isEqualTo(back);
  }
}
