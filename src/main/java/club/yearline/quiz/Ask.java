package club.yearline.quiz;

import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Position;

/** One question to the engine: a feature at a position. */
record Ask(Position at, Feature feature) {}
