package club.yearline.accounts;

import org.jspecify.annotations.Nullable;

/** The settings as the keeper typed them. A box that is not ticked is not sent. */
record SettingsForm(
    @Nullable String name,
    @Nullable String closed,
    @Nullable String singleKeeper,
    @Nullable String joinRequests,
    @Nullable String logDays,
    @Nullable String version) {

  private static final int LONGEST_NAME = 120;
  private static final int MOST_DAYS = 3650;

  /** Notes what is wrong. */
  void check(Faults faults) {
    if (text(name).length() > LONGEST_NAME) {
      faults.at("name", "settings.name.too-long");
    } else if (text(name).chars().anyMatch(Character::isISOControl)) {
      faults.at("name", "person.name.control");
    }
    int days = number(logDays);
    if (days < 1 || days > MOST_DAYS) {
      faults.at("logDays", "settings.log-days.range");
    }
  }

  ClubSettings settings() {
    return new ClubSettings(
        text(name),
        closed != null,
        singleKeeper != null,
        joinRequests != null,
        number(logDays),
        number(version));
  }

  private static String text(@Nullable String typed) {
    return typed == null ? "" : typed.strip();
  }

  /** Not a number: outside every range. */
  private static int number(@Nullable String typed) {
    try {
      return Integer.parseInt(text(typed));
    } catch (NumberFormatException e) {
      return -1;
    }
  }
}
