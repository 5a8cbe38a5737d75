package club.yearline.browse;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Says EDTF level 0 and 1 dates in words; whole dates stay in ISO form. */
record DateWords(RecordTexts texts) {

  private static final Pattern DATE =
      Pattern.compile("(\\d{4}|\\d{3}X|\\d{2}XX)(-(\\d{2}|XX))?(-(\\d{2}|XX))?([?~%])?");

  /** The date in words; a text that is none of the forms known here stands for itself. */
  String say(String edtf) {
    int slash = edtf.indexOf('/');
    return slash < 0 ? date(edtf) : interval(edtf.substring(0, slash), edtf.substring(slash + 1));
  }

  private String interval(String from, String to) {
    if (from.equals("..") || from.isEmpty()) {
      return texts.get(from.isEmpty() ? "date.until-unknown" : "date.until", date(to));
    }
    if (to.equals("..") || to.isEmpty()) {
      return texts.get(to.isEmpty() ? "date.since-unknown" : "date.since", date(from));
    }
    return texts.get("date.interval", date(from), date(to));
  }

  private String date(String text) {
    Matcher date = DATE.matcher(text);
    if (!date.matches()) {
      return text;
    }
    String plain = plain(date);
    String qualifier = date.group(6);
    if (qualifier == null) {
      return plain;
    }
    return switch (qualifier) {
      case "?" -> texts.get("date.uncertain", plain);
      case "~" -> texts.get("date.about", plain);
      default -> texts.get("date.about-uncertain", plain);
    };
  }

  private String plain(Matcher date) {
    String year = date.group(1);
    String month = date.group(3);
    if (year.endsWith("X")) {
      return texts.get("date.years", year.replace('X', '0'));
    }
    if (month == null) {
      return year;
    }
    if (month.equals("XX")) {
      return texts.get("date.some-month", year);
    }
    if (month.compareTo("20") > 0) {
      return texts.get("date.season." + month, year);
    }
    String day = date.group(5);
    if (day == null) {
      return year + "-" + month;
    }
    return day.equals("XX")
        ? texts.get("date.some-day", year + "-" + month)
        : year + "-" + month + "-" + day;
  }
}
