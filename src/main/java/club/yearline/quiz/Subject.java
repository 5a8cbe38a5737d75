package club.yearline.quiz;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * Something a question can be tried about.
 *
 * @param feature key of the feature it is mainly about
 * @param question makes the question, where the records bear one
 */
record Subject(String feature, Supplier<Optional<QuizQuestion>> question) {}
