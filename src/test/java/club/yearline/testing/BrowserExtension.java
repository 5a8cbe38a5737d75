package club.yearline.testing;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/** One browser for the whole test run, started at its first use. */
class BrowserExtension implements ExecutionCondition, ParameterResolver {

  private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

  @Override
  public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
    return Files.isExecutable(CHROMIUM) && Files.isExecutable(DRIVER)
        ? ConditionEvaluationResult.enabled("Chromium is installed")
        : ConditionEvaluationResult.disabled(
            "No Chromium here: apt-get install chromium chromium-driver");
  }

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    return parameter.getParameter().getType() == Browser.class;
  }

  @Override
  public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
    Browser shared =
        context
            .getRoot()
            .getStore(Namespace.create(BrowserExtension.class))
            .computeIfAbsent(Browser.class, type -> new Browser(CHROMIUM, DRIVER), Browser.class);
    // One that failed half-way may have left it otherwise.
    return shared.scripts(true).desktop().light();
  }
}
