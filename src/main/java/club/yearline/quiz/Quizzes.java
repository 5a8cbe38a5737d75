package club.yearline.quiz;

import club.yearline.catalog.Snapshot;
import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import org.springframework.stereotype.Component;

/** Quizzes, kept for a while: a class asks for the same one again and again. */
@Component
class Quizzes {

  private static final int KEPT = 200;

  private final Cache<Key, Quiz> made = Caffeine.newBuilder().maximumSize(KEPT).build();

  private record Key(int revision, Selection selection) {}

  Quiz of(Snapshot snapshot, Selection selection) {
    return made.get(
        new Key(snapshot.number(), selection), k -> Quiz.of(snapshot.catalogue(), selection));
  }
}
