package club.yearline.fleet;

import club.yearline.accounts.Actor;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/** Hands a member all that the register keeps for them. */
@Controller
class ExportPage {

  private final TakingAlong takingAlong;
  private final FleetPace pace;

  ExportPage(TakingAlong takingAlong, FleetPace pace) {
    this.takingAlong = takingAlong;
    this.pace = pace;
  }

  @GetMapping("/fleet/export")
  void export(Actor actor, HttpServletResponse response) throws IOException {
    pace.export(actor);
    response.setContentType("application/zip");
    response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
    response.setHeader(
        HttpHeaders.CONTENT_DISPOSITION,
        ContentDisposition.attachment().filename("register.zip").build().toString());
    takingAlong.write(actor, response.getOutputStream());
  }
}
