package club.yearline.accounts;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.mock.web.MockHttpServletRequest;

class KeptFormTest {

  private static MockHttpServletRequest form() {
    MockHttpServletRequest request = new MockHttpServletRequest("POST", "/corrections/new");
    request.addParameter("note", "50 % & more = “so”\r\n<script>alert(1)</script>");
    request.addParameter("serial", "LT-0412", "LT-0413");
    request.addParameter("_csrf", "token");
    request.addParameter("currentPassword", "hangar doors face the wind");
    return request;
  }

  @Test
  void whatWasTypedIsKeptWordForWord() {
    KeptForm kept = KeptForm.of(form());
    assertThat(KeptForm.read(kept.written())).contains(kept);
    assertThat(kept.fields())
        .contains(
            new KeptForm.Field("note", "50 % & more = “so”\r\n<script>alert(1)</script>"),
            new KeptForm.Field("serial", "LT-0412"),
            new KeptForm.Field("serial", "LT-0413"));
  }

  @Test
  void tokensAndPasswordsAreNotKept() {
    assertThat(KeptForm.of(form()).fields())
        .noneMatch(f -> f.name().equals("_csrf") || f.name().equals("currentPassword"));
  }

  @Test
  void whatIsLongerThanAnyFormIsNotKept() {
    MockHttpServletRequest request = form();
    request.addParameter("more", "x".repeat(200_000));
    assertThat(KeptForm.canKeep(form())).isTrue();
    assertThat(KeptForm.canKeep(request)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "no question mark",
        "//elsewhere.example/?a=b",
        "https://elsewhere.example/?a=b",
        "/\\elsewhere.example?a=b",
        "/sign-out?a=b",
        "/corrections?a=%zz"
      })
  void aHiddenFieldThatWasTamperedWithIsIgnored(String written) {
    assertThat(KeptForm.read(written)).isEmpty();
  }
}
