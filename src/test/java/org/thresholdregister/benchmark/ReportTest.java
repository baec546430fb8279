package org.thresholdregister.benchmark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The parts of the benchmark that others' claims rest on. */
class ReportTest {

    @TempDir
    private Path folder;

    @Test
    void rowsAreComparedOneByOneAndMissingOnesDiffer() throws IOException {
        Path expected = Files.writeString(folder.resolve("expected"), "header\na\nb\nc\n");

        assertThat(compared(expected, "header\na\nb\nc\n")).isEqualTo(new RowComparison(3, 0, List.of()));
        assertThat(compared(expected, "header\na\nx\nc\n"))
                .isEqualTo(new RowComparison(3, 1, List.of("line 3: b / x")));
        assertThat(compared(expected, "header\na\n").differing()).isEqualTo(2);
        assertThat(compared(expected, "header\na\nb\nc\nd\n"))
                .isEqualTo(new RowComparison(4, 1, List.of("line 5: null / d")));
    }

    private RowComparison compared(Path expected, String actual) throws IOException {
        return RowComparison.of(expected, Files.writeString(folder.resolve("actual"), actual));
    }

    @Test
    void theFullestHeapIsFoundBeforeACollectionOrAtTheEnd() {
        String end = """
                [1.2s][info][gc,exit] Heap
                [1.2s][info][gc,exit]  garbage-first heap   total reserved 65536K, committed 65536K, used 43008K [0x0, 0x1)
                [1.2s][info][gc,exit]   region size 1024K, 27 young (27648K), 4 survivors (4096K)
                [1.2s][info][gc,exit]  Metaspace       used 918281K, committed 18560K, reserved 1114112K
                [1.2s][info][gc,exit]   class space    used 92146K, committed 2240K, reserved 1048576K
                """;
        assertThat(RegisterContender.peakHeapBytes(end)).isEqualTo(42L << 20);
        assertThat(RegisterContender.peakHeapBytes(
                        "[0.9s][info][gc] GC(8) Pause Young (Normal) (G1 Evacuation Pause) 51M->18M(64M) 7.668ms\n"
                                + end))
                .isEqualTo(51L << 20);
        assertThat(RegisterContender.peakHeapBytes("""
                        [1.2s][info][gc,exit] Heap
                        [1.2s][info][gc,exit]  def new generation   total 19648K, used 2048K [0x0, 0x1)
                        [1.2s][info][gc,exit]   eden space 17472K,  11% used [0x0, 0x1, 0x2)
                        [1.2s][info][gc,exit]  tenured generation   total 43712K, used 1024K [0x0, 0x1)
                        [1.2s][info][gc,exit]    the space 43712K,   2% used [0x0, 0x1)
                        """)).isEqualTo(3L << 20);
        assertThatThrownBy(() -> RegisterContender.peakHeapBytes("nothing")).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void theTimesOfStagesAreReadBackAsTheyWereSaid() {
        StageTimes times = new StageTimes(0.125, 2.5, 0.0625);

        assertThat(StageTimes.parse("chatter\n" + times.lines())).isEqualTo(times);
        assertThatThrownBy(() -> StageTimes.parse("read 1\nwrite 1\n")).hasMessageContaining("judge");
        assertThat(StageTimes.medianOf(
                        List.of(new StageTimes(1, 9, 5), new StageTimes(3, 8, 4), new StageTimes(2, 7, 6))))
                .isEqualTo(new StageTimes(2, 8, 5));
        assertThat(Median.of(List.of(4.0, 1.0, 2.0, 9.0))).isEqualTo(3.0);
    }

    @Test
    void aFailedProcessIsNoMeasurement() {
        assertThatThrownBy(() -> ProcessRun.of(List.of("sh", "-c", "echo what went wrong; exit 3"), Map.of()))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("exit code 3")
                .hasMessageContaining("what went wrong");
    }

    @Test
    void theTableSetsTheFirstBesideTheOthersAndCountsDifferences() {
        Report report = new Report(LocalDate.of(2026, 3, 9), "A machine", "0.10");
        RowComparison same = new RowComparison(2000, 0, List.of());
        report.add(1000, "One", measured(0.005, 1.5), same);
        report.add(1000, "Another", measured(5, 3), same);
        assertThat(report.allAgree()).isTrue();
        report.add(1000, "A third", measured(50, 1), new RowComparison(2000, 7, List.of("line 2: a / b")));

        assertThat(report.allAgree()).isFalse();
        assertThat(report.markdown("0.20"))
                .contains(
                        "Measured on 2026-03-09, load 0.10 before and 0.20 after.",
                        "| 1,000 | One | 1.00 s | 5.00 ms | 2.00 s | 1.50 s | 2 MB |  | 2,000 | 0 |",
                        "| 1,000 | A third | 1.00 s | 50.00 s | 2.00 s | 1.00 s | 2 MB |  | 2,000 | 7 |",
                        "beside Another, One judges 1000.0 times as fast; its whole process is 2.0 times as fast.",
                        "beside A third, One judges 10000.0 times as fast; its whole process is 1.5 times as slow.");
    }

    private static Measurement measured(double judge, double whole) {
        return new Measurement(new StageTimes(1, judge, 2), whole, OptionalLong.of(2 << 20), OptionalLong.empty());
    }
}
