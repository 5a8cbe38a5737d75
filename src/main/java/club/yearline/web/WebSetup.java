package club.yearline.web;

import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.servlet.resource.ResourceUrlEncodingFilter;

/** Settings of the web module that properties cannot express. */
@Configuration(proxyBeanMethods = false)
class WebSetup {

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
