package club.yearline.web;

import org.thymeleaf.context.ITemplateContext;
import org.thymeleaf.model.IProcessableElementTag;
import org.thymeleaf.processor.element.AbstractElementTagProcessor;
import org.thymeleaf.processor.element.IElementTagStructureHandler;
import org.thymeleaf.templatemode.TemplateMode;
import org.unbescape.html.HtmlEscape;

/**
 * Writes what every printed sheet names (the address, the revision) on the html element. The foot
 * of a printed sheet can read it from there only, and so no page can forget it.
 */
final class SheetProcessor extends AbstractElementTagProcessor {

  private static final int PRECEDENCE = 100_000;

  SheetProcessor() {
    super(TemplateMode.HTML, null, "html", false, null, false, PRECEDENCE);
  }

  @Override
  protected void doProcess(
      ITemplateContext context,
      IProcessableElementTag tag,
      IElementTagStructureHandler structureHandler) {
    if (context.getExpressionObjects().getObject(SiteDialect.NAME) instanceof Site site) {
      Object revision = context.getVariable("revision");
      write(structureHandler, "data-address", site.getAddress());
      write(structureHandler, "data-issue", revision == null ? "" : issue(context, revision));
    }
  }

  private String issue(ITemplateContext context, Object revision) {
    return context.getMessage(getClass(), "site.issue", new Object[] {revision.toString()}, true);
  }

  private static void write(IElementTagStructureHandler handler, String name, String value) {
    handler.setAttribute(name, HtmlEscape.escapeHtml5Xml(value));
  }
}
