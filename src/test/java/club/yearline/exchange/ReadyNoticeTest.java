package club.yearline.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.mock.env.MockEnvironment;

class ReadyNoticeTest {

  @Test
  void namesTheAddressToOpen() {
    assertThat(ReadyNotice.address(new MockEnvironment(), "8080"))
        .isEqualTo("http://localhost:8080/");
  }

  @Test
  void knowsOfEncryptionAndOfTheContextPath() {
    MockEnvironment environment =
        new MockEnvironment()
            .withProperty("server.ssl.bundle", "club")
            .withProperty("server.servlet.context-path", "/yearline");
    assertThat(ReadyNotice.address(environment, "8443"))
        .isEqualTo("https://localhost:8443/yearline/");
  }
}
