package org.thresholdregister.letters;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.thresholdregister.core.wording.Words;

/**
 * A text that a site writes: paragraphs with an empty line between them, a heading where one begins with {@code #}, and
 * placeholders in braces.
 */
record LetterText(TextPart part, String text) {

    static final int LONGEST = 6000;

    private static final Pattern BRACES = Pattern.compile("\\{[^{}\\s]*}");
    private static final Pattern STRAY_BRACE = Pattern.compile("[{}]");

    /** A paragraph in its place. */
    sealed interface Piece {
        record Heading(String text) implements Piece {}

        record Paragraph(String text) implements Piece {}

        record Block(Placeholder placeholder) implements Piece {}
    }

    /** What stands against the text, a sentence each that says how to mend it; empty where nothing does. */
    List<String> problems() {
        List<String> problems = new ArrayList<>();
        if (text.isBlank()) {
            problems.add("The text is empty. Write one, or go back to the standard text.");
        }
        if (text.length() > LONGEST) {
            problems.add("The text has " + text.length() + " characters; at most " + LONGEST + " fit.");
        }
        Matcher braces = BRACES.matcher(text);
        while (braces.find()) {
            problemOf(braces.group()).ifPresent(problems::add);
        }
        if (STRAY_BRACE.matcher(BRACES.matcher(text).replaceAll("")).find()) {
            problems.add("A brace stands by itself or has a space inside. Placeholders look like "
                    + Placeholder.WORKER_NAME.written() + ".");
        }
        for (String paragraph : paragraphs()) {
            Arrays.stream(Placeholder.values())
                    .filter(placeholder -> placeholder.isBlock()
                            && paragraph.contains(placeholder.written())
                            && !paragraph.equals(placeholder.written()))
                    .forEach(placeholder -> problems.add(placeholder.written()
                            + " needs a paragraph of its own: put an empty line before and after it."));
        }
        List<String> missing = Arrays.stream(Placeholder.values())
                .filter(placeholder -> placeholder.isRequiredIn(part) && !text.contains(placeholder.written()))
                .map(placeholder -> placeholder.written() + " (" + placeholder.meaning() + ")")
                .toList();
        if (!missing.isEmpty()) {
            problems.add("The letter has to say this, so put it back: " + Words.listed(missing) + ".");
        }
        return problems.stream().distinct().toList();
    }

    private Optional<String> problemOf(String written) {
        Optional<Placeholder> placeholder = Placeholder.find(written);
        if (placeholder.isEmpty()) {
            return Optional.of("There is no placeholder " + written + ". Take one from the list beside the text.");
        }
        return placeholder.get().isAllowedIn(part)
                ? Optional.empty()
                : Optional.of(written + " cannot be filled in here. Take one from the list beside the text.");
    }

    List<Piece> pieces(Map<Placeholder, String> values) {
        return paragraphs().stream().map(paragraph -> piece(paragraph, values)).toList();
    }

    private static Piece piece(String paragraph, Map<Placeholder, String> values) {
        Optional<Placeholder> block = Placeholder.find(paragraph).filter(Placeholder::isBlock);
        if (block.isPresent()) {
            return new Piece.Block(block.get());
        }
        return paragraph.startsWith("#")
                ? new Piece.Heading(filled(paragraph.substring(1).strip(), values))
                : new Piece.Paragraph(filled(paragraph, values));
    }

    /** The text with what is known put in; each value is put in once, so that no value can name another. */
    static String filled(String text, Map<Placeholder, String> values) {
        return BRACES.matcher(text)
                .replaceAll(found -> Matcher.quoteReplacement(Placeholder.find(found.group())
                        .map(placeholder -> values.getOrDefault(placeholder, ""))
                        .orElse(found.group())));
    }

    private List<String> paragraphs() {
        return Arrays.stream(text.replace("\r\n", "\n").strip().split("\n\\s*\n"))
                .map(String::strip)
                .filter(paragraph -> !paragraph.isEmpty())
                .toList();
    }
}
