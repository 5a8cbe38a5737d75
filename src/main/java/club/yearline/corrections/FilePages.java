package club.yearline.corrections;

import club.yearline.accounts.Actor;
import club.yearline.uploads.Evidence;
import club.yearline.uploads.EvidenceDesk;
import club.yearline.uploads.NotTaken;
import club.yearline.web.Phrases;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/** Photographs and documents of a correction: adding and removing them. */
@Controller
class FilePages {

  private final Attaching attaching;
  private final EvidenceDesk desk;
  private final Pace pace;
  private final Phrases phrases;

  FilePages(Attaching attaching, EvidenceDesk desk, Pace pace, Phrases phrases) {
    this.pace = pace;
    this.attaching = attaching;
    this.desk = desk;
    this.phrases = phrases;
  }

  @GetMapping("/corrections/{id}/files")
  String files(@PathVariable long id, Actor actor, Model model) {
    return show(id, actor, List.of(), model);
  }

  /** What can be taken is kept; what cannot is named, and can be sent again by itself. */
  @PostMapping("/corrections/{id}/files")
  String add(
      @PathVariable long id,
      @RequestParam(name = "files", required = false) @Nullable List<MultipartFile> sent,
      Actor actor,
      HttpServletResponse response,
      Model model)
      throws IOException {
    List<MultipartFile> chosen = chosen(sent);
    attaching.requireRoom(actor, id, chosen.size());
    List<String> faults = new ArrayList<>();
    if (chosen.isEmpty()) {
      faults.add(phrases.of("corrections.files.none-chosen"));
    }
    for (MultipartFile file : chosen) {
      pace.file(actor);
      try {
        attaching.attach(actor, id, evidence(file));
      } catch (NotTaken e) {
        faults.add(fault(file, e));
      }
    }
    if (faults.isEmpty()) {
      return "redirect:/corrections/" + id + "#attached";
    }
    response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
    return show(id, actor, faults, model);
  }

  @PostMapping("/corrections/{id}/files/{file}/remove")
  String remove(@PathVariable long id, @PathVariable long file, Actor actor) {
    attaching.remove(actor, id, file);
    return "redirect:/corrections/" + id + "#attached";
  }

  private Evidence evidence(MultipartFile file) throws NotTaken, IOException {
    return desk.take(Objects.requireNonNullElse(file.getOriginalFilename(), ""), file);
  }

  private String fault(MultipartFile file, NotTaken reason) {
    return phrases.of(
        "corrections.files.fault",
        Objects.requireNonNullElse(file.getOriginalFilename(), ""),
        phrases.of("upload." + reason.code(), reason.arguments().toArray()));
  }

  /** A browser sends a nameless, empty file where none was chosen. */
  private static List<MultipartFile> chosen(@Nullable List<MultipartFile> sent) {
    return sent == null
        ? List.of()
        : sent.stream().filter(f -> !f.isEmpty() || !"".equals(f.getOriginalFilename())).toList();
  }

  private String show(long id, Actor actor, List<String> faults, Model model) {
    model.addAttribute("id", id);
    model.addAttribute("attached", attaching.attached(actor, id));
    model.addAttribute("faults", faults);
    return "corrections/files";
  }
}
