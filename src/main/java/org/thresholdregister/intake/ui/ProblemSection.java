package org.thresholdregister.intake.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import java.util.List;
import org.thresholdregister.intake.ImportPreview;
import org.thresholdregister.intake.ImportService;
import org.thresholdregister.intake.RowProblem;
import org.thresholdregister.platform.ui.Downloads;
import org.thresholdregister.platform.ui.SheetCsv;

/** What is wrong with rows, on the page and to take away. */
class ProblemSection extends Div {

    private static final List<String> FILE_HEADER = List.of("file", "line", "column", "value", "problem", "effect");

    ProblemSection(ImportPreview preview, ImportService imports) {
        addClassName("tr-problems");
        add(new H2("What is wrong with rows"));
        List<RowProblem> problems = preview.problems();
        if (problems.isEmpty()) {
            add(new Paragraph("Nothing: every row could be read whole."));
            return;
        }
        add(
                Downloads.link(
                        "Download these as CSV",
                        "problems.csv",
                        SheetCsv.CONTENT_TYPE,
                        out -> SheetCsv.write(
                                out,
                                FILE_HEADER,
                                imports.problemsToTakeOut(preview).stream()
                                        .map(ProblemSection::inFile)
                                        .toList())),
                new LongTable(
                        ImportWords.some(problems.size(), "remark") + ", in the order of the files.",
                        List.of("File", "Line", "Column", "Given", "What is wrong, and how to mend it", "Effect"),
                        problems.stream().map(ProblemSection::onScreen).toList()));
    }

    private static List<String> inFile(RowProblem problem) {
        return List.of(
                problem.file(),
                Integer.toString(problem.line()),
                problem.column(),
                problem.value(),
                problem.problem(),
                problem.effect().words());
    }

    private static List<String> onScreen(RowProblem problem) {
        return List.of(
                problem.file(),
                Integer.toString(problem.line()),
                problem.column().isEmpty() ? "(the whole row)" : problem.column(),
                problem.value().isEmpty() ? "(nothing)" : problem.value(),
                problem.problem(),
                problem.effect().words());
    }
}
