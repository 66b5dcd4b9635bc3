package org.tidewright.trials.use;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.tidewright.trials.rule.Checkout;

/** The packaged program, running in a process and a folder of its own until closed. */
public final class Program implements AutoCloseable {
    private static final Pattern ADDRESS = Pattern.compile("http://127\\.0\\.0\\.1:\\d+");
    private static final long PATIENCE_SECONDS = 60;

    private final Path folder;
    private final Process process;
    private final Thread listener;
    private final List<String> said = new ArrayList<>();
    private final CompletableFuture<URI> address = new CompletableFuture<>();

    private Program(List<String> arguments) throws IOException {
        Path jar = Checkout.root().resolve("app/target/dist/tidewright.jar");
        if (!Files.exists(jar)) {
            throw new IllegalStateException(jar + " is missing: mvn verify packs it before these tests");
        }
        folder = Files.createTempDirectory("tidewright-trial-");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.io.tmpdir=" + folder,
                "-Duser.home=" + folder,
                "-Dstdout.encoding=UTF-8",
                "-Dfile.encoding=UTF-8",
                "-jar",
                jar.toString()));
        command.addAll(arguments);
        process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        process.getOutputStream().close();
        listener = new Thread(this::listen, "output of the program");
        listener.start();
    }

    /** Starts it with the demo on any free port and waits until it has said its address. */
    public static Program demo() {
        return start("demo", "--port", "0");
    }

    /** Starts it with a command that serves pages, and waits until it has said its address. */
    public static Program start(String... arguments) {
        Program program = run(arguments);
        try {
            program.address.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
            return program;
        } catch (ExecutionException | TimeoutException e) {
            program.close();
            throw new IllegalStateException("it said no address, but:\n" + program.output(), e);
        } catch (InterruptedException e) {
            program.close();
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** Starts it with a command that may end by itself. */
    public static Program run(String... arguments) {
        try {
            return new Program(List.of(arguments));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Waits for its end. */
    public int exitCode() {
        try {
            if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                throw new IllegalStateException("it does not end; it said:\n" + output());
            }
            listener.join();
            return process.exitValue();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** Address of its first page, ending in a slash. */
    public URI address() {
        return address.join();
    }

    /** The folder it was started in: its working, home and temporary folder. */
    public Path folder() {
        return folder;
    }

    /** All it has printed until now, warnings of Java included. */
    public String output() {
        synchronized (said) {
            return String.join("\n", said);
        }
    }

    @Override
    public void close() {
        process.destroy();
        try {
            if (!process.waitFor(10, TimeUnit.SECONDS)) {
                process.destroyForcibly().waitFor();
            }
            listener.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        delete(folder);
    }

    private void listen() {
        try (BufferedReader lines = process.inputReader(StandardCharsets.UTF_8)) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                synchronized (said) {
                    said.add(line);
                }
                Matcher found = ADDRESS.matcher(line);
                if (found.find()) {
                    address.complete(URI.create(found.group() + "/"));
                }
            }
            address.completeExceptionally(new IllegalStateException("it ended"));
        } catch (IOException e) {
            address.completeExceptionally(e);
        }
    }

    private static void delete(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(each);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
