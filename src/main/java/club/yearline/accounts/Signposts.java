package club.yearline.accounts;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.http.HttpHeaders;
import org.springframework.web.HttpRequestMethodNotSupportedException;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import org.springframework.web.util.ServletRequestPathUtils;

/**
 * Tells addresses that lead nowhere, and methods that an address does not answer to, from what
 * somebody may not do.
 */
final class Signposts {

  private final ObjectProvider<RequestMappingHandlerMapping> mappings;

  Signposts(ObjectProvider<RequestMappingHandlerMapping> mappings) {
    this.mappings = mappings;
  }

  /** Whether a page answers the request; if none does, that has been said. */
  boolean leadsSomewhere(HttpServletRequest request, HttpServletResponse response)
      throws IOException {
    try {
      if (hasHandler(request)) {
        return true;
      }
      response.sendError(HttpServletResponse.SC_NOT_FOUND);
    } catch (HttpRequestMethodNotSupportedException e) {
      sayMethods(e, request, response);
    }
    return false;
  }

  private boolean hasHandler(HttpServletRequest request)
      throws HttpRequestMethodNotSupportedException {
    ServletRequestPathUtils.parseAndCache(request);
    try {
      return mappings.orderedStream().anyMatch(mapping -> handles(mapping, request));
    } catch (WrongMethod e) {
      throw e.cause;
    } finally {
      ServletRequestPathUtils.clearParsedRequestPath(request);
    }
  }

  private static boolean handles(RequestMappingHandlerMapping mapping, HttpServletRequest request) {
    try {
      return mapping.getHandler(request) != null;
    } catch (HttpRequestMethodNotSupportedException e) {
      throw new WrongMethod(e);
    } catch (Exception e) {
      // Some other condition of the page is not met: there is a page, so it may be spoken of.
      return true;
    }
  }

  private static void sayMethods(
      HttpRequestMethodNotSupportedException e,
      HttpServletRequest request,
      HttpServletResponse response)
      throws IOException {
    String[] methods = e.getSupportedMethods();
    if (methods != null) {
      response.setHeader(HttpHeaders.ALLOW, String.join(", ", methods));
    }
    request.setAttribute(HttpRequestMethodNotSupportedException.class.getName(), e);
    response.sendError(HttpServletResponse.SC_METHOD_NOT_ALLOWED);
  }

  private static final class WrongMethod extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final HttpRequestMethodNotSupportedException cause;

    WrongMethod(HttpRequestMethodNotSupportedException cause) {
      super(cause);
      this.cause = cause;
    }
  }
}
