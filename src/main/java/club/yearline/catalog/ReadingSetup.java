package club.yearline.catalog;

import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.MethodParameter;
import org.springframework.web.bind.support.WebDataBinderFactory;
import org.springframework.web.context.request.NativeWebRequest;
import org.springframework.web.method.support.HandlerMethodArgumentResolver;
import org.springframework.web.method.support.ModelAndViewContainer;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * Gives controllers the {@link Reading} that a request asks for, and templates the same. The
 * snapshots are fetched when first read, so that pages can be tested without storage.
 */
@Configuration(proxyBeanMethods = false)
class ReadingSetup implements WebMvcConfigurer {

  private final ObjectProvider<Snapshots> snapshots;
  private final Freshness freshness;

  ReadingSetup(ObjectProvider<Snapshots> snapshots, Freshness freshness) {
    this.snapshots = snapshots;
    this.freshness = freshness;
  }

  @Override
  public void addInterceptors(InterceptorRegistry registry) {
    registry.addInterceptor(freshness);
  }

  @Override
  public void addArgumentResolvers(List<HandlerMethodArgumentResolver> resolvers) {
    resolvers.add(new Resolver(snapshots));
  }

  /** Resolves parameters of type {@link Reading}; pages find it as {@code reading}. */
  private record Resolver(ObjectProvider<Snapshots> snapshots)
      implements HandlerMethodArgumentResolver {

    private static final Pattern WHOLE = Pattern.compile("-?[0-9]+");
    private static final int MOST_DIGITS = 9;

    @Override
    public boolean supportsParameter(MethodParameter parameter) {
      return parameter.getParameterType() == Reading.class;
    }

    @Override
    public Reading resolveArgument(
        MethodParameter parameter,
        @Nullable ModelAndViewContainer container,
        NativeWebRequest request,
        @Nullable WebDataBinderFactory binders) {
      RevisionIn named = parameter.getParameterAnnotation(RevisionIn.class);
      Reading reading =
          named == null
              ? read("rev", request.getParameter("rev"))
              : read(named.value(), needed(named.value(), request));
      HttpServletRequest servlet = request.getNativeRequest(HttpServletRequest.class);
      if (servlet != null) {
        Freshness.note(servlet, reading);
      }
      if (container != null) {
        container.addAttribute("reading", reading);
        container.addAttribute("revision", reading.revision());
      }
      return reading;
    }

    private static String needed(String field, NativeWebRequest request) {
      String rev = request.getParameter(field);
      if (rev == null || rev.isBlank()) {
        throw Refusal.missing(field);
      }
      return rev;
    }

    private Reading read(String field, @Nullable String rev) {
      if (rev == null || rev.isBlank()) {
        return new Reading(snapshots.getObject().head(), null);
      }
      int asked = number(field, rev.strip());
      try {
        return new Reading(snapshots.getObject().at(asked), asked);
      } catch (UnknownRevision e) {
        throw Refusal.notFound("unknown-revision", rev.strip(), e.highest())
            .at(field, "field.revision-unknown", e.highest());
      }
    }

    /** A number that is too large for a revision names one that was never published. */
    private static int number(String field, String rev) {
      if (!WHOLE.matcher(rev).matches()) {
        throw Refusal.notUnderstood("revision-unreadable", rev)
            .at(field, "field.revision-unreadable");
      }
      return rev.length() > MOST_DIGITS ? Integer.MAX_VALUE : Integer.parseInt(rev);
    }
  }
}
