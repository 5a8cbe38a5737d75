package club.yearline.api;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Names the constants whose codes are the only values of a text, for the description. */
@Target(ElementType.RECORD_COMPONENT)
@Retention(RetentionPolicy.RUNTIME)
@interface Coded {

  /** The constants; each has a method {@code code()}. */
  Class<? extends Enum<?>> value();
}
