package club.yearline.browse;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.browse.FeatureChart.Caption;
import org.junit.jupiter.api.Test;

class LanesTest {

  @Test
  void opensAnotherLineWhereTextsWouldCollide() {
    Lanes lanes = new Lanes(50, 13, 500);
    Caption first = lanes.place(new Frame(20, 0, 26, 26), "transition");
    Caption second = lanes.place(new Frame(46, 0, 26, 26), "open");
    Caption third = lanes.place(new Frame(200, 0, 26, 26), "open");
    assertThat(first).isEqualTo(new Caption(20, 50, "transition"));
    assertThat(second).isEqualTo(new Caption(46, 63, "open"));
    assertThat(third.y()).isEqualTo(50);
    assertThat(lanes.used()).isEqualTo(2);
  }

  @Test
  void keepsATextBeforeTheRightEdge() {
    Caption caption = new Lanes(50, 13, 100).place(new Frame(90, 0, 10, 26), "transition");
    assertThat(caption.x() + "transition".length() * Tags.CHARACTER).isLessThanOrEqualTo(100.1);
  }

  @Test
  void needsNoRoomWithoutTexts() {
    assertThat(new Lanes(50, 13, 100).used()).isZero();
  }
}
