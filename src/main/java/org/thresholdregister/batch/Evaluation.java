package org.thresholdregister.batch;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.columnar.ColumnarJudge;
import org.thresholdregister.core.columnar.JudgedPopulation;
import org.thresholdregister.core.columnar.Population;
import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.regulation.Provenance;
import org.thresholdregister.core.rules.Finding;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.summary.CountedTest;
import org.thresholdregister.core.summary.Group;
import org.thresholdregister.core.summary.SummaryRow;
import org.thresholdregister.core.summary.YearSummary;
import org.thresholdregister.core.wording.ProposalWording;
import org.thresholdregister.core.wording.RuleWording;
import org.thresholdregister.core.wording.Sentence;
import org.thresholdregister.core.wording.Working;
import org.thresholdregister.intake.ConditionsOfTests;
import org.thresholdregister.intake.Effect;
import org.thresholdregister.intake.FileSet;
import org.thresholdregister.intake.Intake;
import org.thresholdregister.intake.MakingOfTests;
import org.thresholdregister.intake.ProblemSpool;
import org.thresholdregister.intake.UnusableFileException;
import org.thresholdregister.reports.SummaryWorkbook;

/** Reads a file set, judges it worker by worker and writes the result files into a folder. */
final class Evaluation {

    /** What was done, for a closing line. */
    record Result(int workers, int determinations, Map<Effect, Integer> problems) {}

    /**
     * All that counts of the files, and the smallest group that each worker belongs to.
     *
     * @param conditions under which tests were made, where doubts about them are wanted
     * @param making who made tests and on what, where the programme is looked at
     */
    private record Register(
            Population population,
            List<Group> groups,
            Optional<ConditionsOfTests> conditions,
            Optional<MakingOfTests> making) {}

    private static final String DETERMINATIONS = "determinations.csv";
    private static final String FOLLOW_UPS = "followups.csv";
    private static final String[] FOLLOW_UP_COLUMNS = {"worker_id", "kind", "due_date", "test_date", "ears", "state"};
    private static final String PROPOSALS = "baseline-proposals.csv";
    private static final String[] PROPOSAL_COLUMNS = {
        "worker_id", "ear", "kind", "from_date", "to_date", "evidence_dates", "reason"
    };
    private static final String WORKINGS = "workings.csv";
    private static final String FINDINGS = "findings.csv";
    private static final String VALIDITY = "validity.csv";

    private final JudgingOptions options;
    private final Path folder;
    private final boolean withWorkings;
    private final boolean withValidity;
    private final boolean withProgramme;
    private final YearSummary summary = new YearSummary();
    private final Map<Effect, Integer> problemsByEffect = new EnumMap<>(Effect.class);
    private int workers;
    private int determinations;

    /**
     * @param withValidity whether doubts about tests are wanted too
     * @param withProgramme whether the programme and its instruments are to be looked at too
     */
    Evaluation(JudgingOptions options, Path folder, boolean withWorkings, boolean withValidity, boolean withProgramme) {
        this.options = options;
        this.folder = folder;
        this.withWorkings = withWorkings;
        this.withValidity = withValidity;
        this.withProgramme = withProgramme;
    }

    /** @throws UnusableFileException before anything is written, if a file as a whole cannot be read */
    Result run(FileSet files) throws IOException, UnusableFileException {
        try (ProblemSpool problems = new ProblemSpool(Path.of(System.getProperty("java.io.tmpdir")))) {
            Register register = read(files, problems);
            Files.createDirectories(folder);
            removeOptionalFilesOfAnEarlierRun();
            writeProblems(problems);
            if (canBeJudgedInColumns()) {
                judgeInColumns(register);
            } else {
                judge(register);
            }
            writeSummary(summary.rows());
            return new Result(workers, determinations, problemsByEffect);
        }
    }

    /** What this run may not write again would contradict what it does write. */
    private void removeOptionalFilesOfAnEarlierRun() throws IOException {
        for (String name :
                List.of(PROPOSALS, WORKINGS, FINDINGS, VALIDITY, ProgrammeFiles.PROGRAMME, ProgrammeFiles.WATCH)) {
            Files.deleteIfExists(folder.resolve(name));
        }
    }

    /** What of the files was read is let go of here, so that judging finds the room. */
    private Register read(FileSet files, ProblemSpool problems) throws IOException, UnusableFileException {
        Intake intake = Intake.read(files, options.asOf(), problems);
        Population population = intake.population();
        Map<Group, Group> known = new HashMap<>();
        Group[] groups = new Group[population.workerCount()];
        for (int worker = 0; worker < groups.length; worker++) {
            int number = population.numberInBuilder(worker);
            Group group = Group.of(given(intake.siteOf(number)), given(intake.departmentOf(number)));
            groups[worker] = known.computeIfAbsent(group, same -> same);
        }
        return new Register(
                population,
                List.of(groups),
                withValidity ? Optional.of(ConditionsOfTests.read(files, options.asOf(), intake)) : Optional.empty(),
                withProgramme ? Optional.of(MakingOfTests.read(files, options.asOf(), intake)) : Optional.empty());
    }

    /** Columns hold the answers of one rule set; sentences and doubts need all that each judgement rests on. */
    private boolean canBeJudgedInColumns() {
        return options.ruleSet().equals(RuleSets.OSHA) && !withWorkings && !withValidity && !withProgramme;
    }

    private void judgeInColumns(Register register) throws IOException {
        JudgedPopulation judged = ColumnarJudge.judge(register.population, options);
        try (OutputStream determinationRows = Files.newOutputStream(folder.resolve(DETERMINATIONS));
                OutputStream followUpRows = Files.newOutputStream(folder.resolve(FOLLOW_UPS))) {
            RowBytes.of(DeterminationsFile.columns(options)).writeTo(determinationRows);
            RowBytes.of(FOLLOW_UP_COLUMNS).writeTo(followUpRows);
            determinations =
                    new ColumnarResults(judged, register.groups, determinationRows, followUpRows).writeTo(summary);
        }
        workers = register.population.workerCount();
        if (options.baselineRevision() != BaselineRevision.OFF) {
            writeProposals(judged);
        }
    }

    private void writeProposals(JudgedPopulation judged) throws IOException {
        try (CsvFile file = file(PROPOSALS, PROPOSAL_COLUMNS)) {
            for (int worker = 0; worker < workers; worker++) {
                for (BaselineChange proposal : judged.proposals(worker)) {
                    writeProposal(file, judged.population().workerId(worker), proposal);
                }
            }
        }
    }

    private void judge(Register register) throws IOException {
        Population population = register.population;
        try (ResultFiles results = new ResultFiles(register)) {
            for (int worker = 0; worker < population.workerCount(); worker++) {
                WorkerHistory history = population.history(worker);
                Group group = register.groups.get(worker);
                WorkerJudgement judgement = Judge.judge(history, options);
                results.write(worker, history, judgement);
                results.programme.ifPresent(files -> files.add(group, history, judgement));
                summary.add(
                        group,
                        judgement.determinations().stream().map(CountedTest::of).toList());
                workers++;
                determinations += judgement.determinations().size();
            }
            results.programme.ifPresent(ProgrammeFiles::write);
        }
    }

    private static Optional<String> given(String text) {
        return Optional.of(text).filter(some -> !some.isEmpty());
    }

    private static void writeProposal(CsvFile file, String workerId, BaselineChange proposal) {
        file.write(
                workerId,
                proposal.ear().word(),
                proposal.kind().word(),
                proposal.from().date().toString(),
                proposal.to().date().toString(),
                proposal.evidence().stream().map(LocalDate::toString).collect(Collectors.joining(" ")),
                ProposalWording.reason(proposal));
    }

    private void writeProblems(ProblemSpool problems) throws IOException {
        try (CsvFile file = file("problems.csv", "file", "line", "column", "value", "problem", "effect")) {
            problems.forEachInFileOrder(problem -> {
                problemsByEffect.merge(problem.effect(), 1, Integer::sum);
                file.write(
                        problem.file(),
                        Integer.toString(problem.line()),
                        problem.column(),
                        problem.value(),
                        problem.problem(),
                        problem.effect().words());
            });
        }
    }

    private void writeSummary(List<SummaryRow> rows) throws IOException {
        try (CsvFile file = file("summary.csv", "year", "site", "department", "measure", "value")) {
            for (SummaryRow row : rows) {
                file.write(
                        Integer.toString(row.year()),
                        row.group().site(),
                        row.group().department(),
                        row.measure().word(),
                        row.count().word());
            }
        }
        Files.write(folder.resolve("summary.xlsx"), SummaryWorkbook.of(rows));
    }

    private CsvFile file(String name, String... columns) throws IOException {
        return new CsvFile(folder.resolve(name), columns);
    }

    /** The files that grow worker by worker. */
    private final class ResultFiles implements Closeable {
        private final DeterminationsFile determinationRows =
                new DeterminationsFile(folder.resolve(DETERMINATIONS), options);
        private final CsvFile followUps = file(FOLLOW_UPS, FOLLOW_UP_COLUMNS);
        private final Optional<CsvFile> proposals = options.baselineRevision() == BaselineRevision.OFF
                ? Optional.empty()
                : Optional.of(file(PROPOSALS, PROPOSAL_COLUMNS));
        private final Optional<CsvFile> workings = withWorkings
                ? Optional.of(file(WORKINGS, "worker_id", "test_date", "purpose", "ear", "step", "sentence", "source"))
                : Optional.empty();

        private final Optional<CsvFile> findings =
                options.ruleSet().furtherRules().isEmpty()
                        ? Optional.empty()
                        : Optional.of(file(
                                FINDINGS,
                                "worker_id",
                                "test_date",
                                "purpose",
                                "ear",
                                "rule_set",
                                "rule",
                                "answer",
                                "unverified",
                                "source",
                                "working"));

        private final Optional<ValidityFile> flags;
        private final Optional<ProgrammeFiles> programme;

        ResultFiles(Register register) throws IOException {
            flags = register.conditions.isPresent()
                    ? Optional.of(new ValidityFile(
                            file(VALIDITY, ValidityFile.COLUMNS),
                            register.population,
                            register.groups,
                            register.conditions.get(),
                            options.ruleSet().quiet()))
                    : Optional.empty();
            programme = register.making.isPresent()
                    ? Optional.of(new ProgrammeFiles(
                            file(ProgrammeFiles.PROGRAMME, ProgrammeFiles.PROGRAMME_COLUMNS),
                            file(ProgrammeFiles.WATCH, ProgrammeFiles.WATCH_COLUMNS),
                            register.making.get()))
                    : Optional.empty();
        }

        void write(int worker, WorkerHistory history, WorkerJudgement judgement) {
            String workerId = history.worker().workerId();
            flags.ifPresent(file -> file.write(worker, history, judgement));
            for (Determination determination : judgement.determinations()) {
                determinationRows.write(workerId, determination);
                workings.ifPresent(file -> writeWorking(file, workerId, determination));
            }
            for (FollowUp followUp : judgement.followUps()) {
                followUps.write(
                        workerId,
                        followUp.kind().word(),
                        followUp.dueDate().toString(),
                        followUp.testDate().map(LocalDate::toString).orElse(""),
                        followUp.ears().word(),
                        followUp.isOverdue(options.asOf()) ? "overdue" : "open");
            }
            findings.ifPresent(file -> judgement.findings().forEach(finding -> writeFinding(file, workerId, finding)));
            proposals.ifPresent(
                    file -> judgement.proposals().forEach(proposal -> writeProposal(file, workerId, proposal)));
        }

        private static void writeWorking(CsvFile file, String workerId, Determination determination) {
            int step = 1;
            for (Sentence sentence : Working.of(determination)) {
                file.write(
                        workerId,
                        determination.test().date().toString(),
                        determination.test().purpose().word(),
                        determination.ear().word(),
                        Integer.toString(step++),
                        sentence.text(),
                        sentence.basis().map(Object::toString).orElse(""));
            }
        }

        private void writeFinding(CsvFile file, String workerId, Finding finding) {
            file.write(
                    workerId,
                    finding.test().date().toString(),
                    finding.test().purpose().word(),
                    finding.ears().word(),
                    options.ruleSet().word(),
                    finding.rule().word(),
                    finding.verdict().word(),
                    finding.rule().provenance() == Provenance.UNVERIFIED ? "unverified" : "",
                    finding.rule().basis().place(),
                    RuleWording.of(finding).stream().map(Sentence::text).collect(Collectors.joining(" ")));
        }

        @Override
        public void close() throws IOException {
            determinationRows.close();
            followUps.close();
            if (proposals.isPresent()) {
                proposals.get().close();
            }
            if (workings.isPresent()) {
                workings.get().close();
            }
            if (findings.isPresent()) {
                findings.get().close();
            }
            if (flags.isPresent()) {
                flags.get().close();
            }
            if (programme.isPresent()) {
                programme.get().close();
            }
        }
    }
}
