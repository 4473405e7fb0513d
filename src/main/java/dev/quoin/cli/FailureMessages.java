package dev.quoin.cli;

import dev.quoin.lettering.TextEngine;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** What could not be read or written gets one line; never a stack trace. */
record FailureMessages(Console console) implements IExecutionExceptionHandler {
    @Override
    public int handleExecutionException(Exception e, CommandLine command, ParseResult result) {
        Throwable cause = e instanceof UncheckedIOException ? e.getCause() : e;
        String message = cause instanceof IOException io ? message(io) : unexpected(cause);
        console.complain(TextEngine.missing(e).orElse(message));
        return ExitStatus.ACCESS.code();
    }

    private static String message(IOException e) {
        if (e instanceof FileSystemException file) {
            return file.getFile() + ": " + reason(file);
        }
        if (e instanceof CharacterCodingException) {
            return "a text file is not in UTF-8; save it as UTF-8";
        }
        return "could not read or write: " + e.getMessage();
    }

    private static String reason(FileSystemException e) {
        if (e.getReason() != null) {
            return e.getReason();
        }
        if (e instanceof NoSuchFileException) {
            return "there is no such file or folder; check the name";
        }
        if (e instanceof AccessDeniedException) {
            return "may not be read or written; check its permissions, and those of its folder";
        }
        if (e instanceof FileAlreadyExistsException) {
            return "exists already";
        }
        return "could not be read or written";
    }

    private static String unexpected(Throwable e) {
        StackTraceElement[] trace = e.getStackTrace();
        String where = trace.length == 0 ? "" : " (at " + trace[0] + ")";
        String cause = e.getCause() == null ? "" : ", because of " + firstLine(e.getCause());
        return "quoin met a fault of its own: " + firstLine(e) + where + cause
                + "; please report it with the job that caused it";
    }

    private static String firstLine(Throwable e) {
        return e.toString().lines().findFirst().orElse(e.getClass().getName());
    }
}
