package club.yearline.news;

import com.thaiopensource.relaxng.jaxp.CompactSyntaxSchemaFactory;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.Validator;
import org.xml.sax.ErrorHandler;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * The grammar of Atom in RELAX NG, run by a validator of that language. Source: RFC 4287, Appendix
 * B, which stands in src/test/resources/published/atom.rnc.
 */
final class AtomGrammar {

  private static final Path FILE = Path.of("src", "test", "resources", "published", "atom.rnc");
  private static final Schema GRAMMAR = grammar();

  private AtomGrammar() {}

  /** Where a document leaves the grammar; nowhere if it is valid. */
  static List<String> brokenBy(String document) throws IOException, SAXException {
    Errors errors = new Errors();
    Validator validator = GRAMMAR.newValidator();
    validator.setErrorHandler(errors);
    validator.validate(new StreamSource(new StringReader(document)));
    return errors.found;
  }

  private static Schema grammar() {
    try {
      return new CompactSyntaxSchemaFactory().newSchema(FILE.toFile());
    } catch (SAXException e) {
      throw new AssertionError(e);
    }
  }

  private static final class Errors implements ErrorHandler {

    private final List<String> found = new ArrayList<>();

    @Override
    public void warning(SAXParseException e) {
      found.add(e.getMessage());
    }

    @Override
    public void error(SAXParseException e) {
      found.add(e.getMessage());
    }

    @Override
    public void fatalError(SAXParseException e) throws SAXParseException {
      throw e;
    }
  }
}
