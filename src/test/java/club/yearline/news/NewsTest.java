package club.yearline.news;

import club.yearline.accounts.WholeApplication;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.TestPropertySource;

/** The whole application at a public address, with a {@link Newsroom} to publish from. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@WholeApplication
@Import(Newsroom.class)
@TestPropertySource(properties = "yearline.address=https://catalogue.example/")
@interface NewsTest {}
