package club.yearline.browse;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SlicesTest {

  private final Frame frame = new Frame(100, 10, 60, 20);

  @Test
  void fillsTheWholeRectangleWithOneSlice() {
    assertThat(new Slices(frame, 1).points(0))
        .isEqualTo("100.0,10.0 160.0,10.0 160.0,30.0 100.0,30.0");
  }

  @Test
  void cutsTwoSlicesAlongTheDiagonalSoThatTheOldFadesOut() {
    Slices slices = new Slices(frame, 2);
    assertThat(slices.points(0)).isEqualTo("100.0,10.0 160.0,10.0 100.0,30.0 100.0,30.0");
    assertThat(slices.points(1)).isEqualTo("160.0,10.0 160.0,10.0 160.0,30.0 100.0,30.0");
  }

  @Test
  void keepsEveryCornerOfManySlicesInsideTheRectangle() {
    for (int count = 1; count <= 9; count++) {
      for (int i = 0; i < count; i++) {
        for (String corner : new Slices(frame, count).points(i).split(" ")) {
          String[] xy = corner.split(",");
          assertThat(Double.parseDouble(xy[0])).isBetween(100.0, 160.0);
          assertThat(Double.parseDouble(xy[1])).isBetween(10.0, 30.0);
        }
      }
    }
  }

  @Test
  void roundsToATenthSoThatPagesStayLight() {
    assertThat(new Frame(1 / 3.0, 2 / 3.0, 10, 10).across(0, 1 / 3.0))
        .isEqualTo(new Frame(0.3, 0.7, 3.3, 10));
  }
}
