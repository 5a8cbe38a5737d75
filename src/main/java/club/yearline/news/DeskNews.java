package club.yearline.news;

import club.yearline.accounts.Actor;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.core.Authentication;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.HandlerMapping;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * Adds to pages what concerns who has signed in: the number of unread messages for the frame
 * ({@code deskCounts}), and on pages of what can be watched the button ({@code watch}). A visitor's
 * page costs nothing and stays the same for all.
 */
@Configuration(proxyBeanMethods = false)
class DeskNews implements WebMvcConfigurer, HandlerInterceptor {

  private static final Map<String, Watched.Kind> PAGES =
      Map.of(
          "/families/{key}", Watched.Kind.FAMILY,
          "/variants/{key}", Watched.Kind.VARIANT,
          "/features/{key}", Watched.Kind.FEATURE);

  private final ObjectProvider<Watches> watches;
  private final ObjectProvider<Messages> messages;

  DeskNews(ObjectProvider<Watches> watches, ObjectProvider<Messages> messages) {
    this.watches = watches;
    this.messages = messages;
  }

  /**
   * The button on a page.
   *
   * @param kind code of what the page is about
   * @param key its key
   * @param watching whether the person watches it
   */
  record Button(String kind, String key, boolean watching) {}

  @Override
  public void addInterceptors(InterceptorRegistry registry) {
    registry.addInterceptor(this);
  }

  @Override
  public void postHandle(
      HttpServletRequest request,
      HttpServletResponse response,
      Object handler,
      @Nullable ModelAndView page) {
    if (page == null
        || page.getViewName() == null
        || page.getViewName().startsWith("redirect:")
        || !(request.getUserPrincipal() instanceof Authentication who)
        || !(who.getPrincipal() instanceof Actor actor)) {
      return;
    }
    messages.ifAvailable(
        all -> page.addObject("deskCounts", Map.of("/inbox", all.unread(actor.id()))));
    Watched watched = watchedOn(request);
    if (watched != null) {
      watches.ifAvailable(all -> page.addObject("watch", button(watched, actor, all)));
    }
  }

  private static Button button(Watched watched, Actor actor, Watches all) {
    return new Button(watched.kind().code(), watched.key(), all.has(actor.id(), watched));
  }

  private static @Nullable Watched watchedOn(HttpServletRequest request) {
    Object pattern = request.getAttribute(HandlerMapping.BEST_MATCHING_PATTERN_ATTRIBUTE);
    Watched.Kind kind = pattern instanceof String text ? PAGES.get(text) : null;
    return kind != null
            && request.getAttribute(HandlerMapping.URI_TEMPLATE_VARIABLES_ATTRIBUTE)
                instanceof Map<?, ?> variables
            && variables.get("key") instanceof String key
        ? new Watched(kind, key)
        : null;
  }
}
