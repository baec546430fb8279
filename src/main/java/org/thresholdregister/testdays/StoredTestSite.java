package org.thresholdregister.testdays;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.ZoneId;

@Entity
@Table(name = "test_site")
class StoredTestSite {

    @Id
    private String site;

    private boolean mobileUnit;
    private boolean namesInCalendar;
    private String timeZone;

    @SuppressWarnings("NullAway.Init")
    protected StoredTestSite() {}

    StoredTestSite(TestSite testSite) {
        site = testSite.site();
        mobileUnit = testSite.mobileUnit();
        namesInCalendar = testSite.namesInCalendar();
        timeZone = testSite.timeZone().getId();
    }

    TestSite toTestSite() {
        return new TestSite(site, mobileUnit, namesInCalendar, ZoneId.of(timeZone));
    }
}
