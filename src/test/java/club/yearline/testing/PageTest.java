package club.yearline.testing;

import club.yearline.accounts.SecurityConfiguration;
import club.yearline.web.Phrases;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.webmvc.test.autoconfigure.WebMvcTest;
import org.springframework.context.annotation.ComponentScan.Filter;
import org.springframework.context.annotation.FilterType;
import org.springframework.context.annotation.Import;

/**
 * The frame of every page with our security rules, and no database. Of our modules only {@code web}
 * is there; a test imports the controller it is about and what that needs.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@WebMvcTest(
    excludeFilters = @Filter(type = FilterType.REGEX, pattern = "club\\.yearline\\.(?!web\\.).*"))
@Import({SecurityConfiguration.class, Phrases.class})
public @interface PageTest {}
