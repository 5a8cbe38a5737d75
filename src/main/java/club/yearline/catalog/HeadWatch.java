package club.yearline.catalog;

import org.springframework.context.annotation.Configuration;
import org.springframework.scheduling.annotation.EnableScheduling;

/** Lets {@link Snapshots} look for what other instances publish. */
@Configuration
@EnableScheduling
class HeadWatch {}
