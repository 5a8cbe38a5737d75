package club.yearline.web;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.servlet.resource.ResourceUrlEncodingFilter;
import org.thymeleaf.cache.StandardCacheManager;
import org.thymeleaf.spring6.SpringTemplateEngine;

/** Settings of the web module that properties cannot express. */
@Configuration(proxyBeanMethods = false)
class WebSetup {

  /** Well above what all templates hold; beyond it, expressions would be read and compiled anew. */
  private static final int MOST_EXPRESSIONS = 10_000;

  WebSetup(ObjectProvider<SpringTemplateEngine> engines) {
    for (SpringTemplateEngine engine : engines) {
      if (engine.getCacheManager() instanceof StandardCacheManager caches) {
        caches.setExpressionCacheMaxSize(MOST_EXPRESSIONS);
      }
    }
  }

  /**
   * Keeps the link-rewriting filter out: it would search the static files for every link of every
   * page. {@link Assets} does its work once per file.
   */
  @Bean
  FilterRegistrationBean<ResourceUrlEncodingFilter> noLinkRewriting() {
    var registration = new FilterRegistrationBean<>(new ResourceUrlEncodingFilter());
    registration.setEnabled(false);
    return registration;
  }
}
