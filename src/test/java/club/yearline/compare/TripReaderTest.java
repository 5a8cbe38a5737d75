package club.yearline.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import club.yearline.web.Phrases;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.context.support.ResourceBundleMessageSource;

class TripReaderTest {

  private static final Phrases PHRASES = phrases();

  private static Phrases phrases() {
    ResourceBundleMessageSource messages = new ResourceBundleMessageSource();
    messages.setBasenames("messages/compare");
    messages.setDefaultEncoding("UTF-8");
    return new Phrases(messages);
  }

  /** Fields written as {@code name=value, name=value}. */
  static TripReader reader(String typed) {
    Map<String, String> fields = new HashMap<>();
    for (String field : typed.split(";")) {
      int equals = field.indexOf('=');
      fields.put(field.substring(0, equals).strip(), field.substring(equals + 1));
    }
    return new TripReader(
        new TripForm(
            fields.get("distance"),
            fields.get("people"),
            fields.get("weight"),
            fields.get("bags"),
            fields.get("reserve"),
            fields.get("minutes"),
            fields.get("elevation"),
            fields.get("temperature"),
            fields.get("setting"),
            fields.get("entered"),
            fields.get("among")),
        PHRASES);
  }

  @Test
  void readsATrip() {
    TripReader reader = reader("distance= 250 ;people=3;weight=510;bags=60.5;reserve=night");
    Trip trip = reader.trip().orElseThrow();
    assertThat(reader.faults()).isEmpty();
    assertThat(trip.distance().text()).isEqualTo("250\u00a0nmi");
    assertThat(trip.reserve().number()).isEqualTo("0.75");
    assertThat(trip.people()).isEqualTo(3);
    assertThat(trip.bags().number()).isEqualTo("60.5");
  }

  @Test
  void readsMetricEntriesByTheirExactFactors() {
    Trip trip = reader("distance=463;people=2;weight=100;entered=metric").trip().orElseThrow();
    assertThat(trip.distance().value()).isEqualByComparingTo("250");
    assertThat(trip.peopleWeight().in(Scale.KG).value())
        .isCloseTo(new BigDecimal("100"), within(new BigDecimal("1e-20")));
  }

  @Test
  void readsAFieldWithoutATrip() {
    TripReader reader = reader("elevation=1200;temperature=−5");
    assertThat(reader.trip()).isEmpty();
    Field field = reader.field().orElseThrow();
    assertThat(field.temperature()).isEqualTo(-5);
    assertThat(field.standardSetting()).isTrue();
    assertThat(field.pressureAltitude()).isCloseTo(1200, within(1e-6));
    assertThat(reader.faults()).isEmpty();
  }

  @Test
  void takesASmallAltimeterSettingForInchesOfMercury() {
    Field field = reader("elevation=0;setting=29.92").field().orElseThrow();
    assertThat(field.setting()).isCloseTo(1013.2, within(0.1));
    assertThat(reader("elevation=0;setting=1013.25").field().orElseThrow().pressureAltitude())
        .isCloseTo(0, within(1e-6));
  }

  @Test
  void asksForNothingWhereNothingWasTyped() {
    TripReader reader = reader("reserve=night;entered=metric;distance= ");
    assertThat(reader.trip()).isEmpty();
    assertThat(reader.field()).isEmpty();
    assertThat(reader.reserve().number()).isEqualTo("0.75");
    assertThat(reader.faults()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          distance=-5                         | distance    | 1 to 3000 nmi
          distance=0                          | distance    | 1 to 3000 nmi
          distance=99999                      | distance    | 1 to 3000 nmi
          distance=9999;entered=metric        | distance    | 2 to 5556 km
          distance=far                        | distance    | “far” is no number
          distance=1e9                        | distance    | “1e9” is no number
          distance=12,5                       | distance    | “12,5” is no number
          people=2;weight=300                 | distance    | Give the distance
          distance=100;people=2               | weight      | weigh together
          distance=100;people=0;weight=0      | people      | 1 to 20
          distance=100;people=2.5;weight=300  | people      | whole number
          distance=100;people=99;weight=300   | people      | 1 to 20
          distance=100;weight=-1              | weight      | 0 to 5000 lb
          distance=100;bags=90000             | bags        | 0 to 5000 lb
          distance=100;reserve=own            | minutes     | how many minutes
          distance=100;reserve=own;minutes=-1 | minutes     | 0 to 600
          elevation=60000                     | elevation   | −1500 to 20000 ft
          elevation=-2000                     | elevation   | −1500 to 20000 ft
          temperature=20                      | elevation   | elevation of the field
          elevation=0;temperature=400         | temperature | −60 to 60
          elevation=0;temperature=-274        | temperature | −60 to 60
          elevation=0;setting=500             | setting     | 870 to 1085
          elevation=0;setting=12              | setting     | 870 to 1085
          """)
  void refusesWhatCannotBeMeantAndSaysWhatCan(String typed, String field, String words) {
    TripReader reader = reader(typed);
    boolean trip = reader.trip().isPresent();
    boolean place = reader.field().isPresent();
    assertThat(reader.faults()).containsKey(field);
    assertThat(reader.faults().get(field)).contains(words);
    assertThat(trip && place).isFalse();
  }
}
