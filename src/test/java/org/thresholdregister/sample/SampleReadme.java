package org.thresholdregister.sample;

import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The words of {@code sample-roster/README.md}: it names the workers from the same list that makes them. */
final class SampleReadme {

    private SampleReadme() {}

    static String text() {
        StringBuilder text = new StringBuilder("""
                # Fernhollow Glassworks

                Fernhollow Glassworks is an invented plant, and every person in these files is invented. It runs a
                hearing-conservation programme since November 2016: two sites, six departments, 400 workers past and
                present, ten years of hearing tests. Its day is about 24 November 2026; opened later, more of it is
                overdue.

                | file | what it holds |
                |---|---|
                | `roster.csv` | one line per worker, with every optional column |
                | `audiograms.csv` | one line per test, with every optional column |
                | `decisions.csv` | what the plant had decided before: notices given, cases recorded or found not work-related, baselines revised |

                The files are clean: an import reports no problem on any line. What is awkward about them is what is
                awkward about a real plant, and is meant to be there.

                ## The plant

                | site | department | noise group | TWA, dBA |
                |---|---|---|---|
                """);
        for (Plant.Department department : Plant.DEPARTMENTS) {
            text.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %.1f |\n",
                    department.site(),
                    department.name(),
                    department.noiseGroup(),
                    department.twaDba()));
        }
        text.append("""

                Instrument `A-1` stands at Fernhollow Works, `A-2` at Quarry Road; `A-3` travels and stops at 6000 Hz.
                In November 2023 `A-1` read about 10 dB too high at 3000, 4000 and 6000 Hz, and shifts were found that
                month that later tests do not show. From 23 March to 21 June 2020 no tests were made.

                Beside the stories below, workers come and go with and without an exit test, some baselines are late,
                some years are missed, some annual tests are overdue, and most shifts are retested within thirty days:
                some confirmed, some not, a few late, some never. On its day a few notices and an entry on the log are
                overdue, and so are a dozen annual tests and two baselines.

                ## Awkward on purpose

                | case | workers | what to see |
                |---|---|---|
                """);
        for (AwkwardCase awkward : AwkwardCase.values()) {
            text.append("| ")
                    .append(awkward.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                    .append(" | ")
                    .append(new TreeSet<>(awkward.workerNumbers())
                            .stream()
                                    .map(number -> String.format(Locale.ROOT, "FG-%04d", number))
                                    .collect(Collectors.joining(", ")))
                    .append(" | ")
                    .append(awkward.description())
                    .append(" |\n");
        }
        text.append("""

                ## How it was made

                A seeded generator among the project's tests writes these files, this one included, and a test holds
                them to it byte by byte: change the generator, not the files. Hearing follows published models of aging
                (ISO 7029:2000) and noise (ISO 1999:2013), with a spread between people and from test to test, in steps
                of 5 dB. The figures are plausible and prove nothing about any workplace.
                """);
        return text.toString();
    }
}
