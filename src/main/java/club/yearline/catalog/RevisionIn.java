package club.yearline.catalog;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * On a controller's parameter of type {@link Reading}: the query parameter that names its revision,
 * where that is not {@code rev}. It must then be given.
 */
@Target(ElementType.PARAMETER)
@Retention(RetentionPolicy.RUNTIME)
public @interface RevisionIn {

  /** Name of the query parameter. */
  String value();
}
