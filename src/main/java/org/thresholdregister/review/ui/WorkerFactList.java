package org.thresholdregister.review.ui;

import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.component.html.Div;
import java.util.OptionalInt;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.platform.ui.Dates;
import org.thresholdregister.review.WorkerRecord;
import org.thresholdregister.roster.WorkerDetails;

/** Who the worker is and how exposed. What a rule needs and the record does not hold is said; the rest is left out. */
class WorkerFactList extends DescriptionList {

    WorkerFactList(WorkerRecord record) {
        addClassName("tr-facts");
        WorkerDetails worker = record.details();
        fact("Number", worker.workerId());
        fact(
                "Born",
                worker.birthDate()
                        .map(birth -> Dates.onScreen(birth) + age(record.ageToday()))
                        .orElse("not given, so no age allowance can be made"));
        fact("Sex", worker.sex().map(WorkerFactList::inWords).orElse("not given, so no age allowance can be made"));
        fact("Site", worker.site());
        fact("Department", worker.department());
        fact("Job", worker.jobTitle());
        fact("Noise group", worker.noiseGroup());
        fact(
                "TWA, 8 hours",
                worker.twaDba().map(level -> level.toPlainString() + " dBA").orElse(""));
        fact(
                "Enrolled from",
                worker.enrolledFrom().map(Dates::onScreen).orElse("not given, so no date for a first test can be set"));
        fact("Hired", worker.hireDate().map(Dates::onScreen).orElse(""));
        fact("Left", worker.endDate().map(Dates::onScreen).orElse(""));
    }

    private void fact(String term, String words) {
        if (!words.isEmpty()) {
            var fact = new Div(new Term(term), new Description(words));
            add(fact);
        }
    }

    private static String age(OptionalInt years) {
        return years.isPresent() ? ", age " + years.getAsInt() : "";
    }

    private static String inWords(Sex sex) {
        return switch (sex) {
            case FEMALE -> "female";
            case MALE -> "male";
        };
    }
}
