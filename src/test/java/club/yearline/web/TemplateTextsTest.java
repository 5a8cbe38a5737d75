package club.yearline.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What templates say stands in the message bundles. */
class TemplateTextsTest {

  private static final Path TEMPLATES = Path.of("src", "main", "resources", "templates");
  private static final Path BUNDLES = Path.of("src", "main", "resources", "messages");
  private static final Path SOURCES = Path.of("src", "main", "java");
  private static final Path SETTINGS = Path.of("src", "main", "resources", "application.yaml");

  /** {@code #{key}}, {@code #{key(…)}} and {@code #messages.msg('key')}. */
  private static final Pattern KEY =
      Pattern.compile("#\\{([a-z][\\w.-]*)|#messages\\.msg\\('([a-z][\\w.-]*)'\\s*[,)]");

  /** {@code #{${'prefix.' + …}}} and {@code #messages.msg('prefix.' + …)}. */
  private static final Pattern PREFIX =
      Pattern.compile("#\\{\\$\\{'([a-z][\\w.-]*)' \\+|#messages\\.msg\\('([a-z][\\w.-]*)' \\+");

  private static final Pattern WORD = Pattern.compile("\\p{L}");

  /** Attributes that a reader sees or hears. */
  private static final List<String> SPOKEN =
      List.of("title", "alt", "placeholder", "aria-label", "aria-description", "data-label");

  static Stream<Path> templates() throws IOException {
    return files(TEMPLATES, ".html");
  }

  static Stream<Path> bundles() throws IOException {
    return files(BUNDLES, ".properties");
  }

  /** Maven leaves files of this name out of a jar, where tests would not notice. */
  @ParameterizedTest
  @MethodSource("templates")
  void everyTemplateIsPacked(Path template) {
    assertThat(template.getFileName().toString()).isNotEqualTo("package.html");
  }

  @ParameterizedTest
  @MethodSource("templates")
  void everyMessageOfATemplateExists(Path template) throws IOException {
    String source = withoutComments(template);
    assertThat(found(KEY, source)).isSubsetOf(keys());
  }

  @ParameterizedTest
  @MethodSource("templates")
  void everyComposedMessageHasSomeOfItsKind(Path template) throws IOException {
    Set<String> keys = keys();
    assertThat(found(PREFIX, withoutComments(template)))
        .allMatch(prefix -> keys.stream().anyMatch(key -> key.startsWith(prefix)));
  }

  @ParameterizedTest
  @MethodSource("templates")
  void noTextStandsInATemplateItself(Path template) throws IOException {
    Document page = Jsoup.parse(withoutComments(template));
    List<String> texts = new ArrayList<>();
    for (Element element : page.getAllElements()) {
      if (!element.normalName().matches("script|style")) {
        element.textNodes().stream().map(TextNode::text).forEach(texts::add);
      }
      SPOKEN.stream().map(element::attr).forEach(texts::add);
    }
    assertThat(texts).noneMatch(text -> WORD.matcher(withoutInlining(text)).find());
  }

  @ParameterizedTest
  @MethodSource("templates")
  void noStyleOrHandlerStandsInATemplate(Path template) throws IOException {
    Document page = Jsoup.parse(withoutComments(template));
    assertThat(page.select("style, [style], [th:style], script:not([src]):not([th:src])"))
        .isEmpty();
    assertThat(page.select("[^on]")).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("bundles")
  void everyBundleIsListedOrReadByItsModule(Path bundle) throws IOException {
    String name = "messages/" + bundle.getFileName().toString().replace(".properties", "");
    List<Path> readers = new ArrayList<>(files(SOURCES, ".java").toList());
    readers.add(SETTINGS);
    Pattern mention = Pattern.compile(name + "[\",\\s]");
    assertThat(readers).anyMatch(reader -> mention.matcher(text(reader)).find());
  }

  /** A lone one would silently swallow the arguments after it. */
  @ParameterizedTest
  @MethodSource("bundles")
  void noMessageHasALoneStraightApostrophe(Path bundle) throws IOException {
    assertThat(read(bundle).values())
        .map(text -> text.toString().replaceAll("''|'[{}][^']*'", ""))
        .noneMatch(text -> text.contains("'"));
  }

  @Test
  void noKeyStandsInTwoBundles() throws IOException {
    List<String> all = new ArrayList<>();
    for (Path bundle : bundles().toList()) {
      all.addAll(read(bundle).stringPropertyNames());
    }
    assertThat(all).doesNotHaveDuplicates();
  }

  @Test
  void everyRefusalHasTitleDetailAndAdvice() throws IOException {
    Set<String> keys = keys();
    Set<String> titles = new TreeSet<>();
    keys.stream().filter(key -> key.matches("refusal\\.[a-z-]+")).forEach(titles::add);
    assertThat(titles).isNotEmpty();
    assertThat(titles).allMatch(t -> keys.contains(t + ".detail") && keys.contains(t + ".advice"));
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String withoutInlining(String text) {
    return text.replaceAll("\\[\\[.*?]]", "");
  }

  /** Thymeleaf's own comments never reach the reader. */
  private static String withoutComments(Path template) throws IOException {
    return Files.readString(template).replaceAll("(?s)<!--/\\*.*?\\*/-->", "");
  }

  private static Set<String> found(Pattern pattern, String source) {
    Set<String> found = new TreeSet<>();
    Matcher matcher = pattern.matcher(source);
    while (matcher.find()) {
      found.add(matcher.group(1) != null ? matcher.group(1) : matcher.group(2));
    }
    return found;
  }

  private static Set<String> keys() throws IOException {
    Set<String> keys = new TreeSet<>();
    for (Path bundle : bundles().toList()) {
      keys.addAll(read(bundle).stringPropertyNames());
    }
    return keys;
  }

  private static Properties read(Path bundle) throws IOException {
    Properties properties = new Properties();
    try (InputStream in = Files.newInputStream(bundle)) {
      properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    }
    return properties;
  }

  private static Stream<Path> files(Path folder, String ending) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(f -> f.toString().endsWith(ending)).sorted().toList().stream();
    }
  }
}
