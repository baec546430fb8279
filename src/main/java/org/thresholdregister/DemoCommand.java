package org.thresholdregister;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.NullMarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Starts the web app on the invented plant, with demo accounts; the data folder stays for the next time. */
@NullMarked
@Command(name = "demo", description = "Starts the web app on the invented Fernhollow Glassworks.")
final class DemoCommand implements Callable<Integer> {

    @Mixin
    private PortOption port = new PortOption();

    @Option(
            names = "--data",
            paramLabel = "FOLDER",
            defaultValue = "${sys:register.home:-.}/demo-data",
            description =
                    "Folder of the demo's records; delete it for a fresh start. Unless given: demo-data beside the"
                            + " launcher.")
    private Path data = Path.of("demo-data");

    @Option(
            names = "--sample",
            paramLabel = "FOLDER",
            defaultValue = "${sys:register.home:-.}/sample-roster",
            description =
                    "Folder of the files that an empty demo is filled with. Unless given: sample-roster beside the"
                            + " launcher.")
    private Path sample = Path.of("sample-roster");

    @Override
    public Integer call() {
        return WebApp.start(
                "--spring.profiles.active=demo",
                "--register.data=" + data,
                "--register.sample=" + sample,
                "--server.port=" + port.givenOrNextFree(System.out));
    }
}
