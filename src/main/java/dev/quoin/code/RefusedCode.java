package dev.quoin.code;

/**
 * A content that the kind of code cannot hold, or not in this space.
 *
 * @param message what is wrong; no full stop
 * @param remedy what to do; no full stop
 */
public record RefusedCode(String message, String remedy) implements CodeResult {}
