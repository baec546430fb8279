package org.thresholdregister;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.NullMarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Starts the web app on a register for real use. */
@NullMarked
@Command(name = "serve", description = "Starts the web app on a register of your own.")
final class ServeCommand implements Callable<Integer> {

    @Mixin
    private PortOption port = new PortOption();

    @Option(
            names = "--data",
            paramLabel = "FOLDER",
            defaultValue = "${sys:register.home:-.}/register-data",
            description = "Folder of the records, made when missing. Unless given: register-data beside the launcher.")
    private Path data = Path.of("register-data");

    @Override
    public Integer call() {
        return WebApp.start("--register.data=" + data, "--server.port=" + port.givenOrUsual());
    }
}
