package club.yearline.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import com.fasterxml.jackson.databind.JavaType;
import io.swagger.v3.core.converter.AnnotatedType;
import io.swagger.v3.core.converter.ModelConverter;
import io.swagger.v3.core.converter.ModelConverterContext;
import io.swagger.v3.core.util.Json31;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.Schema;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Iterator;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.util.Assert;
import org.springframework.util.ReflectionUtils;

/**
 * Makes the description say of each record what the code says: what cannot be null is always there,
 * what can is left out when it is null unless the record writes nulls, and coded texts have the
 * codes of their constants.
 */
@Component
class RecordSchemas implements ModelConverter {

  private static final String REFERENCE = "#/components/schemas/";

  @Override
  public @Nullable Schema<?> resolve(
      AnnotatedType type, ModelConverterContext context, Iterator<ModelConverter> chain) {
    Schema<?> resolved = chain.hasNext() ? chain.next().resolve(type, context, chain) : null;
    JavaType java = Json31.mapper().constructType(type.getType());
    if (resolved != null && java.isTypeOrSubTypeOf(Record.class)) {
      Schema<?> model = model(resolved, context);
      if (model != null && model.getProperties() != null) {
        complete(model, java);
      }
    }
    return resolved;
  }

  private static @Nullable Schema<?> model(Schema<?> resolved, ModelConverterContext context) {
    String reference = resolved.get$ref();
    return reference == null
        ? resolved
        : context.getDefinedModels().get(reference.substring(REFERENCE.length()));
  }

  /** Completes the properties that come from a record and from those unwrapped into it. */
  private static void complete(Schema<?> model, JavaType record) {
    for (RecordComponent component : record.getRawClass().getRecordComponents()) {
      if (component.getAccessor().isAnnotationPresent(JsonUnwrapped.class)) {
        complete(model, typeOf(component, record));
      } else {
        complete(model, component);
      }
    }
  }

  private static JavaType typeOf(RecordComponent component, JavaType owner) {
    return Json31.mapper()
        .getTypeFactory()
        .resolveMemberType(component.getGenericType(), owner.getBindings());
  }

  @SuppressWarnings({"rawtypes", "unchecked"})
  private static void complete(Schema<?> model, RecordComponent component) {
    String name = component.getName();
    Map<String, Schema> properties = model.getProperties();
    Schema<Object> property = properties.get(name);
    if (property == null) {
      return;
    }
    addCodes(property, component.getAnnotation(Coded.class));
    boolean nullable = component.getAnnotatedType().isAnnotationPresent(Nullable.class);
    boolean always = !nullable || writesNulls(component);
    if (nullable && always) {
      properties.put(name, orNull(property));
    }
    if (always && !isRequired(model, name)) {
      model.addRequiredItem(name);
    }
  }

  private static void addCodes(Schema<Object> property, @Nullable Coded coded) {
    if (coded != null) {
      property.setEnum(
          Stream.of(coded.value().getEnumConstants()).map(RecordSchemas::code).toList());
    }
  }

  private static boolean isRequired(Schema<?> model, String name) {
    return model.getRequired() != null && model.getRequired().contains(name);
  }

  private static boolean writesNulls(RecordComponent component) {
    JsonInclude own = component.getAccessor().getAnnotation(JsonInclude.class);
    JsonInclude include =
        own == null ? component.getDeclaringRecord().getAnnotation(JsonInclude.class) : own;
    return include != null && include.value() == JsonInclude.Include.ALWAYS;
  }

  private static Schema<?> orNull(Schema<?> property) {
    if (property.get$ref() == null) {
      property.addType("null");
      return property;
    }
    return new JsonSchema().addAnyOfItem(property).addAnyOfItem(new JsonSchema().typesItem("null"));
  }

  private static Object code(Enum<?> constant) {
    Method code = ReflectionUtils.findMethod(constant.getDeclaringClass(), "code");
    Assert.state(code != null, () -> constant.getDeclaringClass() + " has no codes");
    return Objects.requireNonNull(ReflectionUtils.invokeMethod(code, constant));
  }
}
