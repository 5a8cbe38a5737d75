package club.yearline.corrections;

import club.yearline.effectivity.CutIn;

/**
 * A change's cut-in in one variant, as observed airframes narrow it.
 *
 * @param change key of the change
 * @param cutIn the cut-in as it shall read
 * @param title of the correction
 * @param locator how many airframes, observed until when
 * @param note what they showed
 */
public record Narrowing(String change, CutIn cutIn, String title, String locator, String note) {}
