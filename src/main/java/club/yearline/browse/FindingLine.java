package club.yearline.browse;

import club.yearline.effectivity.Finding;

/**
 * A finding in words.
 *
 * @param level code of how grave it is
 * @param text what it says
 */
record FindingLine(String level, String text) {

  static FindingLine of(Finding finding, RecordTexts texts) {
    Object[] arguments = new Object[8];
    arguments[0] = finding.table();
    arguments[1] = finding.record();
    arguments[2] = finding.field() == null ? "" : finding.field();
    arguments[3] = finding.value() == null ? "" : finding.value();
    for (int i = 4; i < arguments.length; i++) {
      arguments[i] = i - 4 < finding.arguments().size() ? finding.arguments().get(i - 4) : "";
    }
    return new FindingLine(
        finding.code().level().code(), texts.get("finding." + finding.code().code(), arguments));
  }
}
