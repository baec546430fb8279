package org.thresholdregister.platform.clock;

import java.time.Clock;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.thresholdregister.platform.storage.RegisterProperties;

/** The clock of the register: the system's, in its own time zone, moved to a pinned date where one is set. */
@Configuration(proxyBeanMethods = false)
class ClockConfiguration {

    @Bean
    Clock clock(RegisterProperties properties) {
        Clock system = Clock.systemDefaultZone();
        return properties
                .pinnedToday()
                .<Clock>map(today -> new PinnedDateClock(system, today))
                .orElse(system);
    }
}
