package club.yearline.corrections;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Club;
import club.yearline.accounts.People;
import club.yearline.browse.Comparing;
import club.yearline.catalog.EntryRef;
import club.yearline.catalog.Snapshots;
import club.yearline.citation.Source;
import club.yearline.corrections.CorrectionView.EntryLine;
import club.yearline.corrections.CorrectionView.EventLine;
import club.yearline.corrections.CorrectionView.GroundLine;
import club.yearline.corrections.CorrectionView.Line;
import club.yearline.corrections.CorrectionView.May;
import club.yearline.corrections.CorrectionView.Outlook;
import club.yearline.effectivity.EntryKind;
import club.yearline.effectivity.Finding;
import club.yearline.effectivity.SourceEntry;
import club.yearline.tables.Sheet;
import club.yearline.web.Pages;
import club.yearline.web.Phrases;
import club.yearline.web.Times;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Makes what pages show of corrections. */
@Component
@Transactional(readOnly = true)
class CorrectionViews {

  private static final int IN_A_LIST = 40;
  private static final int MOST_PAGES = 10_000;

  /** Entries and findings that are listed; a data package may bring thousands of each. */
  static final int SHOWN = 200;

  private static final int PICTURES = 60;

  private final Corrections corrections;
  private final CorrectionFiles files;
  private final Desk desk;
  private final Reviews reviews;
  private final Snapshots snapshots;
  private final Comparing comparing;
  private final FormViews forms;
  private final People people;
  private final Club club;
  private final Phrases phrases;

  CorrectionViews(
      Corrections corrections,
      CorrectionFiles files,
      Desk desk,
      Reviews reviews,
      Snapshots snapshots,
      Comparing comparing,
      FormViews forms,
      People people,
      Club club,
      Phrases phrases) {
    this.corrections = corrections;
    this.files = files;
    this.desk = desk;
    this.reviews = reviews;
    this.snapshots = snapshots;
    this.comparing = comparing;
    this.forms = forms;
    this.people = people;
    this.club = club;
    this.phrases = phrases;
  }

  /**
   * One correction.
   *
   * @param variant the one variant whose impact is shown, page by page; null for all
   * @param page the page of that variant's rows, counted from 1
   */
  public CorrectionView of(Actor actor, long id, @Nullable String variant, int page) {
    Correction correction = desk.visible(actor, id);
    Review review = correction.state().isFinal() ? null : reviews.of(correction);
    return new CorrectionView(
        id,
        correction.version(),
        correction.title(),
        correction.state().code(),
        next(correction, actor),
        people.nameOf(correction.author()),
        Times.minute(correction.changedAt()),
        correction.origin().code(),
        correction.revision().orElse(null),
        review == null ? entries(correction) : entries(review),
        Math.max(0, correction.size() - SHOWN),
        correction.grounds().stream().map(g -> ground(g, correction)).toList(),
        new Attached(
            files.list(id, CorrectionFile.Purpose.EVIDENCE),
            correction.canWrite(actor),
            Attaching.MOST),
        files.list(id, CorrectionFile.Purpose.PICTURE).stream().limit(PICTURES).toList(),
        events(correction),
        others(correction),
        may(correction, actor),
        review == null ? null : outlook(review, id, variant, page));
  }

  /**
   * The list of corrections.
   *
   * @param page the page of those decided on, counted from 1
   */
  public QueueView queue(Actor actor, int page) {
    PageRequest first = PageRequest.of(0, IN_A_LIST);
    PageRequest asked = PageRequest.of(Math.min(Math.max(page, 1), MOST_PAGES) - 1, IN_A_LIST);
    Page<Correction> decided =
        corrections.findByRevisionNotNullOrStateOrderByDecidedAtDesc(State.REJECTED, asked);
    return new QueueView(
        lines(corrections.findByStateOrderBySubmittedAt(State.SUBMITTED, first).getContent()),
        lines(corrections.findByAuthorIdOrderByChangedAtDesc(actor.id(), first).getContent()),
        lines(decided.getContent()),
        new Pages("/corrections", decided.getNumber() + 1, Math.max(decided.getTotalPages(), 1)));
  }

  private List<Line> lines(List<Correction> listed) {
    Map<Long, String> names =
        people.namesOf(listed.stream().map(Correction::author).distinct().toList());
    return listed.stream()
        .map(
            c ->
                new Line(
                    c.id(),
                    c.title(),
                    c.state().code(),
                    names.getOrDefault(c.author(), ""),
                    Times.minute(c.changedAt()),
                    phrases.count("corrections.edits", c.size())))
        .toList();
  }

  private May may(Correction correction, Actor actor) {
    boolean waits = correction.state() == State.SUBMITTED;
    return new May(
        correction.canWrite(actor),
        correction.isBy(actor) && !correction.state().isFinal(),
        waits && Desk.isModerator(actor),
        correction.canDecide(actor, club.isSingleKeeper()));
  }

  private String next(Correction correction, Actor actor) {
    String state = correction.state().code();
    String key = "corrections.state." + state + ".next";
    if (correction.state() == State.SUBMITTED && Desk.isModerator(actor)) {
      boolean decide = correction.canDecide(actor, club.isSingleKeeper());
      key = "corrections.state.submitted." + (decide ? "decide" : "own");
    } else if (correction.state() == State.SENT_BACK && !correction.isBy(actor)) {
      key = "corrections.state.sent-back.others";
    }
    return correction.revision().isPresent()
        ? phrases.of(key, correction.revision().get())
        : phrases.of(key);
  }

  // Entries

  private List<EntryLine> entries(Review review) {
    return review.candidate().pieces().stream().limit(SHOWN).map(this::entry).toList();
  }

  private EntryLine entry(Candidate.Piece piece) {
    EntryRef ref = piece.proposal().ref();
    Sheet shown = piece.merge().result();
    if (shown == null && piece.theirs() != null) {
      shown = Sheet.of(piece.theirs());
    }
    List<String> faults =
        piece.faults().stream()
            .map(f -> forms.label(f.table(), f.column()) + ": " + forms.fault(f))
            .toList();
    return new EntryLine(ref.kind().code(), ref.key(), Names.of(ref, shown), what(piece), faults);
  }

  private static String what(Candidate.Piece piece) {
    if (piece.isWithdrawal()) {
      return "withdrawn";
    }
    if (piece.changesNothing()) {
      return "same";
    }
    return piece.theirs() == null ? "new" : "changed";
  }

  /** What was proposed, where nothing can come of it any more. */
  private List<EntryLine> entries(Correction correction) {
    return correction.proposals().stream()
        .limit(SHOWN)
        .map(
            p ->
                new EntryLine(
                    p.ref().kind().code(),
                    p.ref().key(),
                    Names.of(p.ref(), p.sheet()),
                    p.sheet() == null ? "withdrawn" : "changed",
                    List.of()))
        .toList();
  }

  private GroundLine ground(Ground ground, Correction correction) {
    EntryRef ref = new EntryRef(EntryKind.SOURCE, ground.source());
    String title =
        snapshots
            .head()
            .catalogue()
            .source(ground.source())
            .map(SourceEntry::source)
            .map(Source::title)
            .or(() -> correction.proposal(ref).map(p -> Names.of(ref, p.sheet())))
            .orElse(ground.source());
    return new GroundLine(
        ground.source(), title, ground.locator(), ground.stance().code(), ground.note());
  }

  // What happened

  private List<EventLine> events(Correction correction) {
    List<CorrectionEvent> all = correction.events();
    Map<Long, String> names =
        people.namesOf(all.stream().map(CorrectionEvent::actor).distinct().toList());
    return all.stream().map(e -> event(e, correction, names)).toList();
  }

  private EventLine event(CorrectionEvent event, Correction correction, Map<Long, String> names) {
    boolean alone =
        event.what() == CorrectionEvent.What.APPROVED && event.actor() == correction.author();
    String own = correction.origin() == Origin.PACKAGE ? "-package" : "-own";
    String key = "corrections.event." + event.what().code() + (alone ? own : "");
    return new EventLine(
        phrases.of(key, names.getOrDefault(event.actor(), "")),
        Times.minute(event.happenedAt()),
        event.note(),
        before(event));
  }

  private List<String> before(CorrectionEvent event) {
    Sheet sheet = event.mendedFrom();
    if (sheet == null) {
      return List.of();
    }
    List<String> cells = new ArrayList<>();
    cells.add(
        phrases.of("corrections.event.mended.of", Names.of(event.mended().orElseThrow(), sheet)));
    sheet
        .tables()
        .forEach(
            (table, rows) ->
                rows.forEach(
                    row ->
                        row.forEach(
                            (column, cell) ->
                                cells.add(forms.label(table, column) + ": " + cell))));
    return cells;
  }

  private List<Line> others(Correction correction) {
    if (correction.state().isFinal()) {
      return List.of();
    }
    return lines(corrections.waitingBeside(correction.id()));
  }

  // What it would make of the catalogue

  private Outlook outlook(Review review, long id, @Nullable String variant, int page) {
    Candidate candidate = review.candidate();
    boolean clashes = candidate.pieces().stream().anyMatch(p -> !p.merge().clashes().isEmpty());
    return new Outlook(
        review.onto(),
        clashes,
        candidate.isBlocked(),
        review.hasErrors(),
        review.isPublishable(),
        comparing.findings(first(review.added())),
        comparing.findings(first(review.removed())),
        difference(review, "/corrections/" + id, variant, page).orElse(null));
  }

  private static List<Finding> first(List<Finding> findings) {
    return findings.subList(0, Math.min(findings.size(), SHOWN));
  }

  private Optional<Object> difference(
      Review review, String address, @Nullable String variant, int page) {
    if (review.after().isPresent()) {
      return Optional.of(
          comparing.between(review.before(), review.after().get(), address, variant, page));
    }
    return review.records().map(records -> comparing.edits(review.before(), records));
  }

  /** The sources that a correction may stand on: those published, and those that it adds. */
  public Set<String> sources(Actor actor, long id) {
    Set<String> keys = new HashSet<>();
    snapshots.head().catalogue().records().sources().forEach(s -> keys.add(s.key()));
    desk.visible(actor, id).proposals().stream()
        .filter(p -> p.ref().kind() == EntryKind.SOURCE && p.sheet() != null)
        .forEach(p -> keys.add(p.ref().key()));
    return keys;
  }
}
