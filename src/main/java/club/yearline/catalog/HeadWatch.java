package club.yearline.catalog;

import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.context.annotation.Configuration;
import org.springframework.scheduling.annotation.EnableScheduling;

/**
 * Lets {@link Snapshots} look for what other instances publish. A command that publishes and ends
 * goes without: it would read its own million rows back while it commits them.
 */
@Configuration
@ConditionalOnProperty(name = "yearline.watch", matchIfMissing = true)
@EnableScheduling
class HeadWatch {}
