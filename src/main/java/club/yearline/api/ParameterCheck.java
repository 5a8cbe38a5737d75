package club.yearline.api;

import club.yearline.catalog.Reading;
import club.yearline.catalog.RevisionIn;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.lang.reflect.Method;
import java.lang.reflect.Parameter;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * Refuses parameters that a call does not know, and those given more than once: a program that
 * misspells {@code serial} would otherwise get the answer to another question.
 */
@Component
class ParameterCheck implements WebMvcConfigurer, HandlerInterceptor {

  private final Map<Method, Set<String>> known = new ConcurrentHashMap<>();

  @Override
  public void addInterceptors(InterceptorRegistry registry) {
    registry.addInterceptor(this).addPathPatterns("/api/v1/**");
  }

  @Override
  public boolean preHandle(
      HttpServletRequest request, HttpServletResponse response, Object handler) {
    if (handler instanceof HandlerMethod method) {
      Set<String> names = known.computeIfAbsent(method.getMethod(), ParameterCheck::names);
      request.getParameterMap().forEach((name, values) -> check(name, values, names));
    }
    return true;
  }

  private static void check(String name, String[] values, Set<String> known) {
    if (!known.contains(name)) {
      String names = String.join(", ", known);
      throw Refusal.notUnderstood("parameter-unknown", name, names)
          .at(name, "field.unknown", names);
    }
    if (values.length > 1) {
      throw Refusal.notUnderstood("parameter-repeated", name, values.length).at(name, "field.once");
    }
  }

  private static Set<String> names(Method method) {
    Set<String> names = new TreeSet<>();
    Stream.of(method.getParameters()).map(ParameterCheck::name).forEach(names::addAll);
    return names;
  }

  private static Set<String> name(Parameter parameter) {
    RequestParam asked = parameter.getAnnotation(RequestParam.class);
    if (asked != null) {
      return Set.of(asked.name().isEmpty() ? parameter.getName() : asked.name());
    }
    if (parameter.getType() != Reading.class) {
      return Set.of();
    }
    RevisionIn named = parameter.getAnnotation(RevisionIn.class);
    return Set.of(named == null ? "rev" : named.value());
  }
}
