package club.yearline.accounts;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.accounts.DemoPeople.Invited;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.TestPropertySource;

/** The accounts that the demo comes with. */
@WholeApplication
// Read by nobody: it keeps the start, and so its people, from being shared.
@TestPropertySource(properties = "start.of=demo-people")
@DirtiesContext
class DemoPeopleTest {

  @Autowired private DemoPeople people;
  @Autowired private Accounts accounts;
  @Autowired private Hashing hashing;

  @Test
  void aClubIsInvitedOnceAndItsPasswordsAreStoredNowhere() {
    List<Invited> club = people.invite();
    assertThat(club)
        .extracting(Invited::role)
        .containsOnly(Role.MEMBER, Role.MODERATOR, Role.KEEPER)
        .hasSize(6);
    assertThat(club).extracting(Invited::password).doesNotHaveDuplicates();
    for (Invited invited : club) {
      Account account =
          accounts.withEmail(EmailAddress.of(invited.email()).orElseThrow()).orElseThrow();
      assertThat(account.password()).doesNotContain(invited.password());
      assertThat(hashing.matches(invited.password(), account.password())).isTrue();
    }
    assertThat(people.invite()).isEmpty();
  }
}
