package org.tidewright.app.cli;

/** What a command's exit code means. */
public final class ExitCode {
    /** Done; for a check, all hold. */
    public static final int HOLDS = 0;

    /** Done, and something does not hold. */
    public static final int DOES_NOT_HOLD = 1;

    /** The plan, a file or the command line is not valid, or asks for what is better thought over; nothing was done. */
    public static final int INVALID = 2;

    /** The program itself failed. */
    public static final int INTERNAL = 70;

    private ExitCode() {}

    /** A failure of the program in words: never a stack trace to the keeper. */
    public static String words(Throwable failure) {
        String message = failure.getMessage();
        return "the program itself failed: "
                + (message == null ? failure.getClass().getSimpleName() : message)
                + "\nYour files are as they were. Please report this with the command you typed and your plan.";
    }
}
