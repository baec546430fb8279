package org.thresholdregister.letters;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.caselife.AfterShift;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.wording.Language;
import org.thresholdregister.core.wording.LetterKind;
import org.thresholdregister.core.wording.LetterWords;
import org.thresholdregister.core.wording.NextSteps;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.drawing.AudiogramComparison;
import org.thresholdregister.drawing.AudiogramSvg;
import org.thresholdregister.drawing.AudiogramTable;
import org.thresholdregister.platform.pdf.PrintedDocument;
import org.thresholdregister.review.RecordedDecision;
import org.thresholdregister.review.WorkerRecord;

/** Puts one letter together: the site's text, filled with what the worker's record says. */
final class LetterComposer {

    private static final String TEMPLATE = "org/thresholdregister/letters/letter";

    /** The texts that stand around a letter. */
    record Texts(String letterhead, String body, String signature) {}

    /** Who prints it and when, and what other features know of the worker. */
    record Circumstances(
            Instant at,
            ZoneId zone,
            String printedBy,
            Optional<String> booked,
            List<ClinicalHistory.Chapter> history) {}

    /** A thing of the template: one of its fields is filled. */
    public record Piece(String kind, String text, List<String> lines, List<List<String>> rows) {
        static Piece of(String kind, String text) {
            return new Piece(kind, text, List.of(), List.of());
        }
    }

    private final WorkerRecord record;
    private final LetterOccasion occasion;
    private final RecordedTest test;
    private final LetterWords words;
    private final Language language;
    private final Circumstances circumstances;
    private final LocalDate today;

    LetterComposer(WorkerRecord record, LetterOccasion occasion, Language language, Circumstances circumstances) {
        this.record = record;
        this.occasion = occasion;
        this.language = language;
        this.words = LetterWords.in(language);
        this.circumstances = circumstances;
        this.today = circumstances.at().atZone(circumstances.zone()).toLocalDate();
        this.test = record.tests().stream()
                .filter(candidate -> candidate.key() == occasion.testKey())
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the worker has no such test"));
    }

    PrintedDocument compose(Texts texts) {
        Map<Placeholder, String> values = values();
        List<Piece> pieces = new LetterText(TextPart.of(occasion.kind()), texts.body())
                .pieces(values).stream().flatMap(this::rendered).toList();
        Map<String, Object> model = new HashMap<>();
        model.put(
                "letterhead",
                LetterText.filled(texts.letterhead(), values).lines().toList());
        model.put("address", address());
        model.put("day", words.day(today));
        model.put("title", words.title(occasion.kind()));
        model.put("pieces", pieces);
        model.put(
                "signature",
                LetterText.filled(texts.signature(), values).lines().toList());
        model.put("caution", words.caution());
        String site = record.details().site();
        return new PrintedDocument(
                        TEMPLATE,
                        model,
                        words.title(occasion.kind()),
                        words.healthRecord() + (site.isEmpty() ? "" : ", " + site) + ", "
                                + words.printed(today, circumstances.printedBy()),
                        circumstances.at())
                .in(language.locale())
                .styledBy("org/thresholdregister/letters/letter.css");
    }

    private String name() {
        String name = (record.details().givenName() + " " + record.details().familyName()).strip();
        return name.isEmpty() ? record.details().workerId() : name;
    }

    private List<String> address() {
        if (!occasion.kind().isForTheWorker()) {
            return List.of();
        }
        return Stream.of(name(), record.details().workerId(), record.details().department())
                .filter(line -> !line.isBlank())
                .distinct()
                .toList();
    }

    private Map<Placeholder, String> values() {
        Map<Placeholder, String> values = new EnumMap<>(Placeholder.class);
        values.put(Placeholder.WORKER_NAME, name());
        values.put(Placeholder.WORKER_NUMBER, record.details().workerId());
        values.put(Placeholder.SITE, record.details().site());
        values.put(Placeholder.NURSE_NAME, circumstances.printedBy());
        values.put(Placeholder.LETTER_DATE, words.day(today));
        values.put(Placeholder.TEST_DATE, words.day(occasion.testDate()));
        values.put(Placeholder.EARS, words.ears(occasion.ears()));
        values.put(Placeholder.NOTICE_BY, due(FollowUpKind.NOTICE));
        values.put(Placeholder.RETEST_BY, due(FollowUpKind.RETEST));
        values.put(Placeholder.BASELINE_DATE, words.day(occasion.testDate()));
        decision()
                .ifPresentOrElse(
                        decision -> {
                            values.put(Placeholder.DECIDED_ON, words.day(decision.decidedOn()));
                            values.put(
                                    Placeholder.DECIDED_BY,
                                    decision.by().isBlank() ? words.aProfessional() : decision.by());
                        },
                        () -> values.put(Placeholder.DECIDED_BY, words.aProfessional()));
        values.put(Placeholder.WHY_REVISED, whyRevised());
        return values;
    }

    private String due(FollowUpKind kind) {
        return record.judgement().followUps().stream()
                .filter(owed -> owed.kind() == kind
                        && owed.testDate().filter(occasion.testDate()::equals).isPresent())
                .map(FollowUp::dueDate)
                .findFirst()
                .map(words::day)
                .orElse("");
    }

    private Optional<Decision> decision() {
        DecisionKind kind =
                occasion.kind() == LetterKind.BASELINE_REVISION ? DecisionKind.BASELINE : DecisionKind.NOT_WORK_RELATED;
        return record.decisions().stream()
                .map(RecordedDecision::decision)
                .filter(decision ->
                        decision.kind() == kind && decision.testDate().equals(occasion.testDate()))
                .reduce((earlier, later) -> later);
    }

    /** Better hearing where the chosen test's levels are lower than those of the ear's first baseline. */
    private String whyRevised() {
        return Arrays.stream(Ear.values())
                .filter(occasion.ears()::include)
                .flatMap(ear -> firstBaseline(ear).stream()
                        .filter(first -> !first.equals(test.audiogram()))
                        .map(first -> test.audiogram()
                                .levelSum(ear)
                                .minus(first.levelSum(ear))
                                .exact())
                        .filter(change -> change.isPresent() && change.getAsInt() != 0)
                        .map(change -> words.whyRevised(change.getAsInt() < 0)))
                .findFirst()
                .orElse("");
    }

    private Optional<Audiogram> firstBaseline(Ear ear) {
        return record.judgement().determinations().stream()
                .filter(found -> found.ear() == ear && found instanceof Determination.BaselineTest)
                .map(Determination::test)
                .findFirst();
    }

    private Stream<Piece> rendered(LetterText.Piece piece) {
        return switch (piece) {
            case LetterText.Piece.Heading(String text) -> Stream.of(Piece.of("heading", text));
            case LetterText.Piece.Paragraph(String text) -> Stream.of(Piece.of("paragraph", text));
            case LetterText.Piece.Block(Placeholder placeholder) -> block(placeholder);
        };
    }

    private Stream<Piece> block(Placeholder placeholder) {
        return switch (placeholder) {
            case FINDINGS -> Stream.of(findings());
            case TABLE -> Stream.of(table());
            case AUDIOGRAM -> Stream.of(Piece.of("drawing", AudiogramSvg.forPaper(comparison(), language)));
            case NEXT_STEPS -> list("list", words.nextSteps(nextSteps()));
            case NOTICE_STATEMENT -> Stream.of(Piece.of("paragraph", words.noticeStatement(ruleSet())));
            case WHEN_AND_WHERE ->
                Stream.of(new Piece(
                        circumstances.booked().isPresent() ? "booked" : "blank-lines",
                        "",
                        words.whenAndWhere(circumstances.booked()).lines().toList(),
                        List.of()));
            case QUIET_TIME ->
                Stream.of(Piece.of("paragraph", words.quietTime(ruleSet().quiet())));
            case FACTS -> facts();
            case HISTORY -> history();
            case ENCLOSURES -> enclosures();
            case SIGNATURE_LINE -> Stream.of(Piece.of("sign", words.signatureAndDate()));
            case WORKER_NAME,
                    WORKER_NUMBER,
                    SITE,
                    NURSE_NAME,
                    LETTER_DATE,
                    TEST_DATE,
                    EARS,
                    NOTICE_BY,
                    RETEST_BY,
                    BASELINE_DATE,
                    WHY_REVISED,
                    DECIDED_BY,
                    DECIDED_ON -> throw new IllegalStateException("no block: " + placeholder);
        };
    }

    private static Stream<Piece> list(String kind, List<String> lines) {
        return lines.isEmpty() ? Stream.of() : Stream.of(new Piece(kind, "", lines, List.of()));
    }

    private RuleSet ruleSet() {
        return record.rules().on(occasion.testDate()).ruleSet();
    }

    private Optional<Determination> found(Ear ear) {
        return record.judgement().determinations().stream()
                .filter(found -> found.ear() == ear && found.test().equals(test.audiogram()))
                .findFirst();
    }

    /** Of a retest, the determination of the test that it answers for; its own where there is none. */
    private Optional<Determination> answered(Ear ear) {
        return found(ear)
                .map(found -> found instanceof Determination.Retest retest
                        ? record.judgement().determinations().stream()
                                .filter(other -> other.ear() == ear
                                        && other instanceof Determination.Judged
                                        && other.test().equals(retest.resolves()))
                                .findFirst()
                                .orElse(found)
                        : found);
    }

    private Piece findings() {
        return new Piece(
                "findings",
                "",
                List.of(),
                AudiogramComparison.EARS.stream()
                        .map(ear -> List.of(
                                Words.capitalised(words.ear(ear)),
                                answered(ear).map(words::finding).orElseGet(words::notCompared)))
                        .toList());
    }

    private AudiogramComparison comparison() {
        AudiogramComparison comparison = AudiogramComparison.of(test.audiogram());
        for (Ear ear : Ear.values()) {
            Optional<Determination> found = found(ear);
            if (found.filter(Determination.BaselineTest.class::isInstance).isPresent()) {
                comparison = comparison.withBaseline(ear, test.audiogram());
            }
            var shift = found.flatMap(Determination::shift);
            if (shift.isPresent()) {
                comparison = comparison.withBaseline(ear, shift.get().earlier());
            }
        }
        return comparison;
    }

    private Piece table() {
        AudiogramTable table = AudiogramTable.of(comparison(), language);
        List<List<String>> rows = new ArrayList<>();
        rows.add(Stream.concat(
                        Stream.of(words.frequencyHeading()),
                        table.columns().stream().map(AudiogramTable.Column::heading))
                .toList());
        table.rows()
                .forEach(row -> rows.add(Stream.concat(
                                Stream.of(Integer.toString(row.frequency().hertz())),
                                row.thresholds().stream().map(words::thresholdCell))
                        .toList()));
        return new Piece("table", words.tableNote(), List.of(), rows);
    }

    private NextSteps nextSteps() {
        List<Determination> answers = Arrays.stream(Ear.values())
                .flatMap(ear -> answered(ear).stream())
                .toList();
        Optional<LocalDate> retestBy = answers.stream()
                .filter(Determination.Judged.class::isInstance)
                .map(Determination.Judged.class::cast)
                .flatMap(judged -> judged.dueDates().retestBy().stream())
                .filter(day -> !day.isBefore(today))
                .max(LocalDate::compareTo);
        boolean stands = answers.stream().anyMatch(found -> found.outcome() == Outcome.CONFIRMED);
        boolean toBeTold = answers.stream()
                .anyMatch(found -> found.outcome() == Outcome.CONFIRMED || found.outcome() == Outcome.AWAITING_RETEST);
        return new NextSteps(
                retestBy,
                toBeTold
                        && occasion.kind() == LetterKind.RESULT
                        && ruleSet().notice().isPresent(),
                stands && AfterShift.of(ruleSet()).protectors().isPresent(),
                answers.stream().anyMatch(found -> found.outcome() == Outcome.UNDECIDED),
                record.judgement().followUps().stream()
                        .filter(owed -> owed.kind() == FollowUpKind.ANNUAL_TEST)
                        .map(FollowUp::dueDate)
                        .findFirst());
    }

    private Stream<Piece> facts() {
        var details = record.details();
        List<List<String>> rows = new ArrayList<>();
        details.birthDate().ifPresent(day -> rows.add(List.of(words.birthDate(), words.day(day))));
        String job = Stream.of(details.jobTitle(), details.department())
                .filter(part -> !part.isBlank())
                .collect(Collectors.joining(", "));
        if (!job.isEmpty()) {
            rows.add(List.of(words.jobTitle(), job));
        }
        details.twaDba()
                .ifPresent(level -> rows.add(
                        List.of(words.noiseLevel(), level.stripTrailingZeros().toPlainString() + " dBA")));
        details.enrolledFrom().ifPresent(day -> rows.add(List.of(words.enrolledFrom(), words.day(day))));
        rows.add(List.of(words.rules(), ruleSet().name()));
        return Stream.of(Piece.of("heading", words.referralFacts()), new Piece("facts", "", List.of(), rows));
    }

    private Stream<Piece> history() {
        Stream<Piece> heading = Stream.of(Piece.of("heading", words.historyHeading()));
        if (circumstances.history().isEmpty()) {
            return Stream.concat(heading, Stream.of(Piece.of("paragraph", words.nothingOnRecord())));
        }
        return Stream.concat(
                heading,
                circumstances.history().stream()
                        .flatMap(chapter -> Stream.concat(
                                Stream.of(Piece.of("subheading", chapter.heading())),
                                chapter.lines().isEmpty()
                                        ? Stream.of(Piece.of("paragraph", words.nothingOnRecord()))
                                        : list("list", chapter.lines()))));
    }

    private Stream<Piece> enclosures() {
        LocalDate baseline = comparison().baselines().values().stream()
                .map(Audiogram::date)
                .min(LocalDate::compareTo)
                .orElse(occasion.testDate());
        return Stream.of(
                Piece.of("heading", words.enclosuresHeading()),
                new Piece("boxes", "", words.enclosures(baseline, occasion.testDate()), List.of()));
    }
}
