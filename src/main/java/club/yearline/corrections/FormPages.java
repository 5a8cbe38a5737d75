package club.yearline.corrections;

import club.yearline.accounts.Actor;
import club.yearline.catalog.EntryRef;
import club.yearline.corrections.EntryForm.Typed;
import club.yearline.effectivity.EntryKind;
import club.yearline.tables.Sheet;
import club.yearline.tables.SheetReader.Fault;
import club.yearline.web.Choice;
import club.yearline.web.Phrases;
import club.yearline.web.Refusal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The form for one entry: to begin a correction, to write in one, to mend a slip in one. */
@Controller
class FormPages {

  /** The most characters of a correction's title. */
  static final int LONGEST_TITLE = 200;

  private static final String FORM = "corrections/form";

  private final EntryForm forms;
  private final Drafting drafting;
  private final Moderation moderation;
  private final CorrectionReading reading;
  private final Phrases phrases;

  FormPages(
      EntryForm forms,
      Drafting drafting,
      Moderation moderation,
      CorrectionReading reading,
      Phrases phrases) {
    this.forms = forms;
    this.drafting = drafting;
    this.moderation = moderation;
    this.reading = reading;
    this.phrases = phrases;
  }

  @GetMapping("/corrections/new")
  String begin(
      @RequestParam String kind,
      @RequestParam(required = false) @Nullable String key,
      Actor actor,
      Model model) {
    Proposal proposal = forms.begin(EntryForm.kind(kind), key);
    model.addAttribute("token", UUID.randomUUID());
    model.addAttribute("title", "");
    offerOwn(actor, "", model);
    return show(proposal, List.of(), null, "/corrections/new", model);
  }

  @PostMapping("/corrections/new")
  String begin(
      @RequestParam String kind,
      @RequestParam MultiValueMap<String, String> typed,
      Actor actor,
      Model model) {
    Typed entry = forms.read(EntryForm.kind(kind), typed);
    String title = EntryForm.text(typed, "title");
    String into = EntryForm.text(typed, "into");
    model.addAttribute("token", EntryForm.text(typed, "token"));
    model.addAttribute("title", title);
    offerOwn(actor, into, model);
    String titleFault = into.isEmpty() ? titleFault(title) : null;
    model.addAttribute("titleFault", titleFault);
    if (titleFault != null || !isReady(entry, typed, model)) {
      return show(entry, typed, "/corrections/new", model);
    }
    if (into.isEmpty()) {
      String token = reading.token(EntryForm.text(typed, "token"));
      return to(
          reading.once(actor, token, () -> drafting.begin(actor, title, entry.proposal(), token)));
    }
    long id = number(into);
    drafting.propose(actor, id, reading.version(actor, id), entry.proposal());
    return to(id);
  }

  @GetMapping("/corrections/{id}/edit")
  String edit(
      @PathVariable long id,
      @RequestParam String kind,
      @RequestParam(required = false) @Nullable String key,
      Actor actor,
      Model model) {
    Proposal proposal = proposed(actor, id, EntryForm.kind(kind), key);
    model.addAttribute("version", reading.version(actor, id));
    return show(proposal, List.of(), null, address(id, "edit"), model);
  }

  @PostMapping("/corrections/{id}/edit")
  String edit(
      @PathVariable long id,
      @RequestParam String kind,
      @RequestParam int version,
      @RequestParam MultiValueMap<String, String> typed,
      Actor actor,
      Model model) {
    return save(
        id,
        kind,
        version,
        typed,
        actor,
        model,
        "edit",
        p -> drafting.propose(actor, id, version, p));
  }

  @GetMapping("/corrections/{id}/mend")
  String mend(
      @PathVariable long id,
      @RequestParam String kind,
      @RequestParam String key,
      Actor actor,
      Model model) {
    model.addAttribute("version", reading.version(actor, id));
    model.addAttribute("mending", reading.authorOf(actor, id));
    Proposal proposal = proposed(actor, id, EntryForm.kind(kind), key);
    return show(proposal, List.of(), null, address(id, "mend"), model);
  }

  @PostMapping("/corrections/{id}/mend")
  String mend(
      @PathVariable long id,
      @RequestParam String kind,
      @RequestParam int version,
      @RequestParam MultiValueMap<String, String> typed,
      Actor actor,
      Model model) {
    model.addAttribute("mending", reading.authorOf(actor, id));
    return save(
        id,
        kind,
        version,
        typed,
        actor,
        model,
        "mend",
        p -> moderation.mend(actor, id, version, p));
  }

  private interface Saving {
    void save(Proposal proposal);
  }

  private String save(
      long id,
      String kind,
      int version,
      MultiValueMap<String, String> typed,
      Actor actor,
      Model model,
      String verb,
      Saving saving) {
    Typed entry = forms.read(EntryForm.kind(kind), typed);
    model.addAttribute("version", version);
    if (!isReady(entry, typed, model)) {
      return show(entry, typed, address(id, verb), model);
    }
    try {
      saving.save(entry.proposal());
      return to(id);
    } catch (Refusal moved) {
      if (moved.status() != HttpStatus.CONFLICT || !moved.code().equals("correction-changed")) {
        throw moved;
      }
      model.addAttribute("version", reading.version(actor, id));
      model.addAttribute("notice", phrases.of("corrections.form.stale"));
      return show(entry, typed, address(id, verb), model);
    }
  }

  /** Whether what was typed can be saved, and was meant to be; says what is in the way. */
  private boolean isReady(Typed entry, MultiValueMap<String, String> typed, Model model) {
    if (typed.getFirst("more") != null) {
      return false;
    }
    if (!entry.faults().isEmpty()) {
      model.addAttribute("notice", phrases.of("corrections.form.faults"));
      return false;
    }
    if (!forms.changesAnything(entry.proposal())) {
      model.addAttribute("notice", phrases.of("corrections.form.unchanged"));
      return false;
    }
    return true;
  }

  private Proposal proposed(Actor actor, long id, EntryKind kind, @Nullable String key) {
    if (key == null || key.isEmpty()) {
      return forms.begin(kind, null);
    }
    return reading
        .proposal(actor, id, new EntryRef(kind, key))
        .orElseGet(() -> forms.begin(kind, key));
  }

  private String show(
      Typed entry, MultiValueMap<String, String> typed, String action, Model model) {
    String more = typed.getFirst("more");
    boolean saved = more == null;
    model.addAttribute("isNew", entry.isNew());
    return show(entry.proposal(), saved ? entry.faults() : List.of(), more, action, model);
  }

  private String show(
      Proposal proposal, List<Fault> faults, @Nullable String grown, String action, Model model) {
    EntryRef ref = proposal.ref();
    Sheet sheet =
        proposal.sheet() == null ? forms.begin(ref.kind(), ref.key()).sheet() : proposal.sheet();
    Sheet shown = sheet == null ? Sheet.blank(ref.kind(), ref.key()) : sheet;
    if (!model.containsAttribute("isNew")) {
      model.addAttribute("isNew", ref.key().isEmpty());
    }
    model.addAttribute("kind", ref.kind().code());
    model.addAttribute("key", ref.key());
    model.addAttribute("name", Names.of(ref, shown));
    model.addAttribute("base", proposal.base());
    model.addAttribute("withdrawn", proposal.sheet() == null);
    model.addAttribute("form", forms.view(shown, faults, grown));
    model.addAttribute("keyFault", forms.keyFault(ref.kind(), faults));
    model.addAttribute("action", action);
    return FORM;
  }

  private void offerOwn(Actor actor, String into, Model model) {
    List<Choice> own = new ArrayList<>();
    own.add(new Choice("", phrases.of("corrections.form.into.new")));
    Map<Long, String> writable = new LinkedHashMap<>(reading.writable(actor));
    writable.forEach((id, title) -> own.add(new Choice(id.toString(), title)));
    model.addAttribute("own", own);
    model.addAttribute("into", into);
  }

  /** What is wrong with a title; null where nothing is. */
  private @Nullable String titleFault(String title) {
    if (title.isEmpty()) {
      return phrases.of("corrections.fault.title");
    }
    return title.codePointCount(0, title.length()) > LONGEST_TITLE
        ? phrases.of("corrections.fault.title-long", LONGEST_TITLE)
        : null;
  }

  private static long number(String into) {
    if (!into.matches("[0-9]{1,18}")) {
      throw Denials.unknown(into);
    }
    return Long.parseLong(into);
  }

  private static String address(long id, String verb) {
    return "/corrections/" + id + "/" + verb;
  }

  private static String to(long id) {
    return "redirect:/corrections/" + id;
  }
}
