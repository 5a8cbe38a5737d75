package club.yearline.groundschool;

import club.yearline.catalog.Pictures;
import club.yearline.groundschool.HandoutView.Section;
import club.yearline.print.Paper;
import club.yearline.print.PdfMaker;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.thymeleaf.context.Context;
import org.thymeleaf.spring6.SpringTemplateEngine;

/** A hand-out as PDF. */
@Component
class HandoutPaper {

  private static final String CODE = "code";

  private final SpringTemplateEngine templates;
  private final Drawings drawings;
  private final Pictures pictures;
  private final PdfMaker maker;

  HandoutPaper(
      SpringTemplateEngine templates, Drawings drawings, Pictures pictures, PdfMaker maker) {
    this.templates = templates;
    this.drawings = drawings;
    this.pictures = pictures;
    this.maker = maker;
  }

  byte[] pdf(HandoutView handout, Paper paper) {
    String html =
        templates.process(
            "groundschool/hand-out-pdf",
            new Context(Locale.ENGLISH, Map.of("school", handout, "paper", true)));
    return maker.make(html, paper, name -> picture(handout, name));
  }

  private Optional<byte[]> picture(HandoutView handout, String name) {
    if (name.equals(CODE)) {
      return Optional.of(drawings.svg("groundschool/code", Map.of("code", handout.code())));
    }
    Optional<Section> drawn =
        handout.sections().stream().filter(s -> s.picture().equals(name)).findFirst();
    return drawn.isPresent()
        ? drawn.map(this::timeline)
        : pictures.find(name).map(SmallPicture::of);
  }

  private byte[] timeline(Section section) {
    return drawings.svg(
        "groundschool/timeline",
        Map.of("chart", Objects.requireNonNull(section.chart()), "name", section.name()));
  }
}
