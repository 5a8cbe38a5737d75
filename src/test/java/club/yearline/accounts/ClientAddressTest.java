package club.yearline.accounts;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClientAddressTest {

  @ParameterizedTest
  @CsvSource({
    "203.0.113.77, 203.0.113.77, 203.0.113.…",
    "2001:db8:1:2:3:4:5:6, 2001:db8:1:2:, 2001:db8:1:…",
    "unknown, unknown, unknown"
  })
  void networksAreThrottledTogetherAndTheLogKeepsLess(String address, String network, String log) {
    ClientAddress from = new ClientAddress(address);
    assertThat(from.network()).isEqualTo(network);
    assertThat(from.shortened()).isEqualTo(log);
  }
}
