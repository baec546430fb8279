package org.thresholdregister.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class SvgWriterTest {

    @Test
    void whateverIsWrittenComesBackFromTheParser() {
        String awkward = "a < b & \"c\" > 'd' ]]> é 🙂";
        String xml = new SvgWriter()
                .start("text")
                .attribute("label", awkward)
                .text(awkward)
                .end()
                .finished();
        Element parsed = Drawings.parse(xml);
        assertThat(parsed.getAttribute("label")).isEqualTo(awkward);
        assertThat(parsed.getTextContent()).isEqualTo(awkward);
    }

    @Test
    void numbersAreWrittenToAHundredthWithoutTrailingZeros() {
        assertThat(SvgWriter.number(80)).isEqualTo("80");
        assertThat(SvgWriter.number(100)).isEqualTo("100");
        assertThat(SvgWriter.number(206.797)).isEqualTo("206.8");
        assertThat(SvgWriter.number(-0.125)).isEqualTo("-0.13");
        assertThat(SvgWriter.number(1e-9)).isEqualTo("0");
    }

    @Test
    void anUnfinishedDocumentIsRefused() {
        assertThatIllegalStateException().isThrownBy(new SvgWriter().start("svg")::finished);
        assertThatIllegalStateException()
                .isThrownBy(() -> new SvgWriter().start("svg").text("x").attribute("late", "y"));
    }
}
