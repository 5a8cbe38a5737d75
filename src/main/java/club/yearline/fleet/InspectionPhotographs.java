package club.yearline.fleet;

import club.yearline.accounts.Actor;
import club.yearline.uploads.EvidenceDesk;
import club.yearline.uploads.NotTaken;
import club.yearline.web.Refusal;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;

/** The photographs that came with an inspection, for its inspector. */
@Component
public class InspectionPhotographs {

  private final Register register;
  private final Photographs photographs;
  private final EvidenceDesk desk;

  InspectionPhotographs(Register register, Photographs photographs, EvidenceDesk desk) {
    this.register = register;
    this.photographs = photographs;
    this.desk = desk;
  }

  /**
   * The first photographs of a person's own inspection, made small.
   *
   * @param most how many at most
   * @throws Refusal 503 if too many pictures are being made, 410 as for {@link Register#stored}
   */
  public List<Pictured> of(Actor actor, UUID inspection, int most) throws IOException {
    List<Pictured> small = new ArrayList<>();
    long airframe = register.stored(actor, inspection).orElse(-1L);
    for (PhotographOf one : photographs.ofTokens(airframe, inspection + "-%", Limit.of(most))) {
      small.add(new Pictured(one.feature(), small(one)));
    }
    return small;
  }

  private byte[] small(PhotographOf one) throws IOException {
    try {
      return desk.thumbnail(one.sha256(), one.bytes());
    } catch (NotTaken busy) {
      throw Refusal.of(HttpStatus.SERVICE_UNAVAILABLE, "files-busy");
    }
  }
}
