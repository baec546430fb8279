package org.thresholdregister.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import org.junit.jupiter.api.Test;

/** A browser says nothing of a brace that is missing in the style sheet: it leaves out what follows. */
class StyleSheetTest {

    private static final Path SHEET = Path.of("src/main/resources/META-INF/resources/styles.css");

    @Test
    void everyBlockIsClosedAndNoRuleStandsInAnother() throws IOException {
        String sheet = Files.readString(SHEET).replaceAll("(?s)/\\*.*?\\*/", "");
        Deque<String> open = new ArrayDeque<>();
        int from = 0;
        for (int i = 0; i < sheet.length(); i++) {
            char c = sheet.charAt(i);
            if (c == '{') {
                assertThat(open)
                        .as("blocks round: " + sheet.substring(from, i).strip())
                        .allMatch(selector -> selector.startsWith("@"));
                open.push(sheet.substring(from, i).strip());
                from = i + 1;
            } else if (c == '}') {
                assertThat(open).as("blocks open before character " + i).isNotEmpty();
                open.pop();
                from = i + 1;
            } else if (c == ';') {
                from = i + 1;
            }
        }
        assertThat(open).isEmpty();
    }
}
