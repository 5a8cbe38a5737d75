package club.yearline.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.accounts.Actor;
import club.yearline.accounts.People;
import club.yearline.accounts.Role;
import club.yearline.catalog.Snapshots;
import club.yearline.fleet.Register;
import club.yearline.fleet.RegisterFilling;
import club.yearline.fleet.Registered;
import club.yearline.fleet.Sightings;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.DefaultApplicationArguments;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The demo's start fills the register, once. */
@SpringBootTest(
    properties = {
      "spring.datasource.url=jdbc:h2:mem:demo-register;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;"
          + "DEFAULT_NULL_ORDERING=HIGH",
      "yearline.demo=true"
    })
class DemoRegisterLoadingTest {

  @Autowired private DemoLoader loader;
  @Autowired private RegisterFilling filling;
  @Autowired private Register register;
  @Autowired private Sightings sightings;
  @Autowired private People people;
  @Autowired private Snapshots snapshots;
  @Autowired private JdbcClient jdbc;

  private long count(String table) {
    return jdbc.sql("select count(*) from " + table).query(Long.class).single();
  }

  @Test
  void everybodyOfTheDemoKeepsAirframesAndSomeAreShared() {
    List<Actor> club = people.withRole(Role.MEMBER);
    assertThat(club).hasSize(6).allSatisfy(p -> assertThat(register.own(p)).isNotEmpty());
    Actor keeper = club.get(5);
    assertThat(register.own(club.get(0)).stream().map(Registered::id))
        .anyMatch(id -> register.find(keeper, id).isPresent())
        .anyMatch(id -> register.find(keeper, id).isEmpty());
  }

  @Test
  void allOfThemServeAsEvidence() {
    assertThat(count("airframe")).isGreaterThanOrEqualTo(120);
    assertThat(sightings.latest("door-latch", "lt", "la-2b")).hasSizeGreaterThan(30);
  }

  @Test
  void loadingAgainChangesNothing() throws Exception {
    long airframes = count("airframe");
    long observations = count("observation");
    loader.run(new DefaultApplicationArguments());
    DemoRegister again =
        new DemoRegister(
            snapshots.head().catalogue(), people.withRole(Role.MEMBER), DemoRegister.SEED);
    assertThat(filling.fill(again.make())).isFalse();
    assertThat(count("airframe")).isEqualTo(airframes);
    assertThat(count("observation")).isEqualTo(observations);
  }
}
