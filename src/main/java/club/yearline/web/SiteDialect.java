package club.yearline.web;

import jakarta.servlet.RequestDispatcher;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.resource.ResourceUrlProvider;
import org.springframework.web.util.UriComponentsBuilder;
import org.thymeleaf.context.IExpressionContext;
import org.thymeleaf.context.IWebContext;
import org.thymeleaf.dialect.AbstractProcessorDialect;
import org.thymeleaf.dialect.IExpressionObjectDialect;
import org.thymeleaf.expression.IExpressionObjectFactory;
import org.thymeleaf.processor.IProcessor;
import org.thymeleaf.web.IWebRequest;

/**
 * Gives templates {@code #site}. A dialect reaches every template, error pages included, without
 * the controllers having to put anything into their models.
 */
@Component
class SiteDialect extends AbstractProcessorDialect
    implements IExpressionObjectDialect, IExpressionObjectFactory {

  static final String NAME = "site";

  private static final int PRECEDENCE = 1000;

  private final Assets assets;
  private final ObjectProvider<Section> sections;

  SiteDialect(ObjectProvider<ResourceUrlProvider> urls, ObjectProvider<Section> sections) {
    super(NAME, null, PRECEDENCE);
    this.assets = new Assets(urls);
    this.sections = sections;
  }

  @Override
  public Set<IProcessor> getProcessors(String dialectPrefix) {
    return Set.of(new SheetProcessor());
  }

  @Override
  public IExpressionObjectFactory getExpressionObjectFactory() {
    return this;
  }

  @Override
  public Set<String> getAllExpressionObjectNames() {
    return Set.of(NAME);
  }

  @Override
  public @Nullable Object buildObject(IExpressionContext context, String expressionObjectName) {
    return context instanceof IWebContext web ? site(web) : null;
  }

  @Override
  public boolean isCacheable(String expressionObjectName) {
    return true;
  }

  /** The address that was asked for; while an error is rendered, that is not the request's own. */
  private static String requested(IWebContext web, IWebRequest request) {
    Object failed = web.getExchange().getAttributeValue(RequestDispatcher.ERROR_REQUEST_URI);
    return failed == null
        ? request.getRequestURL()
        : UriComponentsBuilder.fromUriString(request.getRequestURL())
            .replacePath(failed.toString())
            .build()
            .toUriString();
  }

  private static Caller caller(IWebContext web) {
    Object caller = web.getExchange().getAttributeValue(Caller.class.getName());
    return caller instanceof Caller known ? known : Caller.VISITOR;
  }

  private Site site(IWebContext web) {
    IWebRequest request = web.getExchange().getRequest();
    List<Section> inOrder =
        sections.stream().sorted(Comparator.comparingInt(Section::order)).toList();
    return new Site(
        assets,
        inOrder,
        request.getApplicationPath(),
        requested(web, request),
        web.getVariable("revision"),
        caller(web));
  }
}
