package club.yearline.quiz;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.catalog.Snapshot;
import club.yearline.catalog.Snapshots;
import club.yearline.testing.Browser;
import club.yearline.testing.DemoInBrowser;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebDriver;
import org.springframework.beans.factory.annotation.Autowired;

/** A quiz is taken on a phone, without scripts. */
class QuizInBrowserTest extends DemoInBrowser {

  @Autowired Snapshots demo;

  private Browser browser;

  @AfterEach
  void leaveTheBrowserAsItWas() {
    browser.scripts(true).desktop();
  }

  @Test
  void aVisitorMakesAQuizAnswersItAndSeesWhatWasRightAndWhy(Browser given) {
    browser = given;
    WebDriver page =
        browser.phone().light().scripts(false).open(at("/ground-school/quiz")).driver();
    browser.open(at("/ground-school/quiz?family=turnstone"));
    page.findElement(By.id("kind-serial")).click();
    page.findElement(By.id("kind-which-year")).click();
    page.findElement(By.id("count")).clear();
    page.findElement(By.id("count")).sendKeys("4");
    page.findElement(By.id("number")).sendKeys("20");
    browser.press("main form.quiz-form button[type=submit]");
    assertThat(page.getCurrentUrl()).contains("number=20", "rev=");

    Snapshot head = demo.head();
    Quiz quiz =
        Quiz.of(
            head.catalogue(),
            new Selection(
                "turnstone",
                List.of(),
                List.of(),
                List.of(),
                List.of(Kind.SERIAL, Kind.WHICH_YEAR),
                4,
                20));
    for (int i = 0; i < 3; i++) {
      int right = quiz.questions().get(i).right();
      page.findElement(By.id("a" + (i + 1) + (char) ('a' + right))).click();
    }
    int wrong = quiz.questions().get(3).right() == 0 ? 1 : 0;
    page.findElement(By.id("a4" + (char) ('a' + wrong))).click();
    browser.press("main form.quiz button[type=submit]");

    assertThat(page.findElement(By.id("score")).getText()).isEqualTo("3 of 4 right");
    assertThat(page.findElement(By.cssSelector("#q1 .quiz-outcome")).getText()).isEqualTo("Right");
    assertThat(page.findElement(By.cssSelector("#q4 .quiz-outcome")).getText()).isEqualTo("Wrong");
    assertThat(page.findElement(By.cssSelector("#q4 details")).getText()).contains("Sources");
    browser.press("#q4 details a[href*='/sources/']");
    assertThat(page.getCurrentUrl()).contains("/sources/", "rev=" + head.number());
  }
}
