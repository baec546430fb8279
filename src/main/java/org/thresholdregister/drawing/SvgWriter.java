package org.thresholdregister.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.Deque;

/** Writes well-formed, escaped XML, the same bytes for the same calls. */
final class SvgWriter {

    private final StringBuilder out = new StringBuilder(8192);
    private final Deque<String> open = new ArrayDeque<>();
    private boolean inStartTag;

    SvgWriter start(String element) {
        closeStartTag();
        out.append('<').append(element);
        open.push(element);
        inStartTag = true;
        return this;
    }

    SvgWriter attribute(String name, String value) {
        if (!inStartTag) {
            throw new IllegalStateException("attribute " + name + " after the content of its element");
        }
        out.append(' ').append(name).append("=\"");
        escape(value);
        out.append('"');
        return this;
    }

    /** A length in px or another plain number, to a hundredth. */
    SvgWriter attribute(String name, double value) {
        return attribute(name, number(value));
    }

    SvgWriter text(String text) {
        closeStartTag();
        escape(text);
        return this;
    }

    SvgWriter end() {
        String element = open.pop();
        if (inStartTag) {
            out.append("/>");
            inStartTag = false;
        } else {
            out.append("</").append(element).append('>');
        }
        return this;
    }

    /** @throws IllegalStateException while an element is still open */
    String finished() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("still open: " + open);
        }
        return out.toString();
    }

    static String number(double value) {
        return BigDecimal.valueOf(value)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    private void closeStartTag() {
        if (inStartTag) {
            out.append('>');
            inStartTag = false;
        }
    }

    private void escape(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> out.append(c);
            }
        }
    }
}
