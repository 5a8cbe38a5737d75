package club.yearline.inspection;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Throttle;
import club.yearline.effectivity.Located;
import club.yearline.fleet.Inspected;
import club.yearline.fleet.NewAirframe;
import club.yearline.fleet.Register;
import club.yearline.spotting.Seen;
import club.yearline.uploads.Evidence;
import club.yearline.uploads.EvidenceDesk;
import club.yearline.uploads.NotTaken;
import club.yearline.web.Phrases;
import club.yearline.web.Refusal;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.web.multipart.MultipartFile;

/** Saves inspections into the register: all of one or nothing, and once. */
@Component
class Saving {

  private static final int INSPECTIONS_AN_HOUR = 60;
  private static final int PHOTOGRAPHS_AN_HOUR = 200;

  private final Register register;
  private final SavedInspections saved;
  private final EvidenceDesk desk;
  private final Throttle throttle;
  private final Phrases phrases;

  Saving(
      Register register,
      SavedInspections saved,
      EvidenceDesk desk,
      Throttle throttle,
      Phrases phrases) {
    this.register = register;
    this.saved = saved;
    this.desk = desk;
    this.throttle = throttle;
    this.phrases = phrases;
  }

  /**
   * What is sent with an inspection to be saved.
   *
   * @param id given by the inspector's device
   * @param on the day
   * @param registration the airframe's mark; null where none was given
   * @param photographs those of each feature, by its key
   */
  record Wanted(
      UUID id,
      LocalDate on,
      @Nullable String registration,
      Map<String, List<MultipartFile>> photographs) {}

  /** Saves; an inspection that is sent again is not saved again. */
  void save(Actor actor, int revision, Located.Found found, List<Seen> seen, Wanted wanted)
      throws IOException {
    Optional<Long> known = register.stored(actor, wanted.id());
    long airframe = known.isPresent() ? known.get() : store(actor, found, seen, wanted);
    saved.save(
        actor,
        new SavedInspection(
            wanted.id(),
            airframe,
            revision,
            found.position().variant().key(),
            found.position().year(),
            found.position().serialText(),
            seen.stream().map(Seen::code).toList(),
            wanted.on()));
  }

  private long store(Actor actor, Located.Found found, List<Seen> seen, Wanted wanted)
      throws IOException {
    require("inspect", actor, INSPECTIONS_AN_HOUR);
    NewAirframe airframe = new NewAirframe(found.position(), wanted.registration(), null);
    List<club.yearline.fleet.Seen> all = new ArrayList<>();
    for (Seen one : seen) {
      List<MultipartFile> files = wanted.photographs().getOrDefault(one.feature().key(), List.of());
      all.add(
          new club.yearline.fleet.Seen(
              one.feature().key(), one.value(), wanted.on(), null, null, taken(actor, files)));
    }
    return register.store(actor, Inspected.of(wanted.id(), airframe, all));
  }

  private List<Evidence> taken(Actor actor, List<MultipartFile> files) throws IOException {
    if (files.size() > club.yearline.fleet.Seen.MOST_PHOTOGRAPHS) {
      throw Refusal.unprocessable(
          "fleet-photographs-many", club.yearline.fleet.Seen.MOST_PHOTOGRAPHS);
    }
    List<Evidence> taken = new ArrayList<>();
    for (MultipartFile file : files) {
      require("inspect-photograph", actor, PHOTOGRAPHS_AN_HOUR);
      taken.add(photograph(file));
    }
    return taken;
  }

  private Evidence photograph(MultipartFile file) throws IOException {
    String name = Objects.requireNonNullElse(file.getOriginalFilename(), "");
    try {
      return desk.photograph(name, file);
    } catch (NotTaken e) {
      String why = phrases.of("upload." + e.code(), e.arguments().toArray());
      throw Refusal.unprocessable("inspection-photograph", name, why);
    }
  }

  private void require(String what, Actor actor, int times) {
    throttle.require(what, actor.id(), times);
  }
}
