package club.yearline.browse;

import club.yearline.catalog.Wording;
import club.yearline.web.Phrases;
import org.springframework.context.support.ResourceBundleMessageSource;

/** The real texts, without a running application. */
final class Texts {

  static final RecordTexts RECORDS = new RecordTexts(new Phrases(messages()));
  static final Wording WORDING = new Wording(messages());

  private Texts() {}

  private static ResourceBundleMessageSource messages() {
    ResourceBundleMessageSource source = new ResourceBundleMessageSource();
    source.setBasenames("messages/records", "messages/wording", "messages/web");
    source.setDefaultEncoding("UTF-8");
    return source;
  }
}
