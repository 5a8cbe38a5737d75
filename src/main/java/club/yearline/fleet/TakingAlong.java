package club.yearline.fleet;

import club.yearline.accounts.Actor;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * Writes all that the register keeps for a member: a zip with {@code register.json} and the
 * photographs that it names. JSON, because a remark that begins with a sign of arithmetic is no
 * formula there.
 */
@Component
class TakingAlong {

  private static final JsonMapper JSON =
      JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

  private final Airframes airframes;
  private final Observations observations;
  private final Photographs photographs;

  TakingAlong(Airframes airframes, Observations observations, Photographs photographs) {
    this.airframes = airframes;
    this.observations = observations;
    this.photographs = photographs;
  }

  /** The whole file. */
  record Own(String name, Instant written, List<OwnAirframe> airframes) {}

  /** An airframe as its owner takes it along. */
  record OwnAirframe(
      long number,
      String variant,
      @Nullable Integer year,
      @Nullable String series,
      @Nullable String serial,
      @Nullable String registration,
      @Nullable String remarks,
      boolean shared,
      boolean serialShown,
      Instant registered,
      List<OwnObservation> observations) {}

  /** An observation, with the paths of its photographs in the zip. */
  record OwnObservation(
      String feature,
      String value,
      LocalDate on,
      @Nullable String observer,
      @Nullable String note,
      List<String> photographs) {}

  /** A photograph is read when it is written: all together may be more than the memory holds. */
  void write(Actor actor, OutputStream out) throws IOException {
    List<Airframe> own = airframes.findByOwnerIdOrderById(actor.id());
    try (ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
      zip.putNextEntry(new ZipEntry("register.json"));
      Own all = new Own(actor.name(), Instant.now(), own.stream().map(this::airframe).toList());
      zip.write(JSON.writeValueAsBytes(all));
      zip.closeEntry();
      for (Airframe airframe : own) {
        for (PhotographLine line : photographs.list(airframe.id())) {
          write(airframe, line, zip);
        }
      }
    }
  }

  private void write(Airframe airframe, PhotographLine line, ZipOutputStream zip)
      throws IOException {
    Photograph photograph = photographs.ofAirframe(line.id(), airframe.id()).orElse(null);
    if (photograph != null) {
      zip.putNextEntry(new ZipEntry(path(airframe, line)));
      zip.write(photograph.bytes());
      zip.closeEntry();
    }
  }

  /** Led by its number, so that two of one name are two. */
  private static String path(Airframe airframe, PhotographLine line) {
    return "photographs/" + airframe.id() + "/" + line.id() + "-" + line.name();
  }

  private OwnAirframe airframe(Airframe airframe) {
    List<PhotographLine> lines = photographs.list(airframe.id());
    List<OwnObservation> seen = new ArrayList<>();
    for (Observation o : observations.findByAirframeIdOrderBySeenOnDescIdDesc(airframe.id())) {
      List<String> paths =
          lines.stream()
              .filter(l -> l.observation() == o.id())
              .map(l -> path(airframe, l))
              .toList();
      seen.add(new OwnObservation(o.feature(), o.value(), o.on(), o.observer(), o.note(), paths));
    }
    return new OwnAirframe(
        airframe.id(),
        airframe.variant(),
        airframe.year(),
        airframe.series(),
        airframe.serial(),
        airframe.registration(),
        airframe.remarks(),
        airframe.isShared(),
        airframe.isSerialShown(),
        airframe.registeredAt(),
        seen);
  }
}
