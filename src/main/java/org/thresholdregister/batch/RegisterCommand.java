package org.thresholdregister.batch;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/**
 * The {@code register} command, which does nothing itself: its sub-commands do. Exit codes: 0 done, 1 a failure, 2 bad
 * usage or unusable input.
 */
@Command(
        name = "register",
        description = "Keeps hearing-test records of a workplace and works out what they call for.",
        mixinStandardHelpOptions = true,
        scope = CommandLine.ScopeType.INHERIT,
        versionProvider = RegisterCommand.Version.class,
        subcommands = {HelpCommand.class, EvaluateCommand.class})
public final class RegisterCommand {

    @Spec
    private @Nullable CommandSpec spec;

    private RegisterCommand() {}

    /** The command with its sub-commands, ready to execute; callers may add more. */
    public static CommandLine commandLine() {
        return new CommandLine(new RegisterCommand());
    }

    @Command(name = "version", description = "Shows the version.")
    void version() {
        var line = Objects.requireNonNull(spec).commandLine();
        line.printVersionHelp(line.getOut());
    }

    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            // Only a packaged program carries a version.
            String version = RegisterCommand.class.getPackage().getImplementationVersion();
            return new String[] {"Threshold Register " + (version == null ? "(not packaged)" : version)};
        }
    }
}
