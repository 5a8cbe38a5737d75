package club.yearline.browse;

import club.yearline.catalog.EntryRef;
import club.yearline.catalog.NamesPeople;
import club.yearline.catalog.Reading;
import club.yearline.effectivity.EntryKind;
import club.yearline.web.Crumb;
import club.yearline.web.Refusal;
import java.util.Arrays;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The history of an entry of any kind: who said what, when, on which source. */
@Controller
@NamesPeople
class HistoryPages {

  private final HistoryViews views;
  private final RecordTexts texts;

  HistoryPages(HistoryViews views, RecordTexts texts) {
    this.views = views;
    this.texts = texts;
  }

  @GetMapping("/history/{kind}/{key}")
  String history(
      @PathVariable String kind,
      @PathVariable String key,
      @RequestParam(defaultValue = "1") int page,
      Reading reading,
      Model model) {
    HistoryPage shown = views.page(new EntryRef(kind(kind), key), page, reading);
    model.addAttribute("page", shown);
    model.addAttribute(
        "trail",
        List.of(
            new Crumb(texts.get("crumb.home"), reading.link("/")),
            new Crumb(shown.name(), shown.href()),
            Crumb.here(texts.get("history.crumb"))));
    return "records/history";
  }

  private static EntryKind kind(String code) {
    return Arrays.stream(EntryKind.values())
        .filter(kind -> kind.code().equals(code))
        .findFirst()
        .orElseThrow(() -> Refusal.notFound("no-history-of-kind", code));
  }
}
