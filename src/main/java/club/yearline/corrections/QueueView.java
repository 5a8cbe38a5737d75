package club.yearline.corrections;

import club.yearline.corrections.CorrectionView.Line;
import club.yearline.web.Pages;
import java.util.List;

/**
 * The list of corrections.
 *
 * @param waiting those that wait for a moderator, oldest first
 * @param own the reader's own, the latest first
 * @param decided those decided on, the latest first
 * @param pages pages of those decided on
 */
record QueueView(List<Line> waiting, List<Line> own, List<Line> decided, Pages pages) {}
