package club.yearline.exchange;

import club.yearline.accounts.KeeperLink;
import java.io.IOException;
import java.util.concurrent.Callable;
import org.springframework.context.ApplicationContext;
import picocli.CommandLine.Command;

/** Makes the link by which somebody becomes keeper. */
@Command(
    name = "keeper-link",
    description = {
      "Makes a link by which whoever opens it within a day becomes keeper, for the first start or"
          + " when no keeper gets in any more. Earlier links of this kind stop working.",
      "The embedded database is open to one process at a time: stop the server before, and start it"
          + " again afterwards."
    },
    mixinStandardHelpOptions = true)
final class KeeperLinkCommand implements Callable<Integer> {

  private final Console console;
  private final Application application;

  KeeperLinkCommand(Console console, Application application) {
    this.console = console;
    this.application = application;
  }

  @Override
  public Integer call() throws IOException {
    console.progress("progress.starting");
    return application.run(this::make);
  }

  private int make(ApplicationContext context) {
    String link = context.getBean(KeeperLink.class).make();
    // Without YEARLINE_ADDRESS the server does not know by what address it is reached.
    console.progress(link.startsWith("/") ? "progress.keeper-link-path" : "progress.keeper-link");
    console.result("report.keeper-link", link);
    return Console.DONE;
  }
}
