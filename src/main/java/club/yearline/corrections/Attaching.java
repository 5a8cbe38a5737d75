package club.yearline.corrections;

import club.yearline.accounts.Actor;
import club.yearline.catalog.PictureFile;
import club.yearline.corrections.CorrectionFile.Purpose;
import club.yearline.uploads.Evidence;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The evidence that comes with corrections: photographs and documents. */
@Component
@Transactional
class Attaching {

  /** The most files of a correction. */
  static final int MOST = 5;

  private final Corrections corrections;
  private final CorrectionFiles files;
  private final Desk desk;

  Attaching(Corrections corrections, CorrectionFiles files, Desk desk) {
    this.corrections = corrections;
    this.files = files;
    this.desk = desk;
  }

  /** What is attached to a correction. */
  @Transactional(readOnly = true)
  public Attached attached(Actor actor, long id) {
    boolean writable = desk.visible(actor, id).canWrite(actor);
    return new Attached(files.list(id, Purpose.EVIDENCE), writable, MOST);
  }

  /**
   * Checks, before any work is spent on them, that files may be added.
   *
   * @throws club.yearline.web.Refusal if not by this person, not now, or not so many
   */
  @Transactional(readOnly = true)
  public void requireRoom(Actor actor, long id, int more) {
    desk.visible(actor, id).requireWriting(actor);
    requireRoom(id, more);
  }

  /** Adds a file; one that is there already is not added again. */
  public void attach(Actor actor, long id, Evidence evidence) {
    PictureFile file = new PictureFile(evidence.name(), evidence.mediaType(), evidence.bytes());
    writable(actor, id);
    boolean known =
        files.list(id, Purpose.EVIDENCE).stream()
            .anyMatch(line -> line.sha256().equals(file.picture().sha256()));
    if (!known) {
      requireRoom(id, 1);
      files.save(CorrectionFile.of(id, Purpose.EVIDENCE, file, actor.id()));
    }
  }

  /** Takes a file away; one that is gone already stays gone. */
  public void remove(Actor actor, long id, long file) {
    writable(actor, id);
    files
        .findByIdAndCorrectionId(file, id)
        .filter(f -> f.purpose() == Purpose.EVIDENCE)
        .ifPresent(files::delete);
  }

  /**
   * A file with its content, for whoever may see the correction.
   *
   * @throws club.yearline.web.Refusal if there is none that this person may see
   */
  @Transactional(readOnly = true)
  public CorrectionFile file(Actor actor, long id, long file) {
    desk.visible(actor, id);
    return files.findByIdAndCorrectionId(file, id).orElseThrow(() -> Denials.unknownFile(file, id));
  }

  /** Holds the correction, so that two who add at one moment are counted one after the other. */
  private void writable(Actor actor, long id) {
    corrections.hold(id).orElseThrow(() -> Denials.unknown(id)).requireWriting(actor);
  }

  private void requireRoom(long id, int more) {
    if (files.list(id, Purpose.EVIDENCE).size() + more > MOST) {
      throw Denials.unready("files-many", MOST);
    }
  }
}
