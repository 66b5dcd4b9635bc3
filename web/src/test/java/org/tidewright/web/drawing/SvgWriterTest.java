package org.tidewright.web.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class SvgWriterTest {
    @Test
    void writesElementsInEachOtherAndEmptyOnesShort() {
        String svg = new SvgWriter()
                .open("g")
                .has("class", "a")
                .open("rect")
                .has("x", 1.25)
                .close()
                .open("text")
                .text("7 < 8")
                .close()
                .close()
                .finished();
        assertThat(svg).isEqualTo("<g class=\"a\"><rect x=\"1.3\"/><text>7 &lt; 8</text></g>");
    }

    @Test
    void nothingInWordsCanEndAnElementOrAnAttribute() {
        String svg = new SvgWriter()
                .open("text")
                .has("title", "\"><script>'&")
                .text("</text><script>\u0000\u0008\ud800")
                .close()
                .finished();
        assertThat(Xml.parse(svg).getDocumentElement().getTextContent()).isEqualTo("</text><script>");
        assertThat(Xml.parse(svg).getDocumentElement().getAttribute("title")).isEqualTo("\"><script>'&");
    }

    @Test
    void refusesWhatIsNoCoordinate() {
        assertThatThrownBy(() -> SvgWriter.number(Double.NaN)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> new SvgWriter().open("g").finished()).hasMessageContaining("g");
    }

    @Test
    void roundsToATenthOfAMillimetre() {
        assertThat(SvgWriter.number(-0.04)).isEqualTo("0");
        assertThat(SvgWriter.number(-0.06)).isEqualTo("-0.1");
        assertThat(SvgWriter.number(1206.5)).isEqualTo("1206.5");
        assertThat(SvgWriter.number(-880)).isEqualTo("-880");
    }
}
