package club.yearline.effectivity;

import org.jspecify.annotations.Nullable;

/**
 * One of the states of a choice feature.
 *
 * @param key key, unique within the feature
 * @param label as a person says it
 * @param cue how to recognise it
 * @param picture file name of its drawing or photograph
 * @param pictureCredit who made the picture, under which licence
 */
public record FeatureValue(
    String key,
    String label,
    @Nullable String cue,
    @Nullable String picture,
    @Nullable String pictureCredit) {}
