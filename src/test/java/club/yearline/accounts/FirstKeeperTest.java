package club.yearline.accounts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.ContextConfiguration;

/** The first start: one way in, and no password that others know. */
@ExtendWith(OutputCaptureExtension.class)
@SpringBootTest(
    webEnvironment = WebEnvironment.RANDOM_PORT,
    // The second property is read by nobody: it keeps the start from being shared.
    properties = {"yearline.demo=false", "start.of=first-keeper"})
@ContextConfiguration(initializers = WholeApplication.Fresh.class)
@DirtiesContext
class FirstKeeperTest {

  private static final Pattern LINK =
      Pattern.compile("(http://localhost:\\d+)(/set-up/[\\w-]{43})");

  @Autowired private JdbcClient jdbc;

  @Test
  void theLogHasALinkThatMakesOneKeeper(CapturedOutput output) {
    Matcher link = LINK.matcher(output.getAll());
    assertThat(link.find()).as("a link in the log").isTrue();
    String secret = link.group(2).substring("/set-up/".length());
    assertThat(jdbc.sql("select count(*) from person").query(Integer.class).single()).isZero();
    assertThat(jdbc.sql("select * from one_time_link").query().listOfRows().toString())
        .doesNotContain(secret)
        .contains(Secret.hash(secret));
    Visitor visitor = new Visitor(link.group(1));
    visitor
        .open(link.group(2))
        .submit("", "name", "Kay", "email", "kay@club.example", "password", "password12345678");
    assertThat(visitor.text()).contains("guessed first");
    visitor.submit(
        "", "name", "Kay", "email", "kay@club.example", "password", "ten kites over the threshold");
    assertThat(visitor.text()).contains("The keeper is set up");
    assertThat(visitor.open(link.group(2)).status()).isEqualTo(410);
    visitor.signIn("kay@club.example", "ten kites over the threshold").open("/admin/people");
    assertThat(visitor.text()).contains("Kay").contains("keeper");
  }
}
