package dev.quoin.cli;

import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** A wrong command line gets one line that says what is wrong, and one that says where help is. */
record UsageMessages(Console console) implements IParameterExceptionHandler {
    @Override
    public int handleParseException(ParameterException e, String[] args) {
        CommandLine command = e.getCommandLine();
        String name = command.getCommandSpec().qualifiedName();
        console.complain(name + ": " + what(e));
        UnmatchedArgumentException.printSuggestions(e, command.getErr());
        console.complain("'" + name + " --help' shows how it is used");
        return ExitStatus.USAGE.code();
    }

    private static String what(ParameterException e) {
        if (!(e instanceof UnmatchedArgumentException unmatched)) {
            return lowerFirst(withoutLead(e.getMessage()));
        }
        String first = "'" + unmatched.getUnmatched().get(0) + "'";
        if (unmatched.isUnknownOption()) {
            return "unknown option " + first;
        }
        return e.getCommandLine().getSubcommands().isEmpty()
                ? first + " is one word too many; put quotes around a name that holds blanks"
                : "unknown command " + first;
    }

    /** The parser begins some messages, not all, with what every one of them is. */
    private static String withoutLead(String text) {
        return text.startsWith("Error: ") ? text.substring("Error: ".length()) : text;
    }

    private static String lowerFirst(String text) {
        return text.isEmpty() ? text : Character.toLowerCase(text.charAt(0)) + text.substring(1);
    }
}
