package org.thresholdregister.platform.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.vaadin.flow.router.Location;
import com.vaadin.flow.router.NotFoundException;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.platform.query.Order;

class FilterParametersTest {

    private static FilterParameters read(String address) {
        return FilterParameters.of(new Location(address));
    }

    @Test
    void whatIsWrittenIsReadAgain() {
        String address = FilterParameters.NONE
                .withChoice("kind", Optional.of(FollowUpKind.ANNUAL_TEST))
                .with("site", Optional.of("Quarry Road & Sons, 50%"))
                .with("department", Optional.of(""))
                .pathOf("follow-ups");

        FilterParameters read = read(address);
        assertThat(address).startsWith("follow-ups?kind=annual-test&site=Quarry");
        assertThat(read.choice("kind", FollowUpKind.class)).contains(FollowUpKind.ANNUAL_TEST);
        assertThat(read.text("site")).contains("Quarry Road & Sons, 50%");
        assertThat(read.text("department")).contains("");
        assertThat(read.text("state")).isEmpty();
        assertThat(read("follow-ups?" + read.toQueryParameters().getQueryString())
                        .pathOf("follow-ups"))
                .contains("kind=annual-test", "department=", "site=Quarry%20Road%20%26%20Sons%2C%2050%25");
    }

    @Test
    void aChoiceReplacesTheOneBefore() {
        FilterParameters one = FilterParameters.NONE.with("site", Optional.of("Mill"));
        assertThat(one.with("site", Optional.of("Yard")).pathOf("workers")).isEqualTo("workers?site=Yard");
        assertThat(one.with("site", Optional.empty()).pathOf("workers")).isEqualTo("workers");
    }

    @Test
    void aValueThatMeansNothingLeadsToNoPage() {
        assertThatThrownBy(() -> read("follow-ups?kind=tea").choice("kind", FollowUpKind.class))
                .isInstanceOf(NotFoundException.class);
        assertThatThrownBy(() -> read("shifts?year=26").year("year")).isInstanceOf(NotFoundException.class);
        assertThatThrownBy(() -> read("shifts?year=2025&year=2026")).isInstanceOf(NotFoundException.class);
    }

    @Test
    void aNumberOfAnyMakeupIsOneStepOfAPath() {
        assertThat(Paths.worker("FG-0001")).isEqualTo("worker/FG-0001");
        assertThat(Paths.worker("7 ö?")).isEqualTo("worker/7%20%C3%B6%3F");
    }

    @Test
    void aDayAndAnOrderStandInTheAddress() {
        String address = FilterParameters.NONE
                .withDay("from", Optional.of(LocalDate.of(2026, 3, 9)))
                .withOrder(Optional.of(Order.descending(FollowUpKind.ANNUAL_TEST)))
                .pathOf("follow-ups");
        assertThat(address).isEqualTo("follow-ups?from=2026-03-09&order=annual-test-descending");
        FilterParameters read = read(address);
        assertThat(read.day("from")).contains(LocalDate.of(2026, 3, 9));
        assertThat(read.order(FollowUpKind.class)).contains(Order.descending(FollowUpKind.ANNUAL_TEST));
        assertThat(read("x?order=notice").order(FollowUpKind.class)).contains(Order.ascending(FollowUpKind.NOTICE));
        assertThat(read.withOrder(Optional.empty()).pathOf("follow-ups")).isEqualTo("follow-ups?from=2026-03-09");
        assertThatThrownBy(() -> read("x?order=tea").order(FollowUpKind.class)).isInstanceOf(NotFoundException.class);
        assertThatThrownBy(() -> read("x?from=9-3-2026").day("from")).isInstanceOf(NotFoundException.class);
    }
}
