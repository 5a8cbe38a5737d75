package club.yearline.corrections;

import club.yearline.accounts.Actor;
import club.yearline.catalog.EntryRef;
import club.yearline.catalog.Snapshot;
import club.yearline.catalog.Snapshots;
import club.yearline.corrections.Clash.Side;
import club.yearline.tables.Sheet;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Deciding what stands where a correction clashes with what was published since. */
@Controller
class MergePages {

  private final CorrectionReading reading;
  private final Drafting drafting;
  private final Moderation moderation;
  private final Snapshots snapshots;
  private final FormViews forms;
  private final Phrases phrases;

  MergePages(
      CorrectionReading reading,
      Drafting drafting,
      Moderation moderation,
      Snapshots snapshots,
      FormViews forms,
      Phrases phrases) {
    this.reading = reading;
    this.drafting = drafting;
    this.moderation = moderation;
    this.snapshots = snapshots;
    this.forms = forms;
    this.phrases = phrases;
  }

  /**
   * A clash as the page asks about it.
   *
   * @param field name of the form's field
   * @param entry the entry that clashes
   * @param what the cell, the row, or the whole entry
   * @param base what it was
   * @param mine what the correction makes of it
   * @param theirs what is published
   */
  record Question(
      String field, String entry, String what, String base, String mine, String theirs) {}

  @GetMapping("/corrections/{id}/merge")
  String form(@PathVariable long id, Actor actor, Model model) {
    return show(id, actor, model);
  }

  @PostMapping("/corrections/{id}/merge")
  String save(
      @PathVariable long id,
      @RequestParam int version,
      @RequestParam MultiValueMap<String, String> typed,
      Actor actor,
      Model model) {
    Snapshot newest = snapshots.head();
    List<Proposal> decided = new ArrayList<>();
    for (Proposal proposal : reading.proposals(actor, id)) {
      Merge merge =
          merge(proposal, newest, clash -> side(typed.getFirst(field(proposal.ref(), clash))));
      if (!merge.clashes().isEmpty()) {
        model.addAttribute("notice", phrases.of("corrections.merge.unanswered"));
        return show(id, actor, model);
      }
      if (!merge(proposal, newest, clash -> null).clashes().isEmpty()) {
        decided.add(new Proposal(proposal.ref(), merge.result(), newest.number()));
      }
    }
    if (reading.canWrite(actor, id)) {
      drafting.proposeAll(actor, id, version, decided);
    } else {
      moderation.mendAll(actor, id, version, decided);
    }
    return "redirect:/corrections/" + id;
  }

  private String show(long id, Actor actor, Model model) {
    Snapshot newest = snapshots.head();
    List<Question> questions = new ArrayList<>();
    for (Proposal proposal : reading.proposals(actor, id)) {
      for (Clash clash : merge(proposal, newest, c -> null).clashes()) {
        questions.add(question(proposal, clash));
      }
    }
    model.addAttribute("id", id);
    model.addAttribute("version", reading.version(actor, id));
    model.addAttribute("questions", questions);
    return "corrections/merge";
  }

  private Merge merge(Proposal proposal, Snapshot newest, Function<Clash, @Nullable Side> answers) {
    return Merge.of(
        sheet(snapshots.at(proposal.base()), proposal.ref()),
        proposal.sheet(),
        sheet(newest, proposal.ref()),
        answers);
  }

  private static @Nullable Sheet sheet(Snapshot snapshot, EntryRef ref) {
    return snapshot.entry(ref).map(Sheet::of).orElse(null);
  }

  private Question question(Proposal proposal, Clash clash) {
    return new Question(
        field(proposal.ref(), clash),
        Names.of(proposal.ref(), proposal.sheet()),
        what(clash),
        text(clash.base(), clash),
        text(clash.mine(), clash),
        text(clash.theirs(), clash));
  }

  private String what(Clash clash) {
    if (clash.table().isEmpty()) {
      return phrases.of("corrections.merge.whole");
    }
    String row = clash.row().isEmpty() ? "" : clash.row() + ": ";
    return clash.column().isEmpty()
        ? phrases.of("corrections.row." + clash.table()) + " " + clash.row()
        : row + forms.label(clash.table(), clash.column());
  }

  private String text(@Nullable String side, Clash clash) {
    if (side == null) {
      return phrases.of(
          clash.table().isEmpty() ? "corrections.merge.withdrawn" : "corrections.merge.nothing");
    }
    return side.isEmpty() ? phrases.of("corrections.merge.nothing") : side;
  }

  private static String field(EntryRef ref, Clash clash) {
    return "side|" + ref.kind().code() + "|" + ref.key() + "|" + clash.id();
  }

  private static @Nullable Side side(@Nullable String typed) {
    if (typed == null) {
      return null;
    }
    return switch (typed) {
      case "mine" -> Side.MINE;
      case "theirs" -> Side.THEIRS;
      default -> null;
    };
  }
}
