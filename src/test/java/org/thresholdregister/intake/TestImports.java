package org.thresholdregister.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.springframework.boot.test.context.TestComponent;

/** Imports texts as files, on behalf of whoever is signed in. */
@TestComponent
public class TestImports {

    /** The header of an audiograms file with the columns that are required. */
    public static final String AUDIOGRAM_COLUMNS = """
            worker_id,test_date,purpose,left_500,left_1000,left_2000,left_3000,left_4000,left_6000,left_8000,\
            right_500,right_1000,right_2000,right_3000,right_4000,right_6000,right_8000
            """;

    private final ImportService imports;

    TestImports(ImportService imports) {
        this.imports = imports;
    }

    /** A row of an audiograms file, the same level at every frequency of an ear. */
    public static String test(String workerId, String date, String purpose, int left, int right) {
        return "%s,%s,%s%s%s%n".formatted(workerId, date, purpose, ("," + left).repeat(7), ("," + right).repeat(7));
    }

    public UploadedFile keep(Table table, String text) {
        try {
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            return imports.keep(table, table.name().toLowerCase() + ".csv", new ByteArrayInputStream(bytes));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Looks at the files; an empty text stands for none. */
    public ImportPreview preview(String roster, String audiograms, String decisions) {
        List<UploadedFile> files = new ArrayList<>();
        addIfAny(Table.ROSTER, roster, files);
        addIfAny(Table.AUDIOGRAMS, audiograms, files);
        addIfAny(Table.DECISIONS, decisions, files);
        PreviewResult result = imports.preview(files);
        assertThat(result).isInstanceOf(PreviewResult.Ready.class);
        return ((PreviewResult.Ready) result).preview();
    }

    private void addIfAny(Table table, String text, List<UploadedFile> files) {
        if (!text.isEmpty()) {
            files.add(keep(table, text));
        }
    }

    /** Looks at the files and stores what they give. */
    public ImportCounts store(String roster, String audiograms, String decisions) {
        ImportPreview preview = preview(roster, audiograms, decisions);
        ImportResult result = imports.confirm(preview.token(), ImportProgress.unwatched());
        assertThat(result).isInstanceOf(ImportResult.Stored.class);
        return ((ImportResult.Stored) result).counts();
    }
}
