package club.yearline.news;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.HandlerMapping;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * Tells pages which feed goes with them, as the model attribute {@code feed}: the pages belong to
 * another module, which knows nothing of news.
 */
@Configuration(proxyBeanMethods = false)
class FeedLinks implements WebMvcConfigurer, HandlerInterceptor {

  @Override
  public void addInterceptors(InterceptorRegistry registry) {
    registry.addInterceptor(this).addPathPatterns("/revisions", "/revisions/*", "/families/{key}");
  }

  @Override
  public void postHandle(
      HttpServletRequest request,
      HttpServletResponse response,
      Object handler,
      @Nullable ModelAndView page) {
    // A page that the browser has already is not made; one at a revision has no news to come.
    if (page != null && page.hasView() && request.getParameter("rev") == null) {
      page.addObject("feed", feed(request));
    }
  }

  private static FeedLink feed(HttpServletRequest request) {
    return request.getAttribute(HandlerMapping.URI_TEMPLATE_VARIABLES_ATTRIBUTE)
                instanceof Map<?, ?> variables
            && variables.get("key") instanceof String key
        ? FeedLink.family(key)
        : FeedLink.WHOLE;
  }
}
