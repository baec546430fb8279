package org.thresholdregister;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The launcher {@code register}, run as a copy in a folder of its own with stand-ins for Java, Maven and apt-get that
 * write down how they were called.
 */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "the launcher is a POSIX shell script")
class LauncherTest {

    private static final List<String> SYSTEM_TOOLS = List.of(
            "cat",
            "chmod",
            "dirname",
            "env",
            "find",
            "head",
            "id",
            "ln",
            "mkdir",
            "mv",
            "readlink",
            "rm",
            "sed",
            "sleep",
            "sort",
            "tail");

    private static final String JAVA = """
            #!/bin/sh
            echo "java $*" >>"$CALLS"
            if [ "$1" = -Djarmode=tools ]; then
                mkdir "$6" && : >"$6/threshold-register.jar"
            else
                pwd
                printf '<%s>\\n' "$@"
                exit "${JAVA_EXITS_WITH:-0}"
            fi
            """;

    private static final String MAVEN = """
            #!/bin/sh
            if [ "$1" = -v ]; then
                printf '\\033[1mApache Maven %s\\033[m\\n' "${MAVEN_IS:-3.8.7}"
                exit
            fi
            echo "mvn $* with $JAVA_HOME" >>"$CALLS"
            echo "chatter of the build"
            echo "the last line of the build"
            mkdir -p target && : >target/threshold-register.jar
            for argument; do
                case $argument in
                    -Dmdep.outputFile=*) echo one.jar:other.jar >"${argument#*=}" ;;
                esac
            done
            exit "${MAVEN_EXITS_WITH:-0}"
            """;

    @TempDir
    private Path temporary;

    private final Map<String, String> environment = new HashMap<>();
    private Path home;
    private Path tools;
    private Path jdks;
    private Path calls;
    private Path callersFolder;

    private record Run(int exitCode, String output, String errors) {}

    @BeforeEach
    void copyTheLauncherAndItsTools() throws IOException {
        // A blank in every path.
        Path place = Files.createDirectory(temporary.toRealPath().resolve("a place"));
        home = Files.createDirectories(place.resolve("checked out"));
        Files.copy(Path.of("register"), home.resolve("register"));
        Files.setPosixFilePermissions(home.resolve("register"), PosixFilePermissions.fromString("rwxr-xr-x"));
        Files.writeString(home.resolve("pom.xml"), "<project/>");
        Files.writeString(Files.createDirectories(home.resolve("src/main/java")).resolve("A.java"), "class A {}");

        tools = Files.createDirectory(place.resolve("tools"));
        for (String tool : SYSTEM_TOOLS) {
            script(tools.resolve(tool), "#!/bin/sh\nexec '" + onThePath(tool) + "' \"$@\"\n");
        }
        jdks = Files.createDirectory(place.resolve("jdks"));
        calls = Files.createFile(place.resolve("calls"));
        callersFolder = Files.createDirectory(place.resolve("callers folder"));
        environment.put("PATH", tools.toString());
        environment.put("HOME", place.toString());
        environment.put("REGISTER_JDK_FOLDERS", place.resolve("none") + ":" + jdks);
        environment.put("CALLS", calls.toString());
    }

    @Test
    void helpNeedsNothingInstalledAndNamesEveryCommand() throws Exception {
        Run run = register("help");

        assertThat(run.exitCode()).isZero();
        assertThat(run.output()).contains("demo", "serve", "evaluate", "test", "benchmark", "help", "version");
        assertThat(run.errors()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {" ", "", "unheard-of", "test --unheard-of"})
    void badUsageShowsTheUsageOnStandardError(String arguments) throws Exception {
        Run run = register(arguments.split(" "));

        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.output()).isEmpty();
        assertThat(run.errors()).contains("Usage: ./register COMMAND");
    }

    @Test
    void withoutAJdkItSaysHowToInstallOne() throws Exception {
        Run run = register("evaluate");

        assertThat(run.exitCode()).isEqualTo(1);
        assertThat(run.output()).isEmpty();
        assertThat(run.errors()).contains("no JDK 25 or newer", "How to install one", "JAVA_HOME");
    }

    @Test
    void anOldJdkAndANewJreAreNotEnough() throws Exception {
        jdk(jdks.resolve("old"), "17.0.15");
        jdk(jdks.resolve("older"), "1.8.0_402");
        jdk(jdks.resolve("jre"), "25.0.3");
        Files.delete(jdks.resolve("jre/bin/javac"));

        assertThat(register("evaluate").exitCode()).isEqualTo(1);
    }

    @Test
    void aJdkIsTakenFromJavaHomeBeforeThePathBeforeTheInstallFolders() throws Exception {
        maven();
        Path named = jdk(home.resolve("../named"), "25");
        Path onPath = jdk(home.resolve("../on path"), "26-ea");
        Path installed = jdk(jdks.resolve("b.jdk/Contents/Home"), "25.0.3");
        jdk(jdks.resolve("a"), "21.0.1");
        Files.createSymbolicLink(tools.resolve("javac"), onPath.resolve("bin/javac"));

        environment.put("JAVA_HOME", named.toString());
        assertThat(jdkUsed()).isEqualTo(named.toString());
        environment.put("JAVA_HOME", jdks.resolve("a").toString());
        assertThat(jdkUsed()).isEqualTo(onPath.toString());
        Files.delete(tools.resolve("javac"));
        assertThat(jdkUsed()).isEqualTo(installed.toString());
    }

    @Test
    void withoutMavenOrWithAnOldOneItSaysSo() throws Exception {
        jdk(jdks.resolve("new"), "25");
        Run without = register("evaluate");
        assertThat(without.exitCode()).isEqualTo(1);
        assertThat(without.errors()).contains("Maven 3.8.7 or newer").contains("not on the PATH");

        maven();
        environment.put("MAVEN_IS", "3.8.6");
        Run old = register("evaluate");
        assertThat(old.exitCode()).isEqualTo(1);
        assertThat(old.errors()).contains("is 3.8.6");

        environment.put("MAVEN_IS", "3.10");
        assertThat(register("evaluate").exitCode()).isZero();
    }

    @Test
    void theProgramRunsInTheCallersFolderWithItsArgumentsAsGiven() throws Exception {
        jdk(jdks.resolve("new"), "25");
        maven();
        environment.put("REGISTER_JAVA_OPTS", "-Xmx256m -Dstar=*");
        Files.createFile(callersFolder.resolve("-Dstar=file"));
        Path link = Files.createSymbolicLink(callersFolder.resolve("link"), Path.of("../checked out/register"));

        Run run = run(link.toString(), "evaluate", "--out", "a folder", "");

        assertThat(run.exitCode()).isZero();
        assertThat(run.output().lines())
                .containsExactly(
                        callersFolder.toString(),
                        "<-XX:TieredStopAtLevel=1>",
                        "<-XX:+UseSerialGC>",
                        "<-Xms64m>",
                        "<-Xmn32m>",
                        "<-XX:PretenureSizeThreshold=64k>",
                        "<-Xmx256m>",
                        "<-Dstar=*>",
                        "<-Dregister.home=" + home + ">",
                        "<-jar>",
                        "<" + home.resolve("target/app/threshold-register.jar") + ">",
                        "<evaluate>",
                        "<--out>",
                        "<a folder>",
                        "<>");
        assertThat(run.errors().lines()).containsExactly("register: building, a few minutes the first time");
        assertThat(home.resolve("target/build.log")).content().contains("chatter of the build");
    }

    @Test
    void onlyEvaluateRunsWithOptionsOfItsOwn() throws Exception {
        jdk(jdks.resolve("new"), "25");
        maven();

        assertThat(register("serve").output().lines().toList().get(1)).isEqualTo("<-Dregister.home=" + home + ">");
    }

    @Test
    void itBuildsAgainOnlyWhenSomethingChanged() throws Exception {
        jdk(jdks.resolve("new"), "25");
        maven();
        register("version");
        register("version");
        assertThat(builds()).isEqualTo(1);

        Path source = home.resolve("src/main/java/A.java");
        Files.setLastModifiedTime(source, FileTime.from(Instant.now().plusSeconds(1)));
        register("version");
        assertThat(builds()).isEqualTo(2);

        Files.setLastModifiedTime(source, FileTime.from(Instant.EPOCH));
        Files.createFile(Files.createDirectories(home.resolve("src/test/java")).resolve("ATest.java"));
        Files.createFile(
                Files.createDirectories(home.resolve("frontend/node_modules")).resolve("module.js"));
        Files.setLastModifiedTime(home.resolve("frontend"), FileTime.from(Instant.EPOCH));
        register("version");
        assertThat(builds())
                .as("neither tests nor fetched modules are in the jar")
                .isEqualTo(2);

        Files.delete(source);
        register("version");
        assertThat(builds()).as("a deleted file is a change").isEqualTo(3);

        Files.delete(home.resolve("target/app/threshold-register.jar"));
        register("version");
        assertThat(builds()).isEqualTo(4);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void theExitCodeIsTheProgramsOwn(int exitCode) throws Exception {
        jdk(jdks.resolve("new"), "25");
        maven();
        environment.put("JAVA_EXITS_WITH", String.valueOf(exitCode));

        assertThat(register("evaluate").exitCode()).isEqualTo(exitCode);
    }

    @Test
    void aFailedBuildShowsTheEndOfItsLogAndIsTriedAgain() throws Exception {
        jdk(jdks.resolve("new"), "25");
        maven();
        environment.put("MAVEN_EXITS_WITH", "1");
        Run failed = register("evaluate");

        assertThat(failed.exitCode()).isEqualTo(1);
        assertThat(failed.output()).isEmpty();
        assertThat(failed.errors()).contains("the last line of the build", "target/build.log");

        environment.remove("MAVEN_EXITS_WITH");
        assertThat(register("evaluate").exitCode()).isZero();
    }

    @Test
    void aLockLeftByADeadProcessIsNoHindrance() throws Exception {
        jdk(jdks.resolve("new"), "25");
        maven();
        Process dead = new ProcessBuilder("true").start();
        dead.waitFor();
        Path lock = Files.createDirectory(home.resolve("target")).resolve("build.lock");
        Files.createSymbolicLink(lock, Path.of(String.valueOf(dead.pid())));

        assertThat(register("evaluate").exitCode()).isZero();
        assertThat(Files.isSymbolicLink(lock)).isFalse();
    }

    @Test
    void theTestsRunWithABrowserFoundOnThePath() throws Exception {
        jdk(jdks.resolve("new"), "25");
        maven();
        script(tools.resolve("chromium"), "#!/bin/sh\n");
        environment.put("CI", "true");
        Run run = register("test");

        assertThat(run.exitCode()).isZero();
        assertThat(run.output()).contains("the last line of the build");
        assertThat(run.errors()).endsWith("register: all tests passed, browser tests included\n");
        assertThat(calls).content().contains("mvn -B -ntp verify with " + jdks.resolve("new"));

        environment.put("MAVEN_EXITS_WITH", "1");
        assertThat(register("test").exitCode()).isEqualTo(1);
    }

    @Test
    void whatTheTestsBuiltIsNotBuiltAgain() throws Exception {
        jdk(jdks.resolve("new"), "25");
        maven();
        register("test");

        assertThat(register("version").errors()).isEmpty();
        assertThat(builds()).isEqualTo(1);
    }

    @Test
    void theTestsFailWhereTheFrontendCheckFails() throws Exception {
        jdk(jdks.resolve("new"), "25");
        maven();
        Path check = Files.createDirectory(home.resolve("frontend")).resolve("check.sh");
        script(check, "#!/bin/sh\nexit 0\n");
        assertThat(register("test").exitCode()).isZero();
        script(check, "#!/bin/sh\nexit 3\n");
        assertThat(register("test").exitCode()).isEqualTo(1);
    }

    @Test
    @DisabledOnOs(value = OS.MAC, disabledReason = "finds browsers in /Applications whatever the PATH")
    void withoutABrowserTheTestsSayWhatWasSkippedAndFailInContinuousIntegration() throws Exception {
        jdk(jdks.resolve("new"), "25");
        maven();
        Run run = register("test");
        assertThat(run.exitCode()).isZero();
        assertThat(run.errors().lines())
                .contains(
                        "register: no Chromium or Chrome was found and none could be installed:"
                                + " the browser tests are skipped",
                        "register: the tests passed, but no Chromium or Chrome was found and none could be installed:"
                                + " the browser tests were skipped");

        environment.put("CI", "true");
        Run inIntegration = register("test");
        assertThat(inIntegration.exitCode()).isEqualTo(1);
        assertThat(inIntegration.errors()).contains("under CI=true the browser tests must run");
        assertThat(builds()).isEqualTo(1);
    }

    @Test
    @DisabledOnOs(value = OS.MAC, disabledReason = "finds browsers in /Applications whatever the PATH")
    void aMissingBrowserIsInstalledWhereThatCanBeDone() throws Exception {
        jdk(jdks.resolve("new"), "25");
        maven();
        script(tools.resolve("apt-get"), """
                #!/bin/sh
                echo "apt-get $*" >>"$CALLS"
                if [ "$1" = install ]; then
                    echo '#!/bin/sh' >"${0%/*}/chromium"
                    chmod +x "${0%/*}/chromium"
                fi
                """);
        script(tools.resolve("id"), "#!/bin/sh\necho 1000\n");
        assertThat(register("test").errors()).as("neither root nor sudo").contains("were skipped");

        script(tools.resolve("id"), "#!/bin/sh\necho 0\n");
        assertThat(register("test").errors()).contains("browser tests included");
        assertThat(calls).content().contains("apt-get update\napt-get install -y chromium chromium-driver\n");
    }

    @Test
    void theBenchmarkIsBuiltOnceAndRunsInTheProjectsFolder() throws Exception {
        jdk(jdks.resolve("new"), "25");
        maven();
        Path test = Files.createFile(
                Files.createDirectories(home.resolve("src/test/java")).resolve("ATest.java"));
        Files.setLastModifiedTime(test, FileTime.from(Instant.EPOCH));
        Files.setLastModifiedTime(test.getParent(), FileTime.from(Instant.EPOCH));

        Run run = register("benchmark", "--sizes", "10000");

        assertThat(run.exitCode()).isZero();
        assertThat(run.output().lines())
                .containsExactly(
                        home.toString(),
                        "<--enable-native-access=ALL-UNNAMED>",
                        "<-cp>",
                        "<target/test-classes:target/classes:one.jar:other.jar>",
                        "<org.thresholdregister.benchmark.Benchmark>",
                        "<--sizes>",
                        "<10000>");
        assertThat(builds()).as("the program and the tests").isEqualTo(2);

        register("benchmark");
        assertThat(builds()).isEqualTo(2);

        Files.setLastModifiedTime(test, FileTime.from(Instant.now().plusSeconds(1)));
        register("benchmark");
        assertThat(builds()).as("only the tests changed").isEqualTo(3);

        environment.put("MAVEN_EXITS_WITH", "1");
        Run failed = register("benchmark");
        assertThat(failed.exitCode()).isEqualTo(1);
        assertThat(failed.errors()).contains("the last line of the build", "target/build.log");
    }

    private Run register(String... arguments) throws IOException, InterruptedException {
        String[] command = new String[arguments.length + 1];
        command[0] = home.resolve("register").toString();
        System.arraycopy(arguments, 0, command, 1, arguments.length);
        return run(command);
    }

    private Run run(String... command) throws IOException, InterruptedException {
        Path output = temporary.resolve("output");
        Path errors = temporary.resolve("errors");
        var builder = new ProcessBuilder(Arrays.stream(command).toList())
                .directory(callersFolder.toFile())
                .redirectOutput(output.toFile())
                .redirectError(errors.toFile());
        builder.environment().clear();
        builder.environment().putAll(environment);
        Process process = builder.start();
        assertThat(process.waitFor(60, TimeUnit.SECONDS))
                .as("the launcher ended")
                .isTrue();
        return new Run(process.exitValue(), Files.readString(output, UTF_8), Files.readString(errors, UTF_8));
    }

    /** The JDK that Maven was run with, after a change that makes a build necessary. */
    private String jdkUsed() throws IOException, InterruptedException {
        Files.deleteIfExists(home.resolve("target/build.stamp"));
        assertThat(register("version").exitCode()).isZero();
        return Files.readAllLines(calls).stream()
                .filter(call -> call.startsWith("mvn"))
                .map(call -> call.substring(call.indexOf(" with ") + " with ".length()))
                .toList()
                .getLast();
    }

    private long builds() throws IOException {
        return Files.readAllLines(calls).stream()
                .filter(call -> call.startsWith("mvn"))
                .count();
    }

    private static Path jdk(Path folder, String version) throws IOException {
        Files.createDirectories(folder.resolve("bin"));
        Files.writeString(folder.resolve("release"), "IMPLEMENTOR=\"Nobody\"\nJAVA_VERSION=\"" + version + "\"\n");
        script(folder.resolve("bin/java"), JAVA);
        script(folder.resolve("bin/javac"), "#!/bin/sh\n");
        return folder.toRealPath();
    }

    private void maven() throws IOException {
        script(tools.resolve("mvn"), MAVEN);
    }

    private static void script(Path file, String text) throws IOException {
        Files.writeString(file, text);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private static Path onThePath(String tool) {
        return Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
                .map(folder -> Path.of(folder, tool))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + tool + " on the PATH"));
    }
}
