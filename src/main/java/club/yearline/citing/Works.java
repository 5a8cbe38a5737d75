package club.yearline.citing;

import club.yearline.accounts.Addresses;
import club.yearline.accounts.Club;
import club.yearline.catalog.Reading;
import club.yearline.citation.Name;
import club.yearline.citation.Reference;
import club.yearline.web.Phrases;
import jakarta.servlet.http.HttpServletRequest;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** The works that an address of ours stands for: the page, and the source that it is about. */
@Component
class Works {

  private final PageTitles titles;
  private final Phrases phrases;
  private final Club club;
  private final Addresses addresses;

  Works(PageTitles titles, Phrases phrases, Club club, Addresses addresses) {
    this.titles = titles;
    this.phrases = phrases;
    this.club = club;
    this.addresses = addresses;
  }

  /** The page at the revision read, which its title and its address name. */
  Reference page(PageAddress address, Reading reading, HttpServletRequest request) {
    String title =
        titles.title(address, reading).orElseThrow(() -> PageAddress.refusal(address.text()));
    LocalDate published =
        reading.snapshot().revision().publishedAt().atZone(ZoneOffset.UTC).toLocalDate();
    return Reference.page(
        id(address, reading),
        phrases.of("citing.at-revision", title, reading.revision()),
        phrases.of("site.name"),
        club.name().isBlank() ? List.of() : List.of(Name.organisation(club.name().strip())),
        published,
        addresses.here(request, address.at(reading.revision())),
        LocalDate.now(ZoneOffset.UTC));
  }

  /** The source that a page is about. */
  Optional<Reference> source(PageAddress address, Reading reading) {
    List<String> steps = address.steps();
    return steps.size() == 2 && steps.get(0).equals("sources")
        ? reading.catalogue().source(steps.get(1)).map(s -> Reference.of(s.source()))
        : Optional.empty();
  }

  private static String id(PageAddress address, Reading reading) {
    String words = address.text().replaceAll("[^A-Za-z0-9]+", "-").replaceAll("^-|-$", "");
    return "yearline-" + (words.isEmpty() ? "" : words + "-") + "r" + reading.revision();
  }
}
